namespace Duskwright.Circuits.Fitting;

/// <summary>A value found from readings, with the range it lies in nine times out of ten.</summary>
/// <param name="Low">Only one in twenty lies lower.</param>
/// <param name="Likely">The middle.</param>
/// <param name="High">Only one in twenty lies higher.</param>
public readonly record struct Estimate(double Low, double Likely, double High)
{
    /// <summary>The 95 % point of the normal distribution, in standard deviations.</summary>
    public const double NineInTenSigmas = 1.6449;

    /// <summary>The range of a normal distribution.</summary>
    /// <param name="mean">Its mean.</param>
    /// <param name="sigma">Its standard deviation.</param>
    /// <returns>Mean and range.</returns>
    public static Estimate Normal(double mean, double sigma) => new(mean - (NineInTenSigmas * sigma), mean, mean + (NineInTenSigmas * sigma));
}
