using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Solving;

namespace Duskwright.Circuits.Faulting;

/// <summary>Puts one fault into each lane of a solver, and takes it out again.</summary>
/// <param name="network">The sound circuit with its gaps.</param>
/// <param name="solver">A solver of it.</param>
/// <param name="gapAt">The element of each gap by its two nodes.</param>
internal sealed class FaultLanes(Network network, LaneSolver solver, IReadOnlyDictionary<(int A, int B), int> gapAt)
{
    private readonly List<(int Element, int Lane)> _put = [];
    private readonly List<int> _changed = [];

    internal LaneSolver Solver => solver;

    /// <summary>Solves the circuit with each of some faults, as many as there are lanes at most.</summary>
    internal void Solve(CircuitFault[] faults)
    {
        _changed.Clear();
        foreach (var (element, lane) in _put)
        {
            solver.Values.Put(element, lane, network.Elements[element]);
            _changed.Add(element);
        }

        _put.Clear();
        for (var lane = 0; lane < faults.Length; lane++)
        {
            if (!IsRewired(faults[lane]))
            {
                Put(faults[lane], lane);
            }
        }

        solver.Solve(_changed, lane => lane < faults.Length && !IsRewired(faults[lane]) ? With(faults[lane]) : network);
        for (var lane = 0; lane < faults.Length; lane++)
        {
            if (IsRewired(faults[lane]))
            {
                solver.Take(lane, With(faults[lane]));
            }
        }
    }

    // A part between other nodes than before is another structure.
    private bool IsRewired(CircuitFault fault)
    {
        foreach (var (element, now) in fault.Changes)
        {
            var sound = network.Elements[element];
            if (!((now.A == sound.A && now.B == sound.B) || (now.A == sound.B && now.B == sound.A)))
            {
                return true;
            }
        }

        return false;
    }

    private void Put(CircuitFault fault, int lane)
    {
        foreach (var (element, now) in fault.Changes)
        {
            Put(element, lane, now);
        }

        if (fault.Bridge is { } bridge)
        {
            Put(gapAt[(bridge.A, bridge.B)], lane, bridge);
        }
    }

    private void Put(int element, int lane, Element now)
    {
        solver.Values.Put(element, lane, now);
        _put.Add((element, lane));
        _changed.Add(element);
    }

    private Network With(CircuitFault fault) => fault.Bridge is { } bridge
        ? (fault with { Bridge = null }).In(new Network(network.NodeCount, network.Elements.SetItem(gapAt[(bridge.A, bridge.B)], bridge)))
        : fault.In(network);
}
