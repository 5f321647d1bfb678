namespace Duskwright.Light.Colour;

/// <summary>Spectra of lamps by the word a maker uses for their colour.</summary>
public static class LampSpectra
{
    // A small filament lamp at its rated voltage, and how its colour temperature goes with voltage; lamp handbooks, from memory.
    private const double RatedFilamentKelvin = 2400;
    private const double FilamentExponent = 0.42;

    /// <summary>The spectrum of an LED.</summary>
    /// <param name="colour">Its colour in a word; none or an unknown word counts as warm white.</param>
    /// <returns>Warm white as CIE LED-B1; single colours as lines of usual peak and width (peaks 585 to 625 nm as in published parts tables, widths from memory).</returns>
    public static Spectrum OfLed(string? colour) => colour switch
    {
        "white" => Spectrum.ColdWhiteLed,
        "yellow" => Spectrum.Line(590, 15),
        "amber" => Spectrum.Line(600, 17),
        "red" => Spectrum.Line(625, 18),
        "green" => Spectrum.Line(525, 35),
        "blue" => Spectrum.Line(470, 25),
        _ => Spectrum.WarmWhiteLed,
    };

    /// <summary>The spectrum of a filament lamp.</summary>
    /// <param name="shareOfRatedVolts">Its voltage over its rated voltage, more than zero.</param>
    /// <returns>A glowing body at 2400 K × share^0.42.</returns>
    public static Spectrum OfFilament(double shareOfRatedVolts) => Spectrum.Glowing(RatedFilamentKelvin * Math.Pow(shareOfRatedVolts, FilamentExponent));
}
