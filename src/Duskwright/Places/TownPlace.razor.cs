using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Findings;
using Duskwright.Study.Results;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Duskwright.Places;

/// <summary>The board; what is selected speaks in the margin.</summary>
public partial class TownPlace
{
    private bool _all;
    private ElementReference _board;
    private IJSObjectReference? _script;
    private DotNetObjectReference<TownPlace>? _self;
    private bool _mounted;

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

    /// <summary>Called by the page's script when a house has been put down somewhere else, or moved by a key.</summary>
    /// <param name="key">The building's key.</param>
    /// <param name="right">How far to the right, mm.</param>
    /// <param name="back">How far to the back, mm.</param>
    /// <param name="turn">How far it is turned, degrees, counter-clockwise from above.</param>
    [JSInvokable]
    public Task Moved(string key, double right, double back, double turn) => InvokeAsync(() =>
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

    public async ValueTask DisposeAsync()
    {
        _self?.Dispose();
        try
        {
            if (_script is not null)
            {
                await _script.DisposeAsync();
            }
        }
        catch (JSDisconnectedException)
        {
            // The page is gone, and its script with it.
        }

        Dispose();
        GC.SuppressFinalize(this);
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!_mounted && Open.Town.Board is not null)
        {
            _mounted = true;
            _self = DotNetObjectReference.Create(this);
            _script = await Js.InvokeAsync<IJSObjectReference>("import", "./board.js");
            await _script.InvokeVoidAsync("mount", _board, _self);
        }
    }

    private void Chosen(string? key) => Look(View with { At = key });
}
