namespace Duskwright.Circuits.Solving;

/// <summary>How the voltage of a node inside a chain follows from that of its neighbour.</summary>
/// <param name="Node">The node.</param>
/// <param name="From">Its neighbour, known before.</param>
/// <param name="Sign">1 where the drop is taken off the neighbour's voltage, −1 where it is added.</param>
/// <param name="Wire">The resistor between the two; −1 where a port lies between.</param>
/// <param name="Through">The chain whose current flows through the resistor, or the port between.</param>
internal readonly record struct NodeStep(int Node, int From, double Sign, int Wire, int Through);
