namespace Duskwright.Light.Lamps;

/// <summary>A lamp's light as a cosine-power lobe: I(θ) = I₀·cosᵐθ, half of it at half the viewing angle.</summary>
/// <param name="AxisCandelas">Intensity along the axis, cd.</param>
/// <param name="FullAngleRadians">Full angle between the directions of half intensity, rad, up to less than π; a wider lamp counts as even all round.</param>
public sealed record LampLobe(double AxisCandelas, double FullAngleRadians)
{
    /// <summary>The lobe's exponent m = ln ½ / ln cos(half angle); 0 for a lamp that shines all round.</summary>
    public double Exponent => ShinesAllRound ? 0 : Math.Log(0.5) / Math.Log(Math.Cos(FullAngleRadians / 2));

    /// <summary>Whether it has no lobe but shines evenly all round.</summary>
    public bool ShinesAllRound => FullAngleRadians >= Math.PI;

    /// <summary>All its light: Φ = 2πI₀/(m + 1) over the half space before it; 4πI₀ for a lamp that shines all round, lm.</summary>
    public double Lumens => ShinesAllRound ? 4 * Math.PI * AxisCandelas : 2 * Math.PI * AxisCandelas / (Exponent + 1);

    /// <summary>Intensity in a direction.</summary>
    /// <param name="cosine">Cosine of the angle between the direction and the axis.</param>
    /// <returns>Candelas.</returns>
    public double CandelasAt(double cosine) => ShinesAllRound ? AxisCandelas : cosine <= 0 ? 0 : AxisCandelas * Math.Pow(cosine, Exponent);
}
