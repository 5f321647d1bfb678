using System.Text.Json.Nodes;

namespace Duskwright.Plan.Format;

/// <summary>Steps from each version of the document to the next. A step is never changed once released.</summary>
internal static class DocumentUpgrades
{
    private static readonly Action<JsonObject>[] Steps = [ShowHoursMoveIntoShow];

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
        if (!document.Remove("hours", out var hours))
        {
            return;
        }

        if (document["show"] is not JsonObject show)
        {
            document["show"] = show = [];
        }

        show["hours_per_day_h"] = hours;
    }
}
