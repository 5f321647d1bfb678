using System.Text.Json.Nodes;

namespace Duskwright.Plan.Format;

/// <summary>Steps from each version of the document to the next. A step is never changed once released.</summary>
internal static class DocumentUpgrades
{
    private static readonly Action<JsonObject>[] Steps = [ShowHoursMoveIntoShow, NothingIsShared];

    internal static void Apply(JsonObject document)
    {
        for (var version = document["version"]!.GetValue<int>(); version < TownJson.Version; version++)
        {
            Steps[version](document);
        }
    }

    // Version 0 kept the hours of the show at the top, as "hours".
    private static void ShowHoursMoveIntoShow(JsonObject document)
    {
        // What does not fit is left where it stands, for the checks to name; a step drops nothing.
        if (!document.TryGetPropertyValue("hours", out var hours) || document["show"] is not (null or JsonObject) || document["show"]?["hours_per_day_h"] is not null)
        {
            return;
        }

        document.Remove("hours");
        if (document["show"] is not JsonObject show)
        {
            document["show"] = show = [];
        }

        show["hours_per_day_h"] = hours;
    }

    // Before version 2 every pair began at the bank; a document that says nothing of taps still means that.
    private static void NothingIsShared(JsonObject document)
    {
    }
}
