using Duskwright.Pictures;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Quantities;
using Duskwright.Plan;
using Duskwright.Study.Findings;
using Duskwright.Study.Results;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Places;

/// <summary>The board; what is selected speaks in the margin.</summary>
public partial class TownPlace
{
    private const double Coarse = 5;
    private const double Fine = 1;

    private readonly HandScript _hand;
    private bool _all;
    private ElementReference _board;

    public TownPlace() => _hand = new HandScript(Moved, Removed);

    private ItemList<Plan.Document.Route> Suggested => Open.Town.Board is null || Open.Town.Routes.Count > 0 ? [] : Open.SuggestedRoutes.Edit.Routes;

    private List<Finding> Spoiling => [.. Open.Study.Findings.Where(f => f.Severity == Severity.Spoils)];

    private List<Finding> Others => [.. Open.Study.Findings.Where(f => f.Severity != Severity.Spoils)];

    private BuildingResult? House => Open.Study.Buildings.FirstOrDefault(b => b.Building.Key == View.At);

    private string Worst
    {
        get
        {
            var spoils = Open.Study.Findings.Count(f => f.Severity == Severity.Spoils);
            return spoils == 0 ? "Nothing spoils the show." : $"{spoils} {(spoils == 1 ? "thing spoils" : "things spoil")} the show or can do harm.";
        }
    }

    private static IEnumerable<(LampResult Lamp, (bool First, int Count) Place)> Kinds(BuildingResult house) =>
        house.Lamps.GroupBy(l => (l.Part.Id, l.Resistor.Value)).Select((g, i) => (g.First(), (i == 0, g.Count())));

    private IEnumerable<Finding> Notes(Subject subject) => Open.Study.Findings.Where(f => f.Subject == subject);

    private Task Moved(string key, double right, double back, double turn) => InvokeAsync(() =>
    {
        if (Open.Town.Board is not { } board || Open.Town.Buildings.FirstOrDefault(b => b.Key == key) is not { Place: { } place } house)
        {
            return;
        }

        // Whole millimetres, and never off the board.
        static Length On(Length at, double by, Length edge) => Length.FromMillimetres(Math.Clamp(Math.Round(at.Millimetres + by), 0, edge.Millimetres));
        var there = place with { At = new Point { X = On(place.At.X, right, board.Width), Y = On(place.At.Y, back, board.Depth) }, Rotation = Angle.FromDegrees((place.Rotation.Degrees + turn) % 360) };
        Open.Apply(new MoveBuilding(key, there, turn == 0 ? $"Move {house.Name}" : $"Turn {house.Name}"));
    });

    private Task Removed(string key) => InvokeAsync(() =>
    {
        if (Open.Town.Buildings.FirstOrDefault(b => b.Key == key) is { } house)
        {
            Open.Apply(new RemoveBuilding(house));
            Look(View with { At = null });
        }
    });

    public async ValueTask DisposeAsync()
    {
        await _hand.DisposeAsync();
        Dispose();
        GC.SuppressFinalize(this);
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (Open.Town.Board is not null)
        {
            await _hand.MountAsync(Js, _board, Coarse, Fine);
        }
    }

    private void Chosen(string? key) => Look(View with { At = key });
}
