using System.Collections.Immutable;

namespace Duskwright.Circuits.Tolerance;

/// <summary>How far parts of one kind lie from one another: standard deviations, independent and normal where nothing else is said.</summary>
/// <remarks>
/// Volts of a lamp: makers' halves of ranges (±0.2 V white, ±0.1 V red) are taken as two deviations, a batch shifted by as much again of
/// which nobody in one town sees anything but the current. Three LEDs of each colour from one string spread by 0.04 to 0.15 V
/// (tests/Reference/led-forward-voltage-measured-spread.csv). The others are common practice, no source.
/// </remarks>
public sealed record Spreads
{
    /// <summary>The usual spreads.</summary>
    public static Spreads Usual { get; } = new();

    /// <summary>Voltage of single lamps at one current, V, where <see cref="LampPieceVolts"/> does not name one.</summary>
    public double PieceVolts { get; init; } = 0.06;

    /// <summary>Voltage of single lamps by the place of their element, V; they go before <see cref="PieceVolts"/>.</summary>
    public ImmutableDictionary<int, double> LampPieceVolts { get; init; } = ImmutableDictionary<int, double>.Empty;

    /// <summary>Voltage of the whole batch, V, common to all lamps.</summary>
    public double BatchVolts { get; init; } = 0.05;

    /// <summary>Light of single lamps at one current, as a share.</summary>
    public double PieceLight { get; init; } = 0.08;

    /// <summary>Resistors at lamps, as a share: 5 % parts lie within two deviations.</summary>
    public double Resistor { get; init; } = 0.025;

    /// <summary>Resistance of wires, switches and joints, as a share: lengths are rarely cut as drawn.</summary>
    public double Wire { get; init; } = 0.15;

    /// <summary>A joint's own resistance at each end of a wire, Ω; a half-normal value, since no joint has less than none.</summary>
    public double JointOhms { get; init; } = 0.02;

    /// <summary>Open voltage of a pack, as a share.</summary>
    public double SourceVolts { get; init; } = 0.01;

    /// <summary>Resistance of a pack, as a deviation of its logarithm.</summary>
    public double SourceOhms { get; init; } = 0.25;

    /// <summary>Charge of a cell, as a share: makes of LR6 give 1.17 to 1.84 Ah at 0.5 A (tests/Reference/battery-capacity-vs-load.csv).</summary>
    public double Charge { get; init; } = 0.12;

    /// <summary>Parts the maker does not know.</summary>
    public ImmutableArray<UnknownPart> Unknowns { get; init; } = [];
}
