namespace Duskwright.Circuits.Fitting;

/// <summary>What is known of a lamp before it is measured: means and standard deviations, taken as independent and normal.</summary>
/// <param name="RefVolts">Voltage at 1 mA, V.</param>
/// <param name="RefVoltsSigma">Its standard deviation, V.</param>
/// <param name="Ideality">n.</param>
/// <param name="IdealitySigma">Its standard deviation.</param>
/// <param name="SeriesOhms">Resistance inside, Ω.</param>
/// <param name="SeriesOhmsSigma">Its standard deviation, Ω.</param>
/// <remarks>The two below are common practice, no source: white, blue and green are one family of chips, red to yellow another.</remarks>
public sealed record LampPrior(double RefVolts, double RefVoltsSigma, double Ideality, double IdealitySigma, double SeriesOhms, double SeriesOhmsSigma)
{
    /// <summary>The current at which <see cref="RefVolts"/> is stated, A.</summary>
    public const double RefAmps = 1e-3;

    /// <summary>White, blue or green.</summary>
    public static LampPrior White { get; } = new(2.7, 0.12, 2.2, 0.4, 13, 5);

    /// <summary>Red, amber or yellow.</summary>
    public static LampPrior Red { get; } = new(1.75, 0.08, 2.0, 0.3, 9, 4);
}
