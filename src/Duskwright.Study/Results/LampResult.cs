using Duskwright.Plan;
using Duskwright.Plan.Parts;
using Duskwright.Study.Figures;

namespace Duskwright.Study.Results;

/// <summary>What one lamp does.</summary>
public sealed record LampResult
{
    /// <summary>The building it is in.</summary>
    public required string Building { get; init; }

    /// <summary>Its name within the building: L1.</summary>
    public required string Name { get; init; }

    /// <summary>The room it lights, where rooms are described.</summary>
    public string? Room { get; init; }

    /// <summary>The part; a stand-in where it is not known.</summary>
    public required LampPart Part { get; init; }

    /// <summary>Whether the part is not known.</summary>
    public bool PartUnknown { get; init; }

    /// <summary>The switch group that lights it; none where it is not shared out.</summary>
    public string? SwitchGroup { get; init; }

    /// <summary>The supply that feeds it; none where it is not shared out.</summary>
    public string? Supply { get; init; }

    /// <summary>The resistor in its lead in Ω, 0 for none.</summary>
    public required Figure Resistor { get; init; }

    /// <summary>Whether the tool chose the resistor because the maker said nothing.</summary>
    public bool ResistorChosen { get; init; }

    /// <summary>Power the resistor gives off, W.</summary>
    public Figure? ResistorPower { get; init; }

    /// <summary>Its current on the pack as it is at the start of the show, all switches on, A; none where nothing feeds it.</summary>
    public Figure? Current { get; init; }

    /// <summary>Voltage across it then, V.</summary>
    public Figure? Volts { get; init; }

    /// <summary>Its light at the start against the brightest lamp of the same part on the same supply, as lightness L*; none where nothing feeds it.</summary>
    public double? Evenness { get; init; }

    /// <summary>Whether the bare lamp shows as a dot through its pane.</summary>
    public bool DotShows => PaneLater.Value.DotShows;

    /// <summary>Share of its light at the start that is left, at each of its pack's <see cref="Fade.Hours"/>.</summary>
    public ItemList<double> LightShares { get; init; } = [];

    /// <summary>Mean luminance of the brightest pane it lights at the start, cd/m²; none without a window.</summary>
    public Figure? PaneLuminance => PaneLater.Value.Luminance;

    /// <summary>Light in the room up to which that pane still reads as lit, lx.</summary>
    public Figure? ReadsAsLitTo => PaneLater.Value.ReadsAsLitTo;

    /// <summary>Its currents are known long before the light of its room.</summary>
    internal Later<LampPane> PaneLater { get; init; } = LampPane.Unlit;
}
