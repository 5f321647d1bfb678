namespace Duskwright.Study.Bench;

/// <summary>The keys of the tests that steps wait for: <see cref="Results.TestPoint.Key"/> of each.</summary>
internal static class StageTests
{
    /// <summary>Between a key and the supply on which the test is made, where a house hangs on several.</summary>
    internal const string OnSupply = "-on-";

    internal const string OnTheBench = "lamps-on-the-bench";
    internal const string RoofOff = "lamps-in-roof-off";
    internal const string TurnedRound = "turned-round";
    internal const string InTheDark = "roof-on-in-the-dark";
    internal const string Fed = "fed-through-the-board";
    internal const string AtTheBank = "fed-at-the-bank";
    internal const string GluedIn = "glued-in-and-dry";

    /// <summary>The key of the test behind a step of the maker's own.</summary>
    internal static string Own(string step) => $"{step}-test";

    /// <summary>Whether a key is that of a stage, or of one of its tests supply by supply.</summary>
    internal static bool Is(string key, string stage) => key == stage || key.StartsWith(stage + OnSupply, StringComparison.Ordinal);
}
