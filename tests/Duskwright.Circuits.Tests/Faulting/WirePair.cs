namespace Duskwright.Circuits.Tests.Faulting;

/// <summary>The two wires of a pair.</summary>
/// <param name="Name">What the pair is called.</param>
/// <param name="PlusWire">Place of its plus wire among the elements, a resistance.</param>
/// <param name="MinusWire">Place of its minus wire, a resistance.</param>
/// <param name="FarPlus">The node where its plus ends in the building.</param>
/// <param name="FarMinus">The node where its minus ends in the building.</param>
internal sealed record WirePair(string Name, int PlusWire, int MinusWire, int FarPlus, int FarMinus);
