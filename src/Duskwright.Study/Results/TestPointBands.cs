using System.Collections.Immutable;
using Duskwright.Circuits.Metering;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Solving;
using Duskwright.Faults.Testing;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Results;

/// <summary>What a meter in line with a house alone reads, and with one of its lamps out.</summary>
/// <param name="Healthy">All well, the meter in line.</param>
/// <param name="Out">With the lamp out whose loss shows least.</param>
/// <param name="Range">The meter's range.</param>
/// <param name="LampAmps">The current of each lamp, meter in line, A, by its name.</param>
/// <param name="PackVolts">Volts between the supply's ends then, V.</param>
/// <param name="AmpsPerVolt">How the current follows the volts at the supply's ends, A/V.</param>
/// <param name="Extremes">Least and most while lamps flicker, A; none where nothing does.</param>
internal sealed record TestPointBands(
    Prediction Healthy, Prediction Out, MeterRange Range, ImmutableArray<(string Lamp, double Amps)> LampAmps, double PackVolts, double AmpsPerVolt, (double Least, double Most)? Extremes)
{
    /// <summary>How often the driver of a flickering lamp changes state: common practice, no source; the slowest of usual ones, so that the watch is long enough.</summary>
    internal const double ChangesPerSecond = 5;

    private const double AgainUnexplained = Prediction.Discrepancy / 2;
    private const double SlopeVolts = 0.05;
    private const double LeastAmps = 1e-6;

    internal OneOut OneOut => OneOut.Of(Healthy, Out, Range);

    internal TestBand Band => TestBand.Of(Healthy, Range);

    /// <summary>Seconds to watch flickering lamps, whole and never less than ten, in which a slow meter settles.</summary>
    internal static double WatchSeconds(int lamps, double onShare) => Math.Max(10, Math.Ceiling(FlickerWatch.Seconds(lamps, onShare, ChangesPerSecond)));

    /// <summary>Read again at the same volts, by the same meter on the same ranges, in a room as warm, after a reading of the same house when all its lamps were seen lit.</summary>
    /// <remarks>
    /// What a meter reads too much it reads too much again; what is left is a count either way (typical, from memory). Within three kelvins
    /// the lamps' volts move the current by half a per cent (<see cref="Prediction.Discrepancy"/>), and the bends of the law stay as they were.
    /// </remarks>
    internal static OneOut Again(TestPointQuery query, double volts)
    {
        var (sound, less, range) = AtVolts(query, volts, Repeated);
        var (healthy, one) = (sound with { Unexplained = AgainUnexplained }, less with { Unexplained = AgainUnexplained });
        var again = Repeated(range);
        var error = again.Show(healthy.Amps).Error;
        return OneOut.Of(healthy.Given(healthy, healthy.Amps, error), one.Given(healthy, healthy.Amps, error), again);
    }

    private static MeterRange Repeated(MeterRange range) => range with { AccuracyShare = 0, AccuracyCounts = 1 };

    internal static TestPointBands Of(TestPointQuery query, CircuitNetwork circuit)
    {
        var test = query.Circuit(circuit);
        var source = circuit.Packs[0].Source;
        var range = OneOut.RangeFor(TestPointQuery.Meter, Math.Abs(Solved(circuit.Network).ElementAmps[source]));
        var metered = test.With(range);
        var solution = Solved(metered.Network);
        var (plus, amps) = (circuit.Packs[0].Plus, solution.ElementAmps);
        var volts = solution.NodeVolts[plus] + (amps[source] * range.Ohms);
        var fewest = circuit.Lamps.Where(l => l.Building == query.Building && amps[l.Element] > LeastAmps).Select(l => (int?)l.Element).MinBy(e => amps[e!.Value]);
        var healthy = Prediction.Of(metered);
        return new TestPointBands(
            healthy,
            fewest is { } lamp ? Prediction.Of(metered.Without(lamp)) : healthy,
            range,
            [.. circuit.Lamps.Select(l => (l.Building == query.Building ? l.Input.Name : $"{l.Input.Name} of {query.Company.First(c => c.Key == l.Building).Name}", amps[l.Element]))],
            volts,
            (At(test, source, volts + SlopeVolts, range) - At(test, source, volts - SlopeVolts, range)) / (2 * SlopeVolts),
            query.Flickers ? (Held(query, circuit, source, range, false), Held(query, circuit, source, range, true)) : null);
    }

    /// <summary>The prediction for volts that were read beside the amperes.</summary>
    internal static (Prediction Healthy, Prediction Out, MeterRange Range) AtVolts(TestPointQuery query, double volts) => AtVolts(query, volts, r => r);

    private static (Prediction Healthy, Prediction Out, MeterRange Range) AtVolts(TestPointQuery query, double volts, Func<MeterRange, MeterRange> voltmeter)
    {
        var circuit = CircuitNetwork.Of(query.Typical);
        var source = circuit.Packs[0].Source;
        var error = voltmeter(Meter.Fitting(TestPointQuery.Meter.VoltageRanges, volts)).Show(volts).Error;
        var test = query.Circuit(circuit).AtVolts(source, volts, error);
        var free = Solved(test.Network).ElementAmps;
        var range = OneOut.RangeFor(TestPointQuery.Meter, Math.Abs(free[source]));
        var metered = test.With(range);
        var fewest = circuit.Lamps.Where(l => l.Building == query.Building && free[l.Element] > LeastAmps).Select(l => (int?)l.Element).MinBy(e => free[e!.Value]);
        var healthy = Prediction.Of(metered);
        return (healthy, fewest is { } lamp ? Prediction.Of(metered.Without(lamp)) : healthy, range);
    }

    private static double At(TestCircuit test, int source, double volts, MeterRange range) =>
        Solved(test.AtVolts(source, volts, 0).With(range).Network).ElementAmps[source];

    private static double Held(TestPointQuery query, CircuitNetwork circuit, int source, MeterRange range, bool lit) =>
        Solved((query.Circuit(circuit) with { Network = TestPointQuery.Held(circuit, lit), Factors = [] }).With(range).Network).ElementAmps[source];

    private static Solution Solved(Network network)
    {
        var solution = OperatingPoint.Solve(network);
        return solution.Status == SolveStatus.Solved
            ? solution
            : throw new InvalidOperationException($"The circuit has no solution at {solution.FailedAt} ({solution.Status}).");
    }
}
