namespace Duskwright.Circuits.Wires;

/// <summary>How warm a wire in card becomes when a current flows for long.</summary>
/// <remarks>
/// Heat leaves the wire through a sheath of card to its surface and from there to still air:
/// ΔT = P′·(ln(r₂/r₁)/(2πk) + 1/(2πr₂h)) (Fourier's law in a cylinder; Incropera and DeWitt, Fundamentals of Heat and Mass Transfer,
/// section 3.3, from memory). Card k = 0.1 W/(m·K) and film h = 10 W/(m²·K) are usual values, from memory.
/// </remarks>
public static class WireHeat
{
    /// <summary>Conductivity of card, W/(m·K), usual, from memory.</summary>
    public const double CardWattsPerMetreKelvin = 0.1;

    /// <summary>Heat given by a surface to still air, W/(m²·K), usual, from memory.</summary>
    public const double FilmWattsPerSquareMetreKelvin = 10;

    /// <summary>Thickness of card round the wire, m: two sheets of a millimetre.</summary>
    public const double CardRoundMetres = 0.002;

    /// <summary>Beyond this the wire is destroyed and the card burns; no higher figure is worked out, °C.</summary>
    public const double MostCelsius = 1000;

    /// <summary>The temperature at which the wire settles.</summary>
    /// <param name="amps">Current, A.</param>
    /// <param name="copperDiameterMetres">Diameter of its copper, m.</param>
    /// <param name="ambientCelsius">Temperature of the room, °C.</param>
    /// <returns>°C, at most <see cref="MostCelsius"/>.</returns>
    public static double SteadyCelsius(double amps, double copperDiameterMetres, double ambientCelsius = 20)
    {
        var inner = copperDiameterMetres / 2;
        var outer = inner + CardRoundMetres;
        var kelvinMetresPerWatt = (Math.Log(outer / inner) / (2 * Math.PI * CardWattsPerMetreKelvin))
            + (1 / (2 * Math.PI * outer * FilmWattsPerSquareMetreKelvin));

        // T = T₀ + I²·R₂₀·(1 + α(T − 20))·S is straight in T, so it is solved and not iterated; without a positive answer it runs away.
        var riseAt20 = amps * amps * Copper.OhmsPerMetre(copperDiameterMetres) * kelvinMetresPerWatt;
        var denominator = 1 - (riseAt20 * Copper.AlphaPerKelvin);
        return denominator <= 0
            ? MostCelsius
            : Math.Min(MostCelsius, (ambientCelsius + (riseAt20 * (1 - (20 * Copper.AlphaPerKelvin)))) / denominator);
    }
}
