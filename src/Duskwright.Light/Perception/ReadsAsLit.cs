namespace Duskwright.Light.Perception;

/// <summary>Whether a pane reads as lit in the light of the room.</summary>
/// <remarks>
/// A surface starts to look luminous at about 1.7 times the luminance of a white one in the same light
/// (Bonato and Gilchrist, Perception 23 (1994) 991–1006).
/// </remarks>
public static class ReadsAsLit
{
    /// <summary>Luminance over that of white at which a surface starts to look luminous.</summary>
    public const double ThresholdOverWhite = 1.7;

    /// <summary>Reflectance of a surface that looks white (white matt paint reflects about 0.8; lighting dictionary).</summary>
    public const double WhiteReflectance = 0.8;

    /// <summary>Whether a pane reads as lit.</summary>
    /// <param name="paneLuminance">Luminance of the pane, cd/m².</param>
    /// <param name="roomLux">Light of the room on it, lx.</param>
    /// <returns>True where it does.</returns>
    public static bool Of(double paneLuminance, double roomLux) => roomLux <= RoomLuxLimit(paneLuminance);

    /// <summary>The light in the room up to which a pane reads as lit: L = 1.7·ρE/π solved for E.</summary>
    /// <param name="paneLuminance">Luminance of the pane, cd/m².</param>
    /// <returns>Illuminance, lx.</returns>
    public static double RoomLuxLimit(double paneLuminance) => Math.PI * paneLuminance / (ThresholdOverWhite * WhiteReflectance);
}
