using System.Collections.Immutable;
using Duskwright.Circuits.Supplies;

namespace Duskwright.Circuits.Fitting;

/// <summary>What is left in a pack, and its resistance, from open and loaded voltages.</summary>
/// <param name="ChargeLeft">Share of its charge left, 0 to 1.</param>
/// <param name="Ohms">Resistance between its ends, Ω.</param>
/// <remarks>
/// The probability of every pair of charge left and resistance is laid out on a grid (Gelman and others, Bayesian Data Analysis, 3rd
/// edition, section 10.1, from memory). Before measuring, any charge from empty to full is equally likely, the resistance is that of the
/// cell's curve within a factor of normal logarithm, and the open voltage of makes differs by some hundredths of a volt a cell: of the LR6
/// and LR03 whose curves are in tests/Reference by 0.03 V halfway down.
/// </remarks>
public sealed record PackFit(Estimate ChargeLeft, Estimate Ohms)
{
    /// <summary>Standard deviation of the logarithm of resistance among cells of one kind: about a quarter. Common practice, no source.</summary>
    public const double OhmsLogSigma = 0.25;

    /// <summary>Standard deviation of the open voltage of one cell among makes, V.</summary>
    public const double OpenVoltsSigma = 0.02;

    private const int ChargeSteps = 400;
    private const int OhmsSteps = 61;
    private const double OhmsReach = 3;

    /// <summary>Fits a rested pack.</summary>
    /// <param name="pack">Its cells and how many.</param>
    /// <param name="readings">One reading or more.</param>
    /// <returns>What is left and the resistance, with ranges.</returns>
    /// <exception cref="ArgumentException">There is no reading, or one without an error.</exception>
    public static PackFit Of(PackLaw pack, ImmutableArray<PackReading> readings)
    {
        if (readings.IsEmpty || readings.Any(r => !(r.VoltsSigma > 0)))
        {
            throw new ArgumentException("A pack is fitted from one reading or more, each with an error above 0 V.", nameof(readings));
        }

        var points = new List<(double Charge, double Ohms, double LogWeight)>(ChargeSteps * OhmsSteps);
        for (var i = 0; i < ChargeSteps; i++)
        {
            var left = (i + 0.5) / ChargeSteps;
            var state = CellState.At(pack.Cell, left);
            for (var j = 0; j < OhmsSteps; j++)
            {
                var sigmas = OhmsReach * ((2.0 * j / (OhmsSteps - 1)) - 1);
                var inside = ((pack.Ohms(state) - pack.ExtraOhms) * Math.Exp(OhmsLogSigma * sigmas)) + pack.ExtraOhms;
                points.Add((left, inside, (-0.5 * sigmas * sigmas) + LogLikelihood(pack.OpenVolts(state), inside, pack.Series * OpenVoltsSigma, readings)));
            }
        }

        // Weights against the greatest, so that readings far from any curve do not vanish.
        var greatest = points.Max(p => p.LogWeight);
        return new PackFit(
            Ranges(points.Select(p => (p.Charge, Math.Exp(p.LogWeight - greatest)))),
            Ranges(points.Select(p => (p.Ohms, Math.Exp(p.LogWeight - greatest))).OrderBy(p => p.Ohms)));
    }

    // The make's own shift of open voltage is common to all readings of one pack and integrated out: with errors σᵢ and shift of deviation s,
    // the exponent is −½·(Σ wᵢeᵢ² − (Σ wᵢeᵢ)²/(Σ wᵢ + 1/s²)) with wᵢ = 1/σᵢ².
    private static double LogLikelihood(double openVolts, double ohms, double shiftSigma, ImmutableArray<PackReading> readings)
    {
        var (squares, sum, weights) = (0.0, 0.0, 1 / (shiftSigma * shiftSigma));
        foreach (var reading in readings)
        {
            var weight = 1 / (reading.VoltsSigma * reading.VoltsSigma);
            var error = reading.Volts - openVolts + (reading.Amps * ohms);
            squares += weight * error * error;
            sum += weight * error;
            weights += weight;
        }

        return -0.5 * (squares - (sum * sum / weights));
    }

    private static Estimate Ranges(IEnumerable<(double Value, double Weight)> rising)
    {
        var points = rising.ToList();
        var all = points.Sum(p => p.Weight);
        double At(double share)
        {
            var below = 0.0;
            return points.First(p => (below += p.Weight) >= share * all).Value;
        }

        return new Estimate(At(0.05), At(0.5), At(0.95));
    }
}
