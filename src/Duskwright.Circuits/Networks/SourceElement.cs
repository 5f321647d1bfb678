namespace Duskwright.Circuits.Networks;

/// <summary>A pack or adaptor: a voltage behind a resistance (Thévenin), with a most current where it is regulated.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Plus">The node at its plus.</param>
/// <param name="Minus">The node at its minus.</param>
/// <param name="OpenVolts">Voltage with nothing connected, V.</param>
/// <param name="Ohms">Resistance inside, Ω, at least <see cref="Network.LeastOhms"/>.</param>
/// <param name="LimitAmps">The most current it delivers, A; beyond it the voltage gives way.</param>
/// <remarks>The current of a source is what it delivers out of its plus: positive when it feeds, negative when it is charged.</remarks>
public sealed record SourceElement(string Name, int Plus, int Minus, double OpenVolts, double Ohms, double LimitAmps = double.PositiveInfinity)
    : Element(Name, Minus, Plus);
