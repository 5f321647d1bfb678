using Duskwright.Faults.Signatures;

namespace Duskwright.Faults.Finding;

/// <summary>How well a fault agrees with what was seen, and how common it is to begin with.</summary>
/// <remarks>
/// The order open joint, short, reversed, dead LED is common practice, no source; that each is half as common as the one before it is
/// assumed. A flat cell is taken to be as common as an open joint, a nicked wire as a dead LED, assumed. So are the eye's mistakes below.
/// </remarks>
internal static class Likelihood
{
    // Of a hundred looks ninety are told rightly, nine one step off (dim for dark or lit), one wholly wrong.
    private const double Right = 0.9;
    private const double OneOff = 0.09;
    private const double Wrong = 0.01;

    // However far a reading is off, it may have been taken wrongly.
    private const double Misread = 0.001;

    internal static double Before(FaultKind kind) => kind switch
    {
        FaultKind.PairOpen or FaultKind.LampJointOpen or FaultKind.CellFlat => 8,
        FaultKind.PairShorted or FaultKind.LampShorted => 4,
        FaultKind.PairReversed or FaultKind.LampReversed => 2,
        FaultKind.LampDead or FaultKind.PairNicked => 1,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "This kind of fault is not known."),
    };

    internal static double Of(LampLook seen, LampLook expected) => Math.Abs((int)seen - (int)expected) switch { 0 => Right, 1 => OneOff, _ => Wrong };

    // Inside the band all is well; outside, it falls like a normal error whose deviation is half the band.
    internal static double Of(AmpsReading reading, double expectedAmps)
    {
        var outside = Math.Max(0, Math.Max(reading.LeastAmps - expectedAmps, expectedAmps - reading.MostAmps));
        if (outside == 0)
        {
            return 1;
        }

        var deviations = outside / ((reading.MostAmps - reading.LeastAmps) / 2);
        return Math.Max(Misread, Math.Exp(-0.5 * deviations * deviations));
    }
}
