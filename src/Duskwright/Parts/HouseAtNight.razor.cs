using Duskwright.Study;
using Duskwright.Study.Results;
using Duskwright.Towns;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>A house at night in the margin: what shows through its windows, what black would cost, how many coats keep its light in.</summary>
public partial class HouseAtNight
{
    [Parameter, EditorRequired]
    public TownStudy Study { get; set; } = default!;

    [Parameter, EditorRequired]
    public string House { get; set; } = "";

    [Inject]
    private OpenTown Open { get; set; } = default!;

    private List<PaneSight> Sights => [.. Study.Sights.Where(s => s.Building == House)];

    private List<PaneFinishes> Finishes => [.. Study.Finishes(House)];

    private UnlikeColours? Colours => Study.UnlikeColours.FirstOrDefault(c => c.One.Building == House);

    private PaneFlicker? Flickers => Study.FlickerOf(House).MaxBy(f => f.Steps.Max(s => s.Luminance));

    // What needs most, for each way out and each material.
    private List<Leak> Leaks => [.. Study.Leaks.Where(l => l.Building == House).SelectMany(l => l.Leaks).GroupBy(l => (l.What, l.Covering)).Select(g => g.MaxBy(l => l.Coats.Value)!)];
}
