namespace Duskwright.Light.Leaks;

/// <summary>Whether light that leaks out of a room is seen beside the surface it leaks through.</summary>
/// <remarks>
/// A leak adds T·E_inside/π to the luminance ρ·E_room/π of the surface itself. Side by side a fiftieth more is just seen
/// (photographic textbook: 1 % in the laboratory, about 2 % in practice).
/// </remarks>
public static class LeakSight
{
    /// <summary>Contrast that is just seen.</summary>
    public const double SeenContrast = 0.02;

    /// <summary>Reflectance of dark roofs and timber walls: 0.20 (a lamp maker's table: mid grey, red brick, dark wood).</summary>
    public const double OutsideReflectance = 0.20;

    /// <summary>Below this the eye's own limits hide a leak sooner than the facade does: a darkened exhibition room, from memory, lx.</summary>
    public const double DarkestRoomLux = 1;

    // One minute of arc, what an eye of normal sharpness parts; definition of normal acuity, from memory.
    private const double EyeRadians = Math.PI / (180 * 60);

    /// <summary>The light on a covering's inner face up to which nothing shows outside.</summary>
    /// <param name="transmittance">Share that leaves the outer face, more than 0.</param>
    /// <param name="roomLux">Light of the show's room on the outside, lx.</param>
    /// <returns>Illuminance, lx.</returns>
    public static double UnseenUpToLux(double transmittance, double roomLux) =>
        SeenContrast * OutsideReflectance * Math.Max(roomLux, DarkestRoomLux) / transmittance;

    /// <summary>Coats of black after which nothing shows outside.</summary>
    /// <param name="covering">What is painted.</param>
    /// <param name="insideLux">Light on its inner face, lx.</param>
    /// <param name="roomLux">Light of the show's room on the outside, lx.</param>
    /// <returns>The least number, 0 where it does not show unpainted.</returns>
    public static int CoatsUntilUnseen(Covering covering, double insideLux, double roomLux)
    {
        ArgumentNullException.ThrowIfNull(covering);
        var coats = 0;
        while (insideLux > UnseenUpToLux(covering.After(coats), roomLux))
        {
            coats++;
        }

        return coats;
    }

    /// <summary>The widest open seam that does not show: narrower than the eye parts, a seam's light is spread over a minute of arc.</summary>
    /// <param name="insideLuminance">Luminance of what is seen through the seam, cd/m².</param>
    /// <param name="roomLux">Light of the show's room on the outside, lx.</param>
    /// <param name="viewingMetres">From the eye to the seam, m.</param>
    /// <returns>Width, m; at most what the eye parts.</returns>
    public static double WidestUnseenSeam(double insideLuminance, double roomLux, double viewingMetres)
    {
        var spread = EyeRadians * viewingMetres;
        var facade = OutsideReflectance * Math.Max(roomLux, DarkestRoomLux) / Math.PI;
        return insideLuminance <= SeenContrast * facade ? spread : spread * SeenContrast * facade / insideLuminance;
    }
}
