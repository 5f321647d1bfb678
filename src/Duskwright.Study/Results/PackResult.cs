using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Study.Figures;

namespace Duskwright.Study.Results;

/// <summary>What one supply does with everything on it switched on.</summary>
public sealed record PackResult
{
    /// <summary>The supply.</summary>
    public required Supply Supply { get; init; }

    /// <summary>Its part.</summary>
    public required SupplyPart Part { get; init; }

    /// <summary>What it is, in words: "three LR6", "USB 5 V".</summary>
    public required string Words { get; init; }

    /// <summary>Its place among the supplies, from 1: the number and colour of its circuit on every drawing.</summary>
    public required int Number { get; init; }

    /// <summary>The switch groups that take from it.</summary>
    public required ItemList<string> SwitchGroups { get; init; }

    /// <summary>The buildings it lights.</summary>
    public required ItemList<string> Buildings { get; init; }

    /// <summary>How many lamps it feeds.</summary>
    public required int Lamps { get; init; }

    /// <summary>Its current at the start with all on, A; none with no lamps.</summary>
    public Figure? Load { get; init; }

    /// <summary>Its voltage under that load, V.</summary>
    public Figure? Volts { get; init; }

    /// <summary>Hours until its worst lamp is dim; none where it never is.</summary>
    public Figure? HoursToDim { get; init; }

    /// <summary>Hours until its worst lamp is spoiled; none where it never is.</summary>
    public Figure? HoursToSpoiled { get; init; }

    /// <summary>How it fades; none with no lamps.</summary>
    public Fade? Fade { get; init; }

    /// <summary>How many lamps like its commonest one it could carry.</summary>
    public Carrying? Carrying { get; init; }

    /// <summary>What a short circuit in the wiring would do.</summary>
    public ShortResult? ShortCircuit { get; init; }
}
