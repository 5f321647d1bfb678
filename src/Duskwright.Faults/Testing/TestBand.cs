using Duskwright.Circuits.Metering;

namespace Duskwright.Faults.Testing;

/// <summary>The readings that healthy parts can give.</summary>
/// <param name="LeastAmps">The least, A.</param>
/// <param name="LikelyAmps">The middle, A.</param>
/// <param name="MostAmps">The most, A.</param>
public readonly record struct TestBand(double LeastAmps, double LikelyAmps, double MostAmps)
{
    // Two-sided, 0.5 % of healthy houses lie outside (normal distribution); so fewer than one in a hundred fail by chance.
    private const double Deviations = 2.807;

    /// <summary>The band of a prediction, the meter's own error at both ends.</summary>
    /// <param name="prediction">The current while the meter is in line.</param>
    /// <param name="range">The meter's range.</param>
    /// <returns>The band.</returns>
    public static TestBand Of(Prediction prediction, MeterRange range)
    {
        var factor = Math.Exp(Deviations * prediction.Deviation);
        var (least, most) = (prediction.Amps / factor, prediction.Amps * factor);
        return new TestBand(Math.Max(0, least - range.Show(least).Error), prediction.Amps, most + Error(range, most));
    }

    /// <summary>Whether a reading lies in it.</summary>
    /// <param name="amps">The reading, A.</param>
    /// <returns>Whether healthy parts can give it.</returns>
    public bool Holds(double amps) => amps >= LeastAmps && amps <= MostAmps;

    /// <summary>How often another circuit's reading would lie in this band.</summary>
    /// <param name="other">What is expected of the other circuit.</param>
    /// <param name="range">The meter's range.</param>
    /// <returns>A share, 0 to 1; the meter is taken to err as is worst.</returns>
    public double PassShare(Prediction other, MeterRange range)
    {
        var error = Error(range, other.Amps);
        double Below(double amps) => amps <= 0 ? 0 : Normal.ShareBelow(Math.Log(amps / other.Amps) / other.Deviation);
        return Math.Max(0, Below(MostAmps + error) - Below(LeastAmps - error));
    }

    // A reading beyond the range's end would be taken on the next one, with much the same error in proportion.
    private static double Error(MeterRange range, double amps) => range.Show(Math.Min(amps, range.FullScale)).Error;
}
