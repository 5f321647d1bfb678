namespace Duskwright.Light.Leaks;

/// <summary>What keeps the light of a room from its outside: walls, roofs, floors.</summary>
/// <param name="Name">In a maker's words: "1 mm card".</param>
/// <param name="Transmittance">Share of the light on its inner face that leaves its outer face, unpainted, 0 to 1.</param>
public sealed record Covering(string Name, double Transmittance)
{
    /// <summary>
    /// Optical density of one thin brushed coat of matt black: 0.6, from memory (0.4 to 1.0); a quarter of the light passes a coat.
    /// Two to three coats are common practice on card.
    /// </summary>
    public const double DensityPerCoat = 0.6;

    /// <summary>Roof paper: white paper of 80 g/m² passes 0.10 to 0.20, from memory.</summary>
    public static Covering Paper { get; } = new("paper", 0.15);

    /// <summary>Card of 1 mm: a fiftieth passes, from memory.</summary>
    public static Covering Card { get; } = new("1 mm card", 0.02);

    /// <summary>Balsa of 1.5 mm: a twentieth passes, from memory; more where the grain is open.</summary>
    public static Covering Balsa { get; } = new("1.5 mm balsa", 0.05);

    /// <summary>Share of the light that leaves the outer face under coats of black: T = T₀·10^(−D·n), by the definition of optical density.</summary>
    /// <param name="coats">How many, 0 or more.</param>
    /// <returns>0 to 1.</returns>
    public double After(int coats)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(coats);
        return Transmittance * Math.Pow(10, -DensityPerCoat * coats);
    }
}
