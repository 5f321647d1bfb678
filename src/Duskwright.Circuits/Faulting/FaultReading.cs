using System.Numerics;
using System.Runtime.InteropServices;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Solving;

namespace Duskwright.Circuits.Faulting;

/// <summary>Reads off the lanes of a solver what faults do.</summary>
internal sealed class FaultReading
{
    // A thousandth of its reference light, which only a lamp that is reversed or hardly fed gives, is none.
    private const double NoLight = 1e-3;

    private readonly Network _network;
    private readonly int[] _lamps;
    private readonly int[] _sources;
    private readonly int[] _heaters;
    private readonly double[] _soundLight;

    internal FaultReading(Network network, LaneSolver solver)
    {
        _network = network;
        int[] Places(Func<Element, bool> which) => [.. Enumerable.Range(0, network.Elements.Length).Where(i => which(network.Elements[i]))];
        _lamps = Places(e => e is LampElement);
        _sources = Places(e => e is SourceElement);
        _heaters = Places(e => e is not SourceElement);
        solver.Solve([], _ => network);
        _soundLight = [.. _lamps.Select(l => solver.Lights(l)[0])];
        Sound = Of(solver)[0];
    }

    /// <summary>The circuit without a fault.</summary>
    internal FaultEffect Sound { get; }

    /// <summary>The effects in all lanes.</summary>
    internal FaultEffect[] Of(LaneSolver solver)
    {
        double[][] Rows(int places) => [.. Enumerable.Range(0, LaneValues.Lanes).Select(_ => new double[places])];
        var lightShares = Rows(_lamps.Length);
        for (var i = 0; i < _lamps.Length; i++)
        {
            var lamp = _lamps[i];
            Spread(_soundLight[i] > NoLight ? solver.Lights(lamp) / new Vector<double>(_soundLight[i]) : Vector<double>.One, lightShares, i);
        }

        var (hottest, watts) = Hottest(solver);
        return [.. Enumerable.Range(0, LaneValues.Lanes).Select(lane => new FaultEffect(
            solver.Status[lane],
            solver.FailedAt[lane],
            ImmutableCollectionsMarshal.AsImmutableArray(lightShares[lane]),
            [.. _sources.Select(s => solver.ElementAmps[s][lane])],
            [.. _sources.Select(s => -solver.Volts(s)[lane])],
            _network.Elements[(int)hottest[lane]].Name,
            watts[lane]))];
    }

    private static void Spread(Vector<double> values, double[][] rows, int place)
    {
        Span<double> lanes = stackalloc double[LaneValues.Lanes];
        values.CopyTo(lanes);
        for (var lane = 0; lane < lanes.Length; lane++)
        {
            rows[lane][place] = lanes[lane];
        }
    }

    private (Vector<double> Element, Vector<double> Watts) Hottest(LaneSolver solver)
    {
        var (hottest, most) = (new Vector<double>(_heaters[0]), Vector<double>.Zero);
        foreach (var i in _heaters)
        {
            var amps = solver.ElementAmps[i];
            var watts = amps * amps * solver.Values.Ohms[i];
            var isHotter = Vector.GreaterThan(watts, most) & Vector.LessThan(solver.Values.Ohms[i], new Vector<double>(FaultSweep.GapOhms));
            (hottest, most) = (Vector.ConditionalSelect(isHotter, new Vector<double>(i), hottest), Vector.ConditionalSelect(isHotter, watts, most));
        }

        return (hottest, most);
    }
}
