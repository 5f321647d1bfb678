namespace Duskwright.Circuits.Tests.Supplies;

/// <summary>What a bench load keeps constant.</summary>
internal enum BenchLoadKind
{
    /// <summary>Its resistance, Ω.</summary>
    Resistance,

    /// <summary>Its current, A.</summary>
    Current,

    /// <summary>Its power, W.</summary>
    Power,
}

/// <summary>A load as cells are tested with.</summary>
/// <param name="Kind">What it keeps constant.</param>
/// <param name="Value">Ω, A or W, more than zero.</param>
internal sealed record BenchLoad(BenchLoadKind Kind, double Value)
{
    /// <summary>Ω, A or W, more than zero.</summary>
    public double Value { get; init; } = Value > 0
        ? Value
        : throw new ArgumentOutOfRangeException(nameof(Value), Value, "A bench load keeps more than 0 Ω, A or W.");

    /// <summary>What flows from a source through the load.</summary>
    /// <param name="openVolts">Open voltage of the source, V.</param>
    /// <param name="ohms">Its resistance, Ω.</param>
    /// <returns>Current, A, and volts at the load; no number where the source cannot give so much power.</returns>
    public (double Amps, double Volts) On(double openVolts, double ohms)
    {
        var amps = Kind switch
        {
            BenchLoadKind.Resistance => openVolts / (ohms + Value),
            BenchLoadKind.Current => Value,

            // P = (E − I·R)·I, the lesser of its two currents.
            _ => (openVolts - Math.Sqrt((openVolts * openVolts) - (4 * ohms * Value))) / (2 * ohms),
        };
        return (amps, openVolts - (amps * ohms));
    }
}
