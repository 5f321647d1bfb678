using Duskwright.Circuits.Lamps;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Solving;

namespace Duskwright.Circuits.Tests;

/// <summary>A circuit drawn part by part, with nodes by name; "0" is the reference.</summary>
internal sealed class CircuitSketch
{
    private readonly Dictionary<string, int> _nodes = new(StringComparer.Ordinal) { ["0"] = 0 };
    private readonly List<Element> _elements = [];

    internal Network Network => new(_nodes.Count, [.. _elements]);

    internal IReadOnlyDictionary<string, int> Nodes => _nodes;

    internal CircuitSketch Pack(string name, string plus, string minus, double volts, double ohms, double limitAmps = double.PositiveInfinity) =>
        With(new SourceElement(name, Node(plus), Node(minus), volts, ohms, limitAmps));

    internal CircuitSketch Wire(string name, string from, string to, double ohms) => With(new ResistorElement(name, Node(from), Node(to), ohms));

    internal CircuitSketch Lamp(string name, string anode, string cathode, LampLaw law, double resistorOhms = 0) =>
        With(new LampElement(name, Node(anode), Node(cathode), law, resistorOhms));

    /// <summary>A steady current drawn from one node to another, which is a very high voltage behind a very high resistance (Norton).</summary>
    internal CircuitSketch Draw(string name, string from, string to, double amps) => Pack(name, to, from, amps * 1e9, 1e9);

    internal Solved Solve()
    {
        var solution = OperatingPoint.Solve(Network);
        Assert.Equal(SolveStatus.Solved, solution.Status);
        return new Solved(this, solution);
    }

    internal int IndexOf(string element) => _elements.FindIndex(e => e.Name == element);

    private CircuitSketch With(Element element)
    {
        _elements.Add(element);
        return this;
    }

    private int Node(string name)
    {
        if (!_nodes.TryGetValue(name, out var node))
        {
            _nodes[name] = node = _nodes.Count;
        }

        return node;
    }

    /// <summary>The sketch with its solution, read by name.</summary>
    internal sealed record Solved(CircuitSketch Sketch, Solution Solution)
    {
        internal double Volts(string node) => Solution.NodeVolts[Sketch._nodes[node]];

        internal double Volts(string from, string to) => Volts(from) - Volts(to);

        internal double Amps(string element) => Solution.ElementAmps[Sketch.IndexOf(element)];
    }
}
