namespace Duskwright.Circuits.Wires;

/// <summary>Copper wire: resistance from its diameter and temperature.</summary>
public static class Copper
{
    /// <summary>Resistivity of annealed copper at 20 °C, Ω·m (100 % IACS, IEC 60028: 1.7241·10⁻⁸).</summary>
    public const double OhmMetresAt20C = 1.7241e-8;

    /// <summary>Rise of resistance per kelvin from 20 °C (IACS, IEC 60028: 0.00393).</summary>
    public const double AlphaPerKelvin = 0.00393;

    /// <summary>Resistance of one metre of one conductor.</summary>
    /// <param name="diameterMetres">Diameter of the copper, m.</param>
    /// <param name="celsius">Its temperature, °C.</param>
    /// <returns>Ω/m.</returns>
    public static double OhmsPerMetre(double diameterMetres, double celsius = 20) =>
        OhmMetresAt20C / (Math.PI / 4 * diameterMetres * diameterMetres) * (1 + (AlphaPerKelvin * (celsius - 20)));
}
