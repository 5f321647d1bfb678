namespace Duskwright.Circuits.Networks;

/// <summary>A resistance: wire, joint, switch, fuse or resistor.</summary>
/// <param name="Name">Its name.</param>
/// <param name="A">First end.</param>
/// <param name="B">Second end.</param>
/// <param name="Ohms">Resistance, Ω, at least <see cref="Network.LeastOhms"/>.</param>
public sealed record ResistorElement(string Name, int A, int B, double Ohms) : Element(Name, A, B);
