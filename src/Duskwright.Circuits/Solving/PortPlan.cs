namespace Duskwright.Circuits.Solving;

/// <summary>A network taken apart into chains (parts one after the other) and ports (chains side by side between two nodes).</summary>
/// <remarks>
/// What is left when no node has fewer than three neighbours is the core. Chains of a kind stand together: LEDs with their wires first, in
/// the order of their ports, then wires alone, then chains with a port in them.
/// </remarks>
internal sealed class PortPlan
{
    /// <summary>What stands at each element's place.</summary>
    internal required PartKind[] Kinds { get; init; }

    /// <summary>Number of nodes of the network.</summary>
    internal required int NodeCount { get; init; }

    /// <summary>The nodes between which each port lies; −1 for a port that is a join.</summary>
    internal required (int From, int To)[] Ports { get; init; }

    /// <summary>The port that each chain is part of.</summary>
    internal required int[] ChainPort { get; init; }

    /// <summary>Number of chains of an LED with its wires; they come first.</summary>
    internal required int LedChains { get; init; }

    /// <summary>Where the chains of wire alone end, which follow the LEDs.</summary>
    internal required int WireChainsEnd { get; init; }

    /// <summary>For each chain of an LED, the LED's element.</summary>
    internal required int[] LedElement { get; init; }

    /// <summary>The resistors of chain c are <c>ChainWires[ChainWireStart[c] … ChainWireStart[c + 1])</c>.</summary>
    internal required int[] ChainWireStart { get; init; }

    /// <summary>Resistors of the chains, as elements.</summary>
    internal required int[] ChainWires { get; init; }

    /// <summary>The parts that are neither wire nor LED, and the port that each of them is.</summary>
    internal required (int Element, int Port)[] Others { get; init; }

    /// <summary>The steps, those below before those above.</summary>
    internal required PortStep[] Steps { get; init; }

    /// <summary>Nodes of the core but the reference.</summary>
    internal required int[] CoreNodes { get; init; }

    /// <summary>Ports between nodes of the core.</summary>
    internal required int[] CorePorts { get; init; }

    /// <summary>How node voltages follow from one another, those above before those below.</summary>
    internal required NodeStep[] NodeSteps { get; init; }

    /// <summary>The chain that each element is in.</summary>
    internal required int[] ElementChain { get; init; }

    /// <summary>1 where an element points along its chain, otherwise −1.</summary>
    internal required double[] ElementSign { get; init; }
}
