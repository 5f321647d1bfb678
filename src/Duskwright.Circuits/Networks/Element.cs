using Duskwright.Circuits.Lamps;

namespace Duskwright.Circuits.Networks;

/// <summary>A two-ended part of a network. Its current counts as positive from <see cref="A"/> through the part to <see cref="B"/>.</summary>
/// <param name="Name">The part's name in the plan, said in every failure.</param>
/// <param name="A">The node at its first end; node 0 is the reference.</param>
/// <param name="B">The node at its second end.</param>
public abstract record Element(string Name, int A, int B);

/// <summary>A resistance: wire, joint, switch, fuse or resistor.</summary>
/// <param name="Name">Its name.</param>
/// <param name="A">First end.</param>
/// <param name="B">Second end.</param>
/// <param name="Ohms">Resistance in Ω, more than zero.</param>
public sealed record ResistorElement(string Name, int A, int B, double Ohms) : Element(Name, A, B);

/// <summary>A pack or adaptor: a voltage behind a resistance (Thévenin), with a most current where it is regulated.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Plus">The node at its plus.</param>
/// <param name="Minus">The node at its minus.</param>
/// <param name="OpenVolts">Voltage with nothing connected, V.</param>
/// <param name="Ohms">Resistance inside in Ω, more than zero.</param>
/// <param name="LimitAmps">The most current it delivers, A; beyond it the voltage gives way.</param>
/// <remarks>The current of a source is what it delivers out of its plus: positive when it feeds, negative when it is charged.</remarks>
public sealed record SourceElement(string Name, int Plus, int Minus, double OpenVolts, double Ohms, double LimitAmps = double.PositiveInfinity)
    : Element(Name, Minus, Plus);

/// <summary>A lamp with the resistor in its lead, as one two-ended branch.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Anode">The node its plus lead comes from.</param>
/// <param name="Cathode">The node its minus lead goes to.</param>
/// <param name="Law">What the lamp does at a voltage.</param>
/// <param name="ResistorOhms">Resistance of resistor, tails and joints in its branch, Ω; zero for none.</param>
public sealed record LampElement(string Name, int Anode, int Cathode, LampLaw Law, double ResistorOhms) : Element(Name, Anode, Cathode);
