using Duskwright.Light.Colour;
using Duskwright.Light.Rooms;

namespace Duskwright.Light.Surfaces;

/// <summary>What windows are glazed with.</summary>
public static class PaneSheets
{
    // Share of a pane that glazing bars leave free: usual, from memory.
    private const double BarsShare = 0.85;

    /// <summary>Clear sheet: 0.90 to 0.92 passes (lighting-software glossary), hardly any scattered; 0.08 thrown back (Fresnel, both faces at n = 1.5).</summary>
    public static Glazing Clear => new(0.90, 0.02, 0.08);

    /// <summary>Sheet frosted on both faces: 0.75 to 0.90 passes, 0.60 to 0.90 scattered by one face, 0.10 thrown back, from memory.</summary>
    public static Glazing Frosted => new(0.75, 0.90, 0.10);

    /// <summary>Tracing paper: 0.55 to 0.75 passes, nearly all scattered, 0.25 thrown back, from memory.</summary>
    public static Glazing Tracing => new(0.65, 0.97, 0.25);

    /// <summary>Nothing in the opening.</summary>
    public static Glazing Open => new(1, 0, 0);

    /// <summary>Amber varnish or old glass: half of the most passes at 560 nm; usual shape, from memory.</summary>
    public static Spectrum Amber { get; } = Spectrum.LongPass(560);

    /// <summary>Red varnish: half of the most passes at 600 nm; usual shape, from memory.</summary>
    public static Spectrum Red { get; } = Spectrum.LongPass(600);

    /// <summary>Green varnish: a band of 80 nm round 530 nm; usual shape, from memory.</summary>
    public static Spectrum Green { get; } = Spectrum.Band(530, 80);

    /// <summary>Blue varnish: a band of 70 nm round 465 nm; usual shape, from memory.</summary>
    public static Spectrum Blue { get; } = Spectrum.Band(465, 70);

    /// <summary>A sheet with further coats of frosting, each on a face of its own or over the last.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="coats">How many, 0 or more.</param>
    /// <returns>The sheet then: each coat does half of what makes <see cref="Frosted"/> of <see cref="Clear"/>.</returns>
    public static Glazing Coated(Glazing sheet, int coats)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentOutOfRangeException.ThrowIfNegative(coats);
        var passed = sheet.Transmittance * Math.Pow(Frosted.Transmittance / Clear.Transmittance, coats / 2.0);
        var straight = (1 - sheet.Haze) * Math.Pow((1 - Frosted.Haze) / (1 - Clear.Haze), coats / 2.0);
        var back = Math.Min(1 - passed, sheet.Reflectance + (coats * (Frosted.Reflectance - Clear.Reflectance) / 2));
        return new(passed, 1 - straight, back);
    }

    /// <summary>A sheet with glazing bars before it: they stop their share and throw light back into the room as raw card does.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <returns>Sheet and bars together.</returns>
    public static Glazing WithBars(Glazing sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return sheet with
        {
            Transmittance = BarsShare * sheet.Transmittance,
            Reflectance = (BarsShare * sheet.Reflectance) + ((1 - BarsShare) * Finishes.Raw),
        };
    }
}
