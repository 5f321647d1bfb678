using System.Collections.Immutable;
using System.Numerics;
using Duskwright.Circuits.Lamps;
using Duskwright.Circuits.Networks;

namespace Duskwright.Circuits.Solving;

/// <summary>Solves as many networks of one structure at once as the vector unit has lanes; each lane's numbers are set in <see cref="Values"/>.</summary>
/// <remarks>Several solvers may share a plan, one a core. Not safe for two threads at once.</remarks>
internal sealed class LaneSolver
{
    private readonly LaneNewton _newton;
    private readonly LaneBalance _balance;
    private readonly Network _network;

    /// <summary>Prepares a structure.</summary>
    /// <param name="plan">How the network comes apart.</param>
    /// <param name="network">The network that every lane starts as.</param>
    /// <param name="start">Its node voltages, from which every solve starts.</param>
    internal LaneSolver(PortPlan plan, Network network, ImmutableArray<double> start)
    {
        _network = network;
        Values = new LaneValues(network);
        _newton = new LaneNewton(plan, Values);
        _balance = new LaneBalance(network);
        _newton.Load();
        _newton.Prepare(start.AsSpan());
    }

    /// <summary>The numbers of each lane.</summary>
    internal LaneValues Values { get; }

    /// <summary>Voltage of each node in each lane, V.</summary>
    internal Vector<double>[] NodeVolts => _newton.NodeVolts;

    /// <summary>Current of each element from its first end in the network given to its second, in each lane, A.</summary>
    internal Vector<double>[] ElementAmps => _newton.ElementAmps;

    /// <summary>How each lane ended.</summary>
    internal SolveStatus[] Status { get; } = new SolveStatus[LaneValues.Lanes];

    /// <summary>The element where a lane failed; none where it is solved.</summary>
    internal string?[] FailedAt { get; } = new string?[LaneValues.Lanes];

    /// <summary>Solves all lanes after any of their numbers has changed.</summary>
    /// <param name="lane">The network of a lane, asked for where the lanes do not settle together.</param>
    internal void Solve(Func<int, Network> lane)
    {
        _newton.Load();
        Settle(lane);
    }

    /// <summary>Solves all lanes after the numbers of some elements have changed.</summary>
    /// <param name="changed">The elements.</param>
    /// <param name="lane">The network of a lane, asked for where the lanes do not settle together.</param>
    internal void Solve(IEnumerable<int> changed, Func<int, Network> lane)
    {
        _newton.Load(changed);
        Settle(lane);
    }

    /// <summary>Voltage across an element from its first end in the network given to its second, V.</summary>
    internal Vector<double> Volts(int element) => NodeVolts[_network.Elements[element].A] - NodeVolts[_network.Elements[element].B];

    /// <summary>Light of the lamp at a place in each lane, 1 being that at its law's reference current; none where no lamp stands.</summary>
    internal Vector<double> Lights(int element)
    {
        var volts = Values.Signs[element] * Volts(element);
        if (Values.OnlyLed(element) is { } led)
        {
            // As LedLaw.LightAt; where no LED stands, ThermalVolts is zero.
            var amps = Vector.Max(Vector<double>.Zero, (Values.Signs[element] * ElementAmps[element]) - (LampLaw.LeakSiemens * volts));
            var light = (1 + (led.RefAmps / led.DroopAmps)) / led.RefAmps * amps / (Vector<double>.One + (amps / new Vector<double>(led.DroopAmps)));
            return Vector.ConditionalSelect(Vector.GreaterThan(Values.ThermalVolts[element], Vector<double>.Zero), light, Vector<double>.Zero);
        }

        var lights = Vector<double>.Zero;
        for (var lane = 0; lane < LaneValues.Lanes; lane++)
        {
            lights = lights.WithElement(lane, Light(element, lane, volts[lane]));
        }

        return lights;
    }

    /// <summary>Solves one lane by all the attempts that a network has on its own.</summary>
    /// <param name="lane">The lane.</param>
    /// <param name="network">Its network, which may be joined otherwise.</param>
    internal void Take(int lane, Network network)
    {
        var solution = OperatingPoint.Solve(network);
        (Status[lane], FailedAt[lane]) = (solution.Status, solution.FailedAt);
        for (var node = 0; node < NodeVolts.Length; node++)
        {
            NodeVolts[node] = NodeVolts[node].WithElement(lane, solution.NodeVolts[node]);
        }

        for (var i = 0; i < ElementAmps.Length; i++)
        {
            ElementAmps[i] = ElementAmps[i].WithElement(lane, Values.Signs[i][lane] * solution.ElementAmps[i]);
        }
    }

    private double Light(int element, int lane, double volts) => Values.Law(element, lane) switch
    {
        LedLaw led => led.LightAt(Math.Max(0, (Values.Signs[element][lane] * ElementAmps[element][lane]) - (LampLaw.LeakSiemens * volts))),
        { } law => law.At(volts, Values.Ohms[element][lane]).Light,
        null => 0,
    };

    private void Settle(Func<int, Network> lane)
    {
        Array.Fill(Status, SolveStatus.Solved);
        Array.Clear(FailedAt);
        var settled = _newton.Run();
        if (settled)
        {
            _newton.Read();
            settled = _balance.Holds(ElementAmps);
        }

        for (var i = 0; !settled && i < LaneValues.Lanes; i++)
        {
            Take(i, lane(i));
        }
    }
}
