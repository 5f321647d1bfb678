using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Parts;

/// <summary>A kind of cell, adaptor or power bank.</summary>
/// <remarks>
/// A cell is a two-well store (Manwell and McGowan, Solar Energy 50 (1993) 399): a share of the charge is at once available, the rest follows at a rate.
/// Its open-circuit voltage follows the available well, its resistance the charge drawn.
/// </remarks>
public sealed record SupplyPart
{
    /// <summary>How the part is referred to, an IEC designation for cells.</summary>
    public required string Id { get; init; }

    /// <summary>What it is, in plain words.</summary>
    public required string Name { get; init; }

    /// <summary>Its kind.</summary>
    public required SupplyKind Kind { get; init; }

    /// <summary>The voltage printed on it.</summary>
    public required Voltage NominalVoltage { get; init; }

    /// <summary>Charge that can be drawn slowly, fresh; none for a supply from an adaptor.</summary>
    public Charge? Charge { get; init; }

    /// <summary>Share of the charge that is at once available, 0 to 1.</summary>
    public double? AvailableShare { get; init; }

    /// <summary>Rate at which the bound charge follows, per hour.</summary>
    public double? FollowRatePerHour { get; init; }

    /// <summary>Open-circuit voltage and resistance against the share left in the available well, fullest first.</summary>
    public ItemList<CellPoint> Curve { get; init; } = [];

    /// <summary>Voltage of one cell at which it counts as flat.</summary>
    public Voltage? EndVoltage { get; init; }

    /// <summary>For a regulated supply: its resistance.</summary>
    public Resistance? SourceResistance { get; init; }

    /// <summary>For a regulated supply: the most current.</summary>
    public Current? CurrentLimit { get; init; }

    /// <summary>For a power bank: the load below which it may switch itself off.</summary>
    public Current? LeastLoad { get; init; }

    /// <summary>Diameter, or width, of one cell.</summary>
    public Length? Width { get; init; }

    /// <summary>Length of one cell.</summary>
    public Length? Length { get; init; }

    /// <summary>Price of one.</summary>
    public Price? Price { get; init; }

    /// <summary>Where the figures come from.</summary>
    public required string Source { get; init; }

    /// <summary>How sure they are.</summary>
    public Certainty Certainty { get; init; }
}

/// <summary>Kinds of supplies.</summary>
public enum SupplyKind
{
    /// <summary>Alkaline cell.</summary>
    Alkaline,

    /// <summary>Rechargeable nickel-metal hydride cell.</summary>
    NickelMetalHydride,

    /// <summary>Lithium coin cell.</summary>
    LithiumCoin,

    /// <summary>Regulated adaptor or USB port.</summary>
    Regulated,

    /// <summary>Power bank: regulated, with a store, and may sleep under a small load.</summary>
    PowerBank,
}

/// <summary>One point of a cell's curve.</summary>
public sealed record CellPoint
{
    /// <summary>Share left in the available well, 0 to 1.</summary>
    public required double Left { get; init; }

    /// <summary>Open-circuit voltage of one cell.</summary>
    public required Voltage Open { get; init; }

    /// <summary>Steady resistance of one cell.</summary>
    public required Resistance Inside { get; init; }
}
