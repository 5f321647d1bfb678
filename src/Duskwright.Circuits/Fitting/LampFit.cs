using System.Collections.Immutable;
using Duskwright.Circuits.Lamps;

namespace Duskwright.Circuits.Fitting;

/// <summary>An unlabelled lamp found from a few readings.</summary>
/// <remarks>
/// V = V_ref + n·V_T·ln(I/I_ref) + R·(I − I_ref) is straight in V_ref, n and R, so with normal priors and errors the posterior is normal
/// too and known in closed form (Gelman and others, Bayesian Data Analysis, 3rd edition, section 14.8, from memory). An error of the current
/// counts as one of the voltage through the slope of the curve; the fit is done twice, the second time with the slope of the first.
/// </remarks>
public sealed class LampFit
{
    private const int Unknowns = 3;
    private readonly double[] _mean;
    private readonly double[,] _covariance;

    private LampFit(double[] mean, double[,] covariance)
    {
        _mean = mean;
        _covariance = covariance;
    }

    /// <summary>The likely lamp at 20 °C.</summary>
    public LedLaw Law => new(_mean[0], LampPrior.RefAmps, Math.Max(_mean[1], 1), Math.Max(_mean[2], 0));

    /// <summary>Fits a lamp.</summary>
    /// <param name="readings">One to five readings, or more; none leaves the prior.</param>
    /// <param name="prior">What its colour tells.</param>
    /// <returns>The lamp and how sure it is.</returns>
    /// <exception cref="ArgumentException">A reading has no current or no error of voltage.</exception>
    public static LampFit Of(ImmutableArray<LampReading> readings, LampPrior prior)
    {
        if (readings.Any(r => !(r.Amps > 0) || !(r.VoltsSigma > 0) || !(r.AmpsSigma >= 0)))
        {
            throw new ArgumentException("A reading has a current and an error of its voltage above 0, and an error of its current of 0 or more.", nameof(readings));
        }

        double[] mean = [prior.RefVolts, prior.Ideality, prior.SeriesOhms];
        double[] sigma = [prior.RefVoltsSigma, prior.IdealitySigma, prior.SeriesOhmsSigma];
        var first = Update(readings, mean, sigma, mean);
        return Update(readings, mean, sigma, first._mean);
    }

    /// <summary>Voltage across the lamp at a current.</summary>
    /// <param name="amps">A, more than zero.</param>
    /// <returns>V.</returns>
    public Estimate VoltsAt(double amps) => Estimate.Normal(Dot(Row(amps), _mean), Math.Sqrt(Quadratic(Row(amps))));

    /// <summary>Current behind a resistor from a supply.</summary>
    /// <param name="supplyVolts">V.</param>
    /// <param name="resistorOhms">Ω, zero or more.</param>
    /// <returns>A. The range follows from that of the voltage at this current and the slope of lamp and resistor.</returns>
    public Estimate AmpsBehind(double supplyVolts, double resistorOhms)
    {
        var point = Law.At(supplyVolts, resistorOhms);
        var sigma = Math.Sqrt(Quadratic(Row(point.LitAmps))) * point.Siemens;
        return Estimate.Normal(point.LitAmps, sigma) with { Low = Math.Max(0, point.LitAmps - (Estimate.NineInTenSigmas * sigma)) };
    }

    private static LampFit Update(ImmutableArray<LampReading> readings, double[] priorMean, double[] priorSigma, double[] slopesFrom)
    {
        // Measurement by measurement (Kalman's update): K = P·h/(hᵀPh + σ²), m += K·(v − h·m), P −= K·hᵀP.
        var mean = (double[])priorMean.Clone();
        var p = new double[Unknowns, Unknowns];
        for (var i = 0; i < Unknowns; i++)
        {
            p[i, i] = priorSigma[i] * priorSigma[i];
        }

        foreach (var reading in readings)
        {
            var h = Row(reading.Amps);
            var slope = (slopesFrom[1] * ThermalVolts / reading.Amps) + slopesFrom[2];
            var ph = Times(p, h);
            var variance = Dot(h, ph) + (reading.VoltsSigma * reading.VoltsSigma) + (slope * slope * reading.AmpsSigma * reading.AmpsSigma);
            var error = reading.Volts - Dot(h, mean);
            for (var i = 0; i < Unknowns; i++)
            {
                mean[i] += ph[i] / variance * error;
                for (var j = 0; j < Unknowns; j++)
                {
                    p[i, j] -= ph[i] * ph[j] / variance;
                }
            }
        }

        return new LampFit(mean, p);
    }

    private const double ThermalVolts = LedLaw.BoltzmannOverCharge * LedLaw.RoomKelvin;

    private static double[] Row(double amps) => [1, ThermalVolts * Math.Log(amps / LampPrior.RefAmps), amps - LampPrior.RefAmps];

    private double Quadratic(double[] row) => Dot(row, Times(_covariance, row));

    private static double[] Times(double[,] matrix, double[] vector) =>
        [.. Enumerable.Range(0, Unknowns).Select(i => Enumerable.Range(0, Unknowns).Sum(j => matrix[i, j] * vector[j]))];

    private static double Dot(double[] a, double[] b) => a.Zip(b, (x, y) => x * y).Sum();
}
