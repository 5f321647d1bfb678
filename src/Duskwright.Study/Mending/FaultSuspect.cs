using Duskwright.Plan;
using Duskwright.Study.Figures;

namespace Duskwright.Study.Mending;

/// <summary>A fault, or several that nothing seen from outside tells apart.</summary>
public sealed record FaultSuspect
{
    /// <summary>What may be wrong, in words; several where they show the same.</summary>
    public required ItemList<string> Words { get; init; }

    /// <summary>What to do about it, and whether it can still be reached.</summary>
    public required string Remedy { get; init; }

    /// <summary>Its share of the likelihood of all single faults, 0 to 1.</summary>
    public double Share { get; init; }

    /// <summary>Whether it would show just what was seen.</summary>
    public bool Explains { get; init; }

    /// <summary>Buildings, those of their lamps that hang on the pack, or single lamps, that are dark.</summary>
    public required ItemList<string> Dark { get; init; }

    /// <summary>Buildings, those of their lamps that hang on the pack, or single lamps, that have less than half their light.</summary>
    public required ItemList<string> Dim { get; init; }

    /// <summary>What is seen, in words: "dark: Chandlery".</summary>
    public string Sight => (Dark.Count, Dim.Count) switch
    {
        (0, 0) => "all lit",
        (_, 0) => $"dark: {string.Join(", ", Dark)}",
        (0, _) => $"dim: {string.Join(", ", Dim)}",
        _ => $"dark: {string.Join(", ", Dark)}; dim: {string.Join(", ", Dim)}",
    };

    /// <summary>Whether it concerns more than one lamp of one building.</summary>
    public required bool IsWide { get; init; }

    /// <summary>Current of the pack with it, A.</summary>
    public required Figure Current { get; init; }
}

/// <summary>How a maker sees a lamp.</summary>
public enum Seen
{
    /// <summary>As bright as ever.</summary>
    Lit,

    /// <summary>Less than half of its light.</summary>
    Dim,

    /// <summary>No light.</summary>
    Dark,

    /// <summary>Not looked at, or not to be seen.</summary>
    Unknown,
}

/// <summary>What the maker sees of one pack with all its switches on.</summary>
/// <param name="Supply">The pack's id.</param>
/// <param name="Lamps">Each lamp by its building's key and its own name; one that is left out counts as lit.</param>
/// <param name="Amperes">Current of the pack, A, as the meter reads; none without a meter.</param>
/// <param name="Volts">Volts between the pack's ends read under that load, V; they say how full the cells are.</param>
public sealed record FaultQuestion(string Supply, IReadOnlyDictionary<(string Building, string Lamp), Seen> Lamps, double? Amperes, double? Volts = null)
{
    /// <summary>What a meter showed at pairs taken off the bank; they sharpen the answer.</summary>
    public ItemList<OffBankReading> OffBank { get; init; } = [];

    /// <summary>Currents of the pack read with one of its switches on alone.</summary>
    public ItemList<SwitchReading> OnSwitch { get; init; } = [];
}

/// <summary>The current of a pack with one of its switches on alone.</summary>
/// <param name="SwitchGroup">The switch group's id.</param>
/// <param name="Amperes">As the meter reads, A.</param>
public sealed record SwitchReading(string SwitchGroup, double Amperes);

/// <summary>What may have broken.</summary>
/// <param name="Suspects">The likeliest first.</param>
/// <param name="Next">The look or reading that would tell most, in words; none where none would help.</param>
/// <param name="OneFaultExplains">Whether any single fault shows just what was seen; where none does, there is none or more than one.</param>
public sealed record FaultAnswer(ItemList<FaultSuspect> Suspects, string? Next, bool OneFaultExplains)
{
    /// <summary>How likely it is that nothing is wrong and something was told wrongly, 0 to 1.</summary>
    public double Healthy { get; init; }

    /// <summary>How likely it is that just one thing is wrong, 0 to 1; times a suspect's share it is how likely that suspect is.</summary>
    public double OneFault { get; init; } = 1;

    /// <summary>Two faults at once, the likeliest first; only those worth telling.</summary>
    public ItemList<SuspectPair> Pairs { get; init; } = [];
}

/// <summary>Two faults at once.</summary>
/// <param name="Words">Both, in words.</param>
/// <param name="Probability">How likely it is that these two and no others are there, 0 to 1.</param>
public sealed record SuspectPair(string Words, double Probability);
