using Duskwright.Circuits.Faulting;
using Duskwright.Faults.Signatures;
using Duskwright.Faults.Testing;

namespace Duskwright.Faults.Finding;

/// <summary>How well a fault agrees with what was seen.</summary>
internal static class Likelihood
{
    // A lamp near the edge of dim is told one way or the other: a deviation of a tenth of its light between pieces and eyes, assumed.
    private const double EyeDeviation = 0.15;
    private const double DarkEdgeDeviation = 0.5;

    // Student's t with four degrees of freedom: a reading far off is unlikely and not impossible.
    private const double Freedom = 4;

    /// <summary>A limit of error counts as so many deviations.</summary>
    internal const double LimitDeviations = 2;

    private static readonly double DimLog = Math.Log(BankView.DimShare);
    private static readonly double DarkLog = Math.Log(BankView.DarkShare);

    /// <summary>Nodes and weights of Gauss and Hermite's rule of five points for a standard normal value (Abramowitz and Stegun, table 25.10, from memory).</summary>
    internal static (double At, double Weight)[] Nodes { get; } = [(-2.8570, 0.01126), (-1.3556, 0.22208), (0, 0.53333), (1.3556, 0.22208), (2.8570, 0.01126)];

    /// <summary>What all lamps behind a fault share: how bad a bad joint is, how flat a flat cell. Deviation of the logarithm of their light, assumed.</summary>
    internal static double Severity(FaultKind kind) => kind switch
    {
        FaultKind.PairNicked => 0.6,
        FaultKind.CellFlat => 0.3,
        _ => 0,
    };

    /// <summary>Deviation of the current that a short adds, as a share: of a shorted pair its length, even within a tenth; of a shorted lamp its resistor, even within a twentieth (JCGM 100:2008, 4.3.7).</summary>
    internal static double AddedSpread(FaultKind kind) => kind switch
    {
        FaultKind.PairShorted => 0.1 / Math.Sqrt(3),
        FaultKind.LampShorted => 0.05 / Math.Sqrt(3),
        _ => 0,
    };

    /// <summary>How often a lamp with a share of its light is told to look so.</summary>
    internal static double Of(LampLook seen, double lightShare, double misread)
    {
        var log = Math.Log(Math.Max(1e-9, lightShare));
        var lit = Normal.ShareBelow((log - DimLog) / EyeDeviation);
        var dark = 1 - Normal.ShareBelow((log - DarkLog) / DarkEdgeDeviation);
        var right = seen switch { LampLook.Lit => lit, LampLook.Dark => dark, _ => Math.Max(0, 1 - lit - dark) };
        return ((1 - misread) * right) + (misread / 2 * (1 - right));
    }

    /// <summary>Density of a reading, against the others.</summary>
    /// <param name="reading">The reading with its own band, whose ends count as two deviations.</param>
    /// <param name="expectedAmps">What is expected, A.</param>
    /// <param name="spreadAmps">Deviation of what is expected, A.</param>
    internal static double Of(AmpsReading reading, double expectedAmps, double spreadAmps)
    {
        var half = (reading.MostAmps - reading.LeastAmps) / 2 / LimitDeviations;
        var deviation = Math.Sqrt((half * half) + (spreadAmps * spreadAmps));
        var z = (((reading.LeastAmps + reading.MostAmps) / 2) - expectedAmps) / deviation;
        return half / deviation * Tail(z);
    }

    /// <summary>Student's t, 1 in the middle.</summary>
    internal static double Tail(double z) => Math.Pow(1 + (z * z / Freedom), -(Freedom + 1) / 2);
}
