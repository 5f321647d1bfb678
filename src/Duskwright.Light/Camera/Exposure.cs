namespace Duskwright.Light.Camera;

/// <summary>Exposure of a camera from luminance: N²/t = L·S/K (ISO 2720, reflected light).</summary>
public static class Exposure
{
    /// <summary>K of ISO 2720, cd·s·ISO/m²: the usual value within the standard's range.</summary>
    public const double Calibration = 12.5;

    /// <summary>Shutter time that shows a luminance as a middle tone.</summary>
    /// <param name="luminance">cd/m², more than 0.</param>
    /// <param name="iso">Sensitivity, ISO.</param>
    /// <param name="fNumber">f-number of the lens.</param>
    /// <returns>t = K·N²/(L·S), s.</returns>
    public static double Seconds(double luminance, double iso, double fNumber)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(luminance);
        return Calibration * fNumber * fNumber / (luminance * iso);
    }

    /// <summary>Exposure value at ISO 100 that shows a luminance as a middle tone: log₂(100·L/K).</summary>
    /// <param name="luminance">cd/m², more than 0.</param>
    /// <returns>EV.</returns>
    public static double ValueAtIso100(double luminance)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(luminance);
        return Math.Log2(100 * luminance / Calibration);
    }

    /// <summary>Exposure value of a setting, brought to ISO 100: log₂(N²/t) − log₂(S/100).</summary>
    /// <param name="fNumber">f-number of the lens.</param>
    /// <param name="seconds">Shutter time, s.</param>
    /// <param name="iso">Sensitivity, ISO.</param>
    /// <returns>EV.</returns>
    public static double ValueOfSetting(double fNumber, double seconds, double iso) => Math.Log2(fNumber * fNumber / seconds) - Math.Log2(iso / 100);

    /// <summary>Luminance above which a picture burns out, 1.2·2^EV, at a setting's value at ISO 100.</summary>
    /// <param name="valueAtIso100">EV.</param>
    /// <returns>cd/m².</returns>
    public static double BurnsOutAbove(double valueAtIso100) => 1.2 * Math.Pow(2, valueAtIso100);

    /// <summary>How many stops one luminance lies above another.</summary>
    /// <param name="luminance">cd/m².</param>
    /// <param name="other">cd/m².</param>
    /// <returns>log₂ of their ratio.</returns>
    public static double Stops(double luminance, double other) => Math.Log2(luminance / other);
}
