using System.Collections.Immutable;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Solving;

namespace Duskwright.Faults.Testing;

/// <summary>What a current is expected to be, and how it moves with all that is not known.</summary>
/// <param name="Amps">The current with all parts in the middle of their spread, A.</param>
/// <param name="Slopes">Change of its logarithm for one standard deviation of each factor, by the factor's name.</param>
/// <param name="Lasting">The factors that are the same at the next reading.</param>
/// <remarks>
/// First order in the logarithm of the current, so that it stays above zero and lamps without a resistor, whose current grows
/// exponentially with the volts, are met as well: ln I = ln I₀ + Σ s·z, z standard normal (propagation of error, e.g. JCGM 100:2008,
/// equation 10; slopes by central differences, section 5.1.3 note 2).
/// </remarks>
public sealed record Prediction(double Amps, ImmutableDictionary<string, double> Slopes, ImmutableHashSet<string> Lasting)
{
    /// <summary>What the parts' own spread leaves out, as a deviation of the logarithm: a room ten kelvins warmer or colder, ageing lamps, bends of the law.</summary>
    /// <remarks>Ten kelvins move a white lamp by 30 mV (<see cref="Circuits.Lamps.LedLaw.WhiteVoltsPerKelvin"/>), of 1.8 V over its resistor on three cells: 1.7 %.</remarks>
    public const double Discrepancy = 0.02;

    /// <summary>What is left out here: less than <see cref="Discrepancy"/> where the same parts are read again in a room as warm.</summary>
    public double Unexplained { get; init; } = Discrepancy;

    // Less than this is nothing: a meter's last digit is 1 µA at best.
    private const double LeastAmps = 1e-9;

    /// <summary>Standard deviation of the current's logarithm, the discrepancy included.</summary>
    public double Deviation => Math.Sqrt(Slopes.Values.Sum(s => s * s) + (Unexplained * Unexplained));

    /// <summary>Predicts the current that is read in a test.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <returns>The prediction.</returns>
    /// <exception cref="InvalidOperationException">The circuit has no solution; the message names the element.</exception>
    public static Prediction Of(TestCircuit circuit)
    {
        var solver = new NetworkSolver(circuit.Network);
        var start = Solved(solver.Solve(circuit.Network)).NodeVolts;
        double Log(ImmutableArray<(int Element, Element Now)> parts)
        {
            var elements = circuit.Network.Elements.ToBuilder();
            foreach (var (element, now) in parts)
            {
                elements[element] = now;
            }

            return Math.Log(Math.Max(LeastAmps, Math.Abs(Solved(solver.Solve(new Network(circuit.Network.NodeCount, elements.ToImmutable()), start.AsSpan())).ElementAmps[circuit.ReadAt])));
        }

        return new Prediction(
            Math.Exp(Log([])),
            circuit.Factors.ToImmutableDictionary(f => f.Name, f => (Log(f.Raised) - Log(f.Lowered)) / (2 * f.Deviations), StringComparer.Ordinal),
            [.. circuit.Factors.Where(f => f.Lasts).Select(f => f.Name)]);
    }

    /// <summary>Several houses side by side on one supply: currents add, and what they share moves them together.</summary>
    /// <param name="houses">The current of each alone; at least one.</param>
    /// <returns>The current of all. What they take from one another through the supply's resistance is left out.</returns>
    public static Prediction Together(IReadOnlyCollection<Prediction> houses)
    {
        var amps = houses.Sum(h => h.Amps);
        var slopes = houses.SelectMany(h => h.Slopes.Select(s => (s.Key, Amps: s.Value * h.Amps))).GroupBy(s => s.Key, StringComparer.Ordinal);
        return new Prediction(amps, slopes.ToImmutableDictionary(g => g.Key, g => g.Sum(s => s.Amps) / amps, StringComparer.Ordinal), [.. houses.SelectMany(h => h.Lasting)]);
    }

    /// <summary>Sharpened by an earlier reading of the same sound parts.</summary>
    /// <param name="earlier">What was expected then.</param>
    /// <param name="readAmps">What was read, A, more than zero.</param>
    /// <param name="errorAmps">How far off that reading may be either way, A.</param>
    /// <returns>The prediction given the reading: of two jointly normal values one is known (Bishop, Pattern Recognition and Machine Learning, 2006, equations 2.81 and 2.82).</returns>
    public Prediction Given(Prediction earlier, double readAmps, double errorAmps)
    {
        var readError = errorAmps / TestCircuit.ErrorDeviations / readAmps;
        var variance = (earlier.Deviation * earlier.Deviation) + (readError * readError);
        var shared = Slopes.Where(s => Lasting.Contains(s.Key) && earlier.Slopes.ContainsKey(s.Key)).ToList();
        var covariance = shared.Sum(s => s.Value * earlier.Slopes[s.Key]);
        var log = Math.Log(Amps) + (covariance / variance * Math.Log(readAmps / earlier.Amps));

        // One slope stands for all that is left of the shared ones.
        var left = Math.Sqrt(Math.Max(0, shared.Sum(s => s.Value * s.Value) - (covariance * covariance / variance)));
        return new Prediction(
            Math.Exp(log),
            Slopes.RemoveRange(shared.Select(s => s.Key)).SetItem("left open by the last reading", left),
            Lasting.Except(shared.Select(s => s.Key)))
        {
            Unexplained = Unexplained,
        };
    }

    private static Solution Solved(Solution solution) => solution.Status == SolveStatus.Solved
        ? solution
        : throw new InvalidOperationException($"The circuit has no solution at {solution.FailedAt} ({solution.Status}).");
}
