namespace Duskwright.Study.Bench;

/// <summary>The keys of the tests that steps wait for: <see cref="Results.TestPoint.Key"/> of each.</summary>
internal static class StageTests
{
    internal const string OnTheBench = "lamps-on-the-bench";
    internal const string RoofOff = "lamps-in-roof-off";
    internal const string TurnedRound = "turned-round";
    internal const string InTheDark = "roof-on-in-the-dark";
    internal const string Fed = "fed-through-the-board";
    internal const string AtTheBank = "fed-at-the-bank";
    internal const string GluedIn = "glued-in-and-dry";
}
