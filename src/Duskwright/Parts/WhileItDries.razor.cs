using System.Globalization;
using Duskwright.Plan.Document;
using Duskwright.Study.Bench;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>What dries now, and what else can be taken up meanwhile.</summary>
public partial class WhileItDries
{
    private const int Shown = 4;

    private bool _hasEvening;

    /// <summary>A house that is in the hand and need not be named; none on the page of all houses.</summary>
    [Parameter]
    public string? But { get; set; }

    [Parameter, EditorRequired]
    public Town Town { get; set; } = default!;

    [Inject]
    private TimeProvider Time { get; set; } = default!;

    private Meanwhile Now { get; set; } = new([], []);

    private List<ReadyWork> Ready { get; set; } = [];

    protected override void OnParametersSet()
    {
        var clock = Time.GetLocalNow().DateTime;
        var now = Meanwhile.At(Town, clock);
        Now = now with { Drying = [.. now.Drying.Where(d => d.Key != But)] };

        // What the calendar has for tonight stands there already.
        var planned = EveningWork.On(Town, DateOnly.FromDateTime(clock)).SelectMany(w => w.Houses.Select(h => (w.Words, h.Key))).ToHashSet();
        _hasEvening = planned.Count > 0;
        Ready = [.. now.Ready
            .Select(w => w with { Houses = [.. w.Houses.Where(h => h.Key != But && !planned.Contains((w.Words, h.Key)))] })
            .Where(w => w.Houses.Count > 0)];
    }

    private string Until(DateTime dry) => dry.ToString(dry.Date == Time.GetLocalNow().Date ? "HH:mm" : "dddd HH:mm", CultureInfo.InvariantCulture);
}
