using Duskwright.Light.Colour;
using Duskwright.Plan;
using Duskwright.Study.Figures;

namespace Duskwright.Study.Results;

/// <summary>What one pane looks like from outside at the start of the show, all switches on.</summary>
public sealed record PaneResult
{
    /// <summary>The building it is in.</summary>
    public required string Building { get; init; }

    /// <summary>Which of the building's storeys, from 0.</summary>
    public required int Storey { get; init; }

    /// <summary>Which of the storey's rooms, from 0.</summary>
    public required int Room { get; init; }

    /// <summary>Which of the room's windows, from 0.</summary>
    public required int Window { get; init; }

    /// <summary>Mean luminance, cd/m².</summary>
    public required Figure Luminance { get; init; }

    /// <summary>Light in the room up to which it reads as lit, lx.</summary>
    public required Figure ReadsAsLitTo { get; init; }

    /// <summary>Its hue at the brightest a screen can show, "#FFC873"; none where it is dark.</summary>
    public string? Colour { get; init; }

    /// <summary>Whether that hue lies outside what a screen can show and was mixed with white of the same luminance until it fitted.</summary>
    public bool ColourOutsideScreen { get; init; }

    /// <summary>Its colour, CIE 1931; none where it is dark.</summary>
    public Chromaticity? Chromaticity { get; init; }

    /// <summary>Its correlated colour temperature, K; none where it is dark or its colour has none.</summary>
    public double? ColourKelvin { get; init; }

    /// <summary>Its brightest part over its mean.</summary>
    public required double HotSpotRatio { get; init; }

    /// <summary>Columns of <see cref="Map"/>.</summary>
    public required int MapColumns { get; init; }

    /// <summary>Luminance part by part over the mean, row by row from the lower end with the smaller coordinate in the room.</summary>
    public required ItemList<double> Map { get; init; }

    /// <summary>What of its room did not fit and was moved before it was computed, a clause for each: "L1 is taken 4 mm down, to lie inside the room".</summary>
    public ItemList<string> Moved { get; init; } = [];

    /// <summary>What each lamp of its room gives it.</summary>
    public required ItemList<PaneLampShare> Lamps { get; init; }
}

/// <summary>What one lamp gives a pane.</summary>
/// <param name="Lamp">The lamp's name.</param>
/// <param name="Luminance">Mean luminance from this lamp alone at the start, cd/m².</param>
public sealed record PaneLampShare(string Lamp, double Luminance);
