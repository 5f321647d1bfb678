using Duskwright.Circuits.Lamps;

namespace Duskwright.Circuits.Networks;

/// <summary>A lamp with the resistor in its lead, as one two-ended branch.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Anode">The node its plus lead comes from.</param>
/// <param name="Cathode">The node its minus lead goes to.</param>
/// <param name="Law">What the lamp does at a voltage.</param>
/// <param name="ResistorOhms">Resistance of resistor, tails and joints in its branch, Ω; zero for none.</param>
public sealed record LampElement(string Name, int Anode, int Cathode, LampLaw Law, double ResistorOhms) : Element(Name, Anode, Cathode);
