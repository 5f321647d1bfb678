using System.Numerics;

namespace Duskwright.Book.Night;

/// <summary>What eyes that have settled in a room make of luminances.</summary>
/// <param name="Reference">The luminance they take as bright, cd/m².</param>
/// <remarks>
/// The reference lies between white paper in the room's light and the middle of the lit panes, as exponents say (a choice of the drawing; eyes
/// follow the surroundings more than the lamps). Above it highlights saturate exponentially; half way between each
/// primary by itself, which turns them white, and all together, which keeps their hue. Below about 3 cd/m² rods take over and colours turn
/// to blue (after Jensen and others, Night Rendering, 2000).
/// </remarks>
public readonly record struct NightEyes(float Reference)
{
    private const float PaneShare = 0.62f;
    private const float White = 0.8f;
    private const float HueKept = 0.55f;
    private const float LeastDegrees = 0.25f;
    private const float FromTheRight = 0.15f;

    /// <summary>Scattered light is not followed further than this from what scatters it, degrees.</summary>
    public const float VeilDegrees = 3.5f;

    /// <summary>Luminance of linear sRGB (IEC 61966-2-1).</summary>
    public static Vector3 Luminance { get; } = new(0.2126f, 0.7152f, 0.0722f);

    private static Vector3 Rods { get; } = new Vector3(0.55f, 0.72f, 1.5f) / Vector3.Dot(new Vector3(0.55f, 0.72f, 1.5f), Luminance);

    /// <summary>Eyes settled in a room.</summary>
    /// <param name="roomLux">Light in the room, lx, more than 0.</param>
    /// <param name="panes">Luminance of the panes, cd/m²; dark ones do not count.</param>
    /// <returns>The eyes.</returns>
    public static NightEyes In(double roomLux, IEnumerable<float> panes)
    {
        var paper = (float)(White * roomLux / Math.PI);
        var lit = panes.Where(l => l > 1e-3f).Order().ToList();
        return new NightEyes(lit.Count == 0 || lit[lit.Count / 2] < paper ? paper : MathF.Pow(paper, 1 - PaneShare) * MathF.Pow(lit[lit.Count / 2], PaneShare));
    }

    /// <summary>
    /// Luminance that a surface throws back from the room's even light: a face tilted by β sees (1 + cos β)/2 of it. A little of the light comes
    /// from the right, so that two walls at a corner differ: a choice of the drawing.
    /// </summary>
    /// <param name="roomLux">Light on a level surface, lx.</param>
    /// <param name="normal">Of the surface.</param>
    /// <param name="albedo">Linear sRGB.</param>
    /// <returns>Linear sRGB, cd/m².</returns>
    public static Vector3 Thrown(double roomLux, Vector3 normal, Vector3 albedo) => albedo * (float)(roomLux / Math.PI) * (((1 + normal.Y) / 2 * (1 - FromTheRight)) + (FromTheRight * Math.Max(0, normal.X)));

    /// <summary>Light scattered within the eye by something bright, cd/m²: 10·E/θ², θ in degrees (Stiles and Holladay; CIE 31), ending softly where it no longer matters.</summary>
    /// <param name="lux">Light of the bright thing at the eye, lx.</param>
    /// <param name="degrees">Angle from it.</param>
    /// <returns>cd/m².</returns>
    public static float Veil(float lux, float degrees)
    {
        var end = Math.Max(0, 1 - (degrees / VeilDegrees));
        return 10 * lux / MathF.Pow(Math.Max(degrees, LeastDegrees), 2) * end * end;
    }

    /// <summary>What is shown for a light.</summary>
    /// <param name="light">Linear sRGB, cd/m².</param>
    /// <returns>Linear sRGB of the screen, 0 to 1.</returns>
    public Vector3 Shown(Vector3 light)
    {
        var y = Vector3.Dot(light, Luminance);
        var rods = 1 - Math.Clamp((MathF.Log10(Math.Max(y, 1e-6f)) + 2) / 2.5f, 0, 1);
        var seen = Vector3.Lerp(light, y * Rods, 0.75f * rods) / Reference;
        var apart = new Vector3(Saturated(seen.X), Saturated(seen.Y), Saturated(seen.Z));
        var most = Math.Max(seen.X, Math.Max(seen.Y, seen.Z));
        return most > 0 ? Vector3.Lerp(apart, Saturated(most) / most * seen, HueKept) : Vector3.Zero;
    }

    private static float Saturated(float seen) => 1 - MathF.Exp(-1.4f * seen);
}
