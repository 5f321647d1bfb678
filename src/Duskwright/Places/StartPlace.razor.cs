using System.Globalization;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Quantities;
using Duskwright.Study;
using Duskwright.Towns;

namespace Duskwright.Places;

/// <summary>The first ten minutes: lines typed, and what comes of them.</summary>
public partial class StartPlace
{
    private string _text = "Chandlery, 4, 47 cm\nNet loft, 3, 71 cm\nSmokehouse, 2 amber, 62 cm\nAlmshouses, 6, 81 cm\nChapel, 3, 92 cm\nCooperage, 3, 29 cm\nHarbour office, 3, 20 cm\nSail loft, 3, 55 cm\nGull cottage, 2, 38 cm\nLookout, 1, don't know";
    private TypedPlan _plan = TypedPlan.Of("");
    private TownStudy? _study;
    private string _name = "";

    protected override void OnInitialized()
    {
        base.OnInitialized();
        Recount();
    }

    // Each is a whole town to study: the page does not wait for them.
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!firstRender)
        {
            return;
        }

        foreach (var town in ExampleTown.All.Where(t => !t.IsDrawn))
        {
            await Task.Run(() => town.Picture);
            StateHasChanged();
        }
    }

    private string Name => _name.Trim() is { Length: > 0 } name ? name : "My town";

    // What came out before stays in sight while a line is being mended.
    private void Recount()
    {
        _plan = TypedPlan.Of(_text, Open.Lengths);
        _study = _plan.Study ?? _study;
    }

    // What a maker who does not see the page hears while typing; the rest can be read when the hands rest.
    private string Brief => _plan.Problems.Count switch
    {
        1 => "One line cannot be read.",
        > 1 => $"{_plan.Problems.Count} lines cannot be read.",
        _ => _study is { } s ? $"{s.Buildings.Count} {(s.Buildings.Count == 1 ? "house" : "houses")}, {s.Packs.Count} {(s.Packs.Count == 1 ? "pack" : "packs")}{(s.Packs.Where(p => p.HoursToDim is not null).MinBy(p => p.HoursToDim!.Value)?.HoursToDim is { } hours ? string.Create(CultureInfo.InvariantCulture, $", {hours.Value:0} hours to half light") : "")}." : "",
    };

    private string NotCounted => _study!.Buildings.Where(b => b.Building.Leds is null && b.Lamps.Count == 0).Select(b => b.Building.Name).ToList() is { Count: > 0 } names
        ? $"Not counted: {string.Join(", ", names)}. Nobody has said how many LEDs {(names.Count == 1 ? "it has" : "they have")}: the label has a line to write the number on. A guess will do here, and can be changed later."
        : "";

    // The maker makes it any other size.
    private void BeginEmpty()
    {
        if (Open.Begin(new SizeBoard(Length.FromMillimetres(1200), Length.FromMillimetres(800)).Apply(new Town { Name = Name })).Count == 0)
        {
            Navigation.NavigateTo("/town");
        }
    }

    private void Visit(ExampleTown town)
    {
        if (Open.TurnTo(town).Count == 0)
        {
            Navigation.NavigateTo("/town");
        }
    }

    private void Take(string place)
    {
        if (Open.Begin(_plan.Study!.Town with { Name = Name }).Count == 0)
        {
            Navigation.NavigateTo($"/{place}");
        }
    }
}
