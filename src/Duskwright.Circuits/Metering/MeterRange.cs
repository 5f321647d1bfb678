namespace Duskwright.Circuits.Metering;

/// <summary>One range of a meter.</summary>
/// <param name="FullScale">The most it shows, V or A.</param>
/// <param name="Counts">Steps of its display up to full scale, 1 or more.</param>
/// <param name="Ohms">Resistance between its leads, Ω: the burden of a current range, the input resistance of a voltage range.</param>
/// <param name="AccuracyShare">Error in proportion to the reading, 0.01 for 1 %.</param>
/// <param name="AccuracyCounts">Error in last digits besides.</param>
public sealed record MeterRange(double FullScale, int Counts, double Ohms, double AccuracyShare, double AccuracyCounts)
{
    /// <summary>What the display shows.</summary>
    /// <param name="value">What is between the leads, V or A.</param>
    /// <returns>The value in whole counts with the error it may have; over range, which displays show as a sign without a number, when it does not fit.</returns>
    public MeterReading Show(double value)
    {
        var count = FullScale / Counts;
        var shown = Math.Round(value / count) * count;
        return Math.Abs(shown) > FullScale
            ? new MeterReading(null, double.PositiveInfinity)
            : new MeterReading(shown, (AccuracyShare * Math.Abs(value)) + ((AccuracyCounts + 0.5) * count));
    }
}
