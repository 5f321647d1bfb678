namespace Duskwright.Circuits.Wires;

/// <summary>A supply as a short circuit finds it.</summary>
/// <param name="Name">Fresh or aged, in words.</param>
/// <param name="OpenVolts">Open voltage, V.</param>
/// <param name="Ohms">Resistance, Ω.</param>
/// <param name="LimitAmps">The most current of a regulated supply, A; infinite for cells.</param>
public sealed record ShortSource(string Name, double OpenVolts, double Ohms, double LimitAmps = double.PositiveInfinity)
{
    /// <summary>Current into a resistance.</summary>
    /// <param name="ohms">Everything outside the supply, Ω.</param>
    /// <returns>A.</returns>
    public double AmpsInto(double ohms) => Math.Min(LimitAmps, OpenVolts / (Ohms + ohms));
}
