namespace Duskwright.Circuits.Tolerance;

/// <summary>Something that will be read: the current of an element or the voltage between two nodes.</summary>
/// <param name="Name">What it is called in the result.</param>
/// <param name="Element">Place of the element whose current it is; none for a voltage.</param>
/// <param name="Plus">Node at plus of a voltage.</param>
/// <param name="Minus">Node at minus of a voltage.</param>
public sealed record Probe(string Name, int? Element, int Plus, int Minus)
{
    /// <summary>Current of an element.</summary>
    /// <param name="name">What it is called.</param>
    /// <param name="element">Place of the element.</param>
    /// <returns>The probe.</returns>
    public static Probe Amps(string name, int element) => new(name, element, 0, 0);

    /// <summary>Voltage between two nodes.</summary>
    /// <param name="name">What it is called.</param>
    /// <param name="plus">Node at plus.</param>
    /// <param name="minus">Node at minus.</param>
    /// <returns>The probe.</returns>
    public static Probe Volts(string name, int plus, int minus) => new(name, null, plus, minus);
}
