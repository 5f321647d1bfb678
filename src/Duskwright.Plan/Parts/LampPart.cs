using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Parts;

/// <summary>A kind of lamp.</summary>
/// <remarks>
/// The forward curve is V = V_ref + n·V_T·ln(I/I_ref) + R·(I − I_ref), with V_T = kT/q; for a flickering lamp it is that of the lit state,
/// with the driver's resistance in R. A filament lamp has the rated voltage and current of its reference point.
/// </remarks>
public sealed record LampPart
{
    /// <summary>How the part is referred to.</summary>
    public required string Id { get; init; }

    /// <summary>What it is, in plain words.</summary>
    public required string Name { get; init; }

    /// <summary>Its kind.</summary>
    public LampKind Kind { get; init; }

    /// <summary>Its colour, in a word.</summary>
    public string? Colour { get; init; }

    /// <summary>Package or body: 3 mm round, 0805.</summary>
    public string? Body { get; init; }

    /// <summary>Hole that takes it in a lamp card.</summary>
    public Length? CardHole { get; init; }

    /// <summary>V_ref: voltage across it at the reference current.</summary>
    public required Voltage ReferenceVoltage { get; init; }

    /// <summary>I_ref: the reference current, more than zero.</summary>
    public required Current ReferenceCurrent { get; init; }

    /// <summary>n: ideality.</summary>
    public double Ideality { get; init; } = 2;

    /// <summary>R: series resistance inside the part, a built-in resistor included.</summary>
    public Resistance SeriesResistance { get; init; }

    /// <summary>How far the voltage of single parts lies to either side.</summary>
    public Voltage VoltageSpread { get; init; }

    /// <summary>The most steady current.</summary>
    public Current? MostCurrent { get; init; }

    /// <summary>Intensity along its axis at the intensity current.</summary>
    public LuminousIntensity? Intensity { get; init; }

    /// <summary>The current at which the intensity is stated.</summary>
    public Current? IntensityCurrent { get; init; }

    /// <summary>Full angle between the directions of half intensity.</summary>
    public Angle? ViewingAngle { get; init; }

    /// <summary>For a flickering lamp: the least voltage at which its driver works.</summary>
    public Voltage? LeastVoltage { get; init; }

    /// <summary>For a flickering lamp: current in the dark state at 3 V.</summary>
    public Current? OffCurrent { get; init; }

    /// <summary>For a flickering lamp: mean share of the time that it is lit, 0 to 1.</summary>
    public double? OnShare { get; init; }

    /// <summary>Price of one.</summary>
    public Price? Price { get; init; }

    /// <summary>Pieces sold together.</summary>
    public int? SoldBy { get; init; }

    /// <summary>Where the figures come from.</summary>
    public required string Source { get; init; }

    /// <summary>How sure they are.</summary>
    public Certainty Certainty { get; init; }
}

/// <summary>Kinds of lamps.</summary>
public enum LampKind
{
    /// <summary>A plain LED.</summary>
    Led,

    /// <summary>An LED with a random driver in its body.</summary>
    Flickering,

    /// <summary>An LED with a resistor built in for a stated voltage.</summary>
    ReadyWired,

    /// <summary>A filament lamp.</summary>
    Filament,
}
