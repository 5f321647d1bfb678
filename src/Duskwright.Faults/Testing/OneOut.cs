using Duskwright.Circuits.Metering;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Solving;

namespace Duskwright.Faults.Testing;

/// <summary>Whether a reading can tell all well from one lamp out.</summary>
/// <param name="Healthy">Readings that healthy parts can give.</param>
/// <param name="Out">Readings with the lamp out whose loss shows least.</param>
/// <param name="PassShare">How often that lamp's loss would pass for health, 0 to 1.</param>
public sealed record OneOut(TestBand Healthy, TestBand Out, double PassShare)
{
    /// <summary>The most often that a missing lamp may pass in a test that is said to tell.</summary>
    public const double MostPassShare = 0.01;

    /// <summary>Whether the reading tells.</summary>
    public bool Tells => PassShare < MostPassShare;

    /// <summary>Judges a test circuit.</summary>
    /// <param name="circuit">The circuit without the meter.</param>
    /// <param name="meter">The meter.</param>
    /// <param name="sharpen">What else is known, laid on the prediction of a circuit; none for nothing.</param>
    /// <returns>The bands; none where no lamp carries anything.</returns>
    /// <exception cref="InvalidOperationException">The circuit has no solution; the message names the element.</exception>
    public static OneOut? Of(TestCircuit circuit, Meter meter, Func<Prediction, Prediction>? sharpen = null)
    {
        var solution = OperatingPoint.Solve(circuit.Network);
        var lamps = Enumerable.Range(0, circuit.Network.Elements.Length).Where(i => circuit.Network.Elements[i] is LampElement && solution.ElementAmps[i] > LeastAmps).ToList();
        if (solution.Status != SolveStatus.Solved || lamps.Count == 0)
        {
            return null;
        }

        var range = RangeFor(meter, Math.Abs(solution.ElementAmps[circuit.ReadAt]));
        var metered = circuit.With(range);
        Prediction Expected(TestCircuit test) => sharpen is null ? Prediction.Of(test) : sharpen(Prediction.Of(test));
        return Of(Expected(metered), Expected(metered.Without(lamps.MinBy(l => solution.ElementAmps[l]))), range);
    }

    /// <summary>Judges two predictions.</summary>
    /// <param name="healthy">With all lamps.</param>
    /// <param name="one">With one out.</param>
    /// <param name="range">The meter's range.</param>
    /// <returns>The bands.</returns>
    public static OneOut Of(Prediction healthy, Prediction one, MeterRange range)
    {
        var band = TestBand.Of(healthy, range);
        return new OneOut(band, TestBand.Of(one, range), band.PassShare(one, range));
    }

    /// <summary>The range a maker would choose: the smallest that also shows half as much again.</summary>
    /// <param name="meter">The meter.</param>
    /// <param name="amps">What is expected, A.</param>
    /// <returns>The range.</returns>
    public static MeterRange RangeFor(Meter meter, double amps) => Meter.Fitting(meter.CurrentRanges, Headroom * amps);

    private const double Headroom = 1.5;

    // A lamp that takes less than a microampere is dark by design.
    private const double LeastAmps = 1e-6;
}
