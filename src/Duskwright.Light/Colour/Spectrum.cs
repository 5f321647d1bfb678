using System.Collections.Immutable;

namespace Duskwright.Light.Colour;

/// <summary>A spectrum, 380 to 780 nm in steps of 5 nm: power of a light source (only its shape counts), or the share a tint lets through.</summary>
public sealed class Spectrum
{
    private const double FirstNanometres = 380;
    private const double StepNanometres = 5;
    private const int Steps = 81;

    // Lumens a watt at 555 nm: the definition of the candela.
    private const double LumensPerWatt = 683;

    // Second radiation constant, m·K, as of the International Temperature Scale that the tables of Planckian chromaticities use (CIE 15).
    private const double SecondRadiationConstant = 1.4388e-2;

    private static readonly ImmutableArray<double> X = StandardTable.Column("cie-1931-2deg-5nm", "xbar_1");
    private static readonly ImmutableArray<double> Y = StandardTable.Column("cie-1931-2deg-5nm", "ybar_1");
    private static readonly ImmutableArray<double> Z = StandardTable.Column("cie-1931-2deg-5nm", "zbar_1");

    private readonly ImmutableArray<double> _values;

    private Spectrum(ImmutableArray<double> values) => _values = values;

    /// <summary>A warm white of blue chip and phosphor, about 2730 K: CIE illuminant LED-B1 (CIE 015:2018).</summary>
    public static Spectrum WarmWhiteLed { get; } = new(StandardTable.Column("illuminants", "led_b1_relative_spectral_power_1"));

    /// <summary>CIE standard illuminant A, a filament at 2856 K.</summary>
    public static Spectrum IlluminantA { get; } = new(StandardTable.Column("illuminants", "a_relative_spectral_power_1"));

    /// <summary>CIE standard illuminant D65, daylight.</summary>
    public static Spectrum IlluminantD65 { get; } = new(StandardTable.Column("illuminants", "d65_relative_spectral_power_1"));

    /// <summary>A cold white of blue chip and phosphor: 450 nm, 20 nm wide, and 560 nm, 120 nm wide, 0.55 of the chip's peak (usual shape, from memory).</summary>
    public static Spectrum ColdWhiteLed { get; } = Line(450, 20).Plus(Line(560, 120), 0.55);

    /// <summary>A single-coloured LED: a bell (Gauss) round its peak.</summary>
    /// <param name="peakNanometres">Wavelength of its peak, nm.</param>
    /// <param name="widthNanometres">Full width at half the peak, nm, more than zero.</param>
    /// <returns>The spectrum.</returns>
    public static Spectrum Line(double peakNanometres, double widthNanometres) =>
        Of(nm => Math.Exp(-4 * Math.Log(2) * Math.Pow((nm - peakNanometres) / widthNanometres, 2)));

    /// <summary>A glowing body (Planck's law): a flame or filament.</summary>
    /// <param name="kelvin">Its temperature, K, more than zero.</param>
    /// <returns>The spectrum.</returns>
    public static Spectrum Glowing(double kelvin) =>
        Of(nm => Math.Pow(nm / 560, -5) / (Math.Exp(SecondRadiationConstant / (nm * 1e-9 * kelvin)) - 1));

    /// <summary>A tint that lets long waves through and stops short ones: 0.9/(1 + e^(−(λ − edge)/15 nm)), shape of amber and red varnish.</summary>
    /// <param name="edgeNanometres">Where half of the most passes, nm.</param>
    /// <returns>Shares, 0 to 0.9.</returns>
    public static Spectrum LongPass(double edgeNanometres) => Of(nm => 0.9 / (1 + Math.Exp(-(nm - edgeNanometres) / 15)));

    /// <summary>A tint that lets one band through, shape of green and blue varnish.</summary>
    /// <param name="middleNanometres">Middle of the band, nm.</param>
    /// <param name="widthNanometres">Full width at half the most, nm.</param>
    /// <returns>Shares, 0 to 0.9.</returns>
    public static Spectrum Band(double middleNanometres, double widthNanometres) => Line(middleNanometres, widthNanometres).Scaled(0.9);

    /// <summary>The light behind a tint.</summary>
    /// <param name="tint">The tint.</param>
    /// <returns>Product of both, wavelength by wavelength.</returns>
    public Spectrum Through(Spectrum tint)
    {
        ArgumentNullException.ThrowIfNull(tint);
        return new([.. _values.Zip(tint._values, (light, share) => light * share)]);
    }

    /// <summary>Share of this light that a tint passes as the eye sees it: Σ S·τ·V over Σ S·V.</summary>
    /// <param name="tint">The tint.</param>
    /// <returns>0 to 1.</returns>
    public double SharePassing(Spectrum tint) => Sum(Through(tint)._values, Y) / Sum(_values, Y);

    /// <summary>Tristimulus values for a luminance of 1, in the CIE 1931 2° observer.</summary>
    /// <returns>X, Y = 1 and Z.</returns>
    public Tristimulus Tristimulus()
    {
        var y = Sum(_values, Y);
        return new(Sum(_values, X) / y, 1, Sum(_values, Z) / y);
    }

    /// <summary>Lumens a watt of the radiation between 380 and 780 nm.</summary>
    public double LuminousEfficacy => LumensPerWatt * Sum(_values, Y) / _values.Sum();

    private Spectrum Plus(Spectrum other, double times) => new([.. _values.Zip(other._values, (a, b) => a + (times * b))]);

    private Spectrum Scaled(double times) => new([.. _values.Select(v => times * v)]);

    private static Spectrum Of(Func<double, double> value) =>
        new([.. Enumerable.Range(0, Steps).Select(i => value(FirstNanometres + (i * StepNanometres)))]);

    private static double Sum(ImmutableArray<double> spectrum, ImmutableArray<double> observer)
    {
        var sum = 0.0;
        for (var i = 0; i < Steps; i++)
        {
            sum += spectrum[i] * observer[i];
        }

        return sum;
    }
}
