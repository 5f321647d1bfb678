using Duskwright.Study.Figures;

namespace Duskwright.Study.Lists;

/// <summary>One row of the cut list: a lead to cut.</summary>
/// <param name="Label">What to write on it: "CH A1".</param>
/// <param name="For">What it is: "pair, Chandlery to the bank".</param>
/// <param name="Wire">The wire's name.</param>
/// <param name="Conductors">How many conductors of that length.</param>
/// <param name="Length">Length of each, m.</param>
/// <param name="Laid">Whether it is laid already and not to be cut.</param>
public sealed record CutRow(string Label, string For, string Wire, int Conductors, Figure Length, bool Laid)
{
    /// <summary>The wire's id in the catalogue or among the town's own parts.</summary>
    public required string WireId { get; init; }

    /// <summary>Where it begins: the bank, a tap, a joint.</summary>
    public required string From { get; init; }

    /// <summary>Where it ends: a house, a tap, a lamp.</summary>
    public required string To { get; init; }

    /// <summary>How much of each conductor lies over the way as it is drawn: slack for joining and a service loop, and on open ground the allowance for going round things, m; none where no way is drawn.</summary>
    public double? SlackMetres { get; init; }

    /// <summary>The way it takes in words; empty where none is known.</summary>
    public string Way { get; init; } = "";

    /// <summary>How the positive conductor is marked at both ends before it is threaded.</summary>
    public const string Positive = "+|";

    /// <summary>What is cut of each conductor: whole millimetres, a shade long and never short.</summary>
    public int CutMillimetres => (int)Math.Ceiling((Length.Value * 1000) - 1e-9);
}
