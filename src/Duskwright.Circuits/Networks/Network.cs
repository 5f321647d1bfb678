using System.Collections.Immutable;

namespace Duskwright.Circuits.Networks;

/// <summary>Nodes and the elements between them; node 0 is the reference, at 0 V.</summary>
public sealed record Network
{
    /// <summary>The least resistance of a wire or source, Ω. Beside still less the voltages would be lost in rounding.</summary>
    public const double LeastOhms = 1e-9;

    /// <summary>Makes a network.</summary>
    /// <param name="nodeCount">Number of nodes, the reference included.</param>
    /// <param name="elements">The elements; their nodes lie in 0 … nodeCount − 1.</param>
    /// <exception cref="ArgumentException">
    /// An element joins a node that does not exist, joins a node to itself, or has too little resistance; or a source has
    /// no finite voltage or no positive limit.
    /// </exception>
    public Network(int nodeCount, ImmutableArray<Element> elements)
    {
        if (nodeCount < 1)
        {
            throw new ArgumentException($"A network has {nodeCount} nodes; at least the reference is needed.", nameof(nodeCount));
        }

        foreach (var element in elements)
        {
            if (element.A < 0 || element.A >= nodeCount || element.B < 0 || element.B >= nodeCount || element.A == element.B)
            {
                throw new ArgumentException(
                    $"{element.Name} joins nodes {element.A} and {element.B}; two different nodes of 0 to {nodeCount - 1} are allowed.", nameof(elements));
            }

            var (ohms, least) = element switch
            {
                ResistorElement r => (r.Ohms, LeastOhms),
                SourceElement s => (s.Ohms, LeastOhms),
                LampElement l => (l.ResistorOhms, 0.0),
                _ => throw new ArgumentException($"{element.Name} is of a kind the solver does not know.", nameof(elements)),
            };
            if (!double.IsFinite(ohms) || ohms < least)
            {
                throw new ArgumentException($"{element.Name} has {ohms} Ω; a finite resistance from {least} Ω is allowed.", nameof(elements));
            }
        }

        foreach (var source in elements.OfType<SourceElement>())
        {
            if (!double.IsFinite(source.OpenVolts) || !(source.LimitAmps > 0))
            {
                throw new ArgumentException(
                    $"{source.Name} has {source.OpenVolts} V and a limit of {source.LimitAmps} A; a finite voltage and a limit above 0 A are allowed.", nameof(elements));
            }
        }

        NodeCount = nodeCount;
        Elements = elements;
    }

    /// <summary>Number of nodes, the reference included.</summary>
    public int NodeCount { get; }

    /// <summary>The elements.</summary>
    public ImmutableArray<Element> Elements { get; }
}
