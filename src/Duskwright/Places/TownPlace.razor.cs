using System.Globalization;
using Duskwright.Pictures;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Findings;
using Duskwright.Study.Results;
using Duskwright.Towns;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Places;

/// <summary>The board; what is selected speaks in the margin.</summary>
public partial class TownPlace
{
    private readonly HandScript _hand;
    private bool _all;
    private ElementReference _board;

    private ItemList<Plan.Document.Route> _suggested = [];

    private ItemList<string> _together = [];
    private bool _ground;
    private Length? _snap;
    private BoardDraft? _draft;

    public TownPlace() => _hand = new HandScript(Moved, Removed) { OnFramed = Framed, OnPlaced = Placed };

    private Length Snap => _snap ?? Open.Lengths.Steps[0];

    private BoardHand Hand => new(Open.Town, Snap.Millimetres);

    // What lies on the board and is chosen, with what it is called.
    private (string Key, string Name)? OnGround => !_ground || View.At is not { } at ? null : at.Split(':', 2) switch
    {
        ["bank"] => (at, "The bank"),
        ["hole", var id] when Open.Town.Board!.FeedHoles.Any(h => h.Id == id) => (at, $"Hole {id}"),
        ["way", var id] when Open.Town.Board!.Wireways.Any(w => w.Id == id) => (at, $"Wireway {id}"),
        ["eye", var name] when Open.Town.Show.ViewingPositions.Any(v => v.Name == name) => (at, name),
        ["thing", var number] when int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var i) && i < Open.Town.Board!.Scenery.Count => (at, Open.Town.Board.Scenery[i] is var lies && lies.Kind == SceneryKind.Free ? lies.Label ?? BoardDraft.Called(DraftKind.Free) : lies.Label ?? lies.Kind.ToString()),
        _ => null,
    };

    // What the margin speaks of.
    private string SpokenOf => _together.Count > 1 ? $"{_together.Count} houses together" : OnGround?.Name ?? House?.Building.Name ?? Open.Town.Name;

    private string Apart => Open.Town.Buildings.Where(b => _together.Contains(b.Key)).Select(b => b.Place?.At).ToList() is [{ } a, { } b]
        ? $"From middle to middle they are {Open.Lengths.Words(Length.FromMillimetres(Math.Round(Math.Sqrt(Math.Pow(a.X.Millimetres - b.X.Millimetres, 2) + Math.Pow(a.Y.Millimetres - b.Y.Millimetres, 2)))))} apart."
        : "";

    // Of what has a route already none is suggested here; the wires page compares.
    private ItemList<Plan.Document.Route> Suggested => Open.IsSettled ? _suggested = Suggestions : _suggested;

    private ItemList<Plan.Document.Route> Suggestions => Open.Town.Board is null || Unrouted.Count == 0 ? [] : Open.SuggestedRoutes.Edit.Routes.Where(r => Unrouted.Contains(r.Building)).ToItemList();

    // Where the page finds the photograph; none where it is hidden, or not in this file.
    private string? Photographed => Open.Town.Board?.Photograph is { Hidden: false } p && Open.HasPicture(p.Picture) ? $"/bench/pictures/{p.Picture}" : null;

    private HashSet<string> Unrouted => Open.Town.Buildings.Where(b => b.Place is not null).Select(b => b.Key).Except(Open.Town.Routes.Select(r => r.Building)).ToHashSet(StringComparer.Ordinal);

    // Just after opening the town is drawn before the light of its rooms is known.
    protected override double? RoomLux => Open.Settled is null ? null : View.Lux;

    // Findings take their time; until they have caught up those of before the last change stand.
    private ItemList<Finding> Findings => Open.Settled?.Findings ?? [];

    private List<Finding> Spoiling => [.. Findings.Where(f => f.Severity == Severity.Spoils)];

    private List<Finding> Others => [.. Findings.Where(f => f.Severity != Severity.Spoils)];

    private BuildingResult? House => Open.Study.Buildings.FirstOrDefault(b => b.Building.Key == View.At);

    // One line above the heading, which it must not push down.
    private string AsOf => Open.IsSettled ? "" : Open.Settled is null ? "Light and notes are being worked out." : "As of before the last change; being worked out.";

    private string Worst
    {
        get
        {
            var spoils = Findings.Count(f => f.Severity == Severity.Spoils);
            return Open.Settled is null || Open.Study.Packs.Count == 0 ? "" : spoils == 0 ? "Nothing spoils the show." : $"{spoils} {(spoils == 1 ? "thing spoils" : "things spoil")} the show or can do harm.";
        }
    }

    private static IEnumerable<(LampResult Lamp, (bool First, int Count) Place)> Kinds(BuildingResult house) =>
        house.Lamps.GroupBy(l => (l.Part.Id, l.Resistor.Value)).Select((g, i) => (g.First(), (i == 0, g.Count())));

    private IEnumerable<Finding> Notes(Subject subject) => Findings.Where(f => f.Subject == subject);

    // Looked up for every thing on the board, so what the town says of each house is gathered once.
    private Func<string, bool> Movable()
    {
        var may = MoveBuilding.MayEach(Open.Town);
        return key => may.TryGetValue(key, out var house) ? house : !key.StartsWith("pack:", StringComparison.Ordinal);
    }

    private void Pick(string key)
    {
        if (!key.StartsWith("corner:", StringComparison.Ordinal))
        {
            _together = [];
            Look(View with { At = key == View.At ? null : key });
        }
    }

    private Task Moved(string key, double right, double back, double turn) => InvokeAsync(() => Do(Hand.Move(key, _together, right, back, turn)));

    private Task Removed(string key) => InvokeAsync(() =>
    {
        var gone = _together.Add(key);
        if (Do(Hand.Remove(key, _together)))
        {
            _together = [];
            if (View.At is { } at && gone.Contains(at))
            {
                Look(View with { At = null });
            }
        }
    });

    private Task Framed(string[] keys) => InvokeAsync(() =>
    {
        var begun = _together.Count == 0 && House is { } house ? _together.Add(house.Building.Key) : _together;
        var houses = keys.Where(k => Open.Town.Buildings.Any(b => b.Key == k)).ToList();

        // One that is already among them and is chosen again is let go.
        _together = houses is [var one] && begun.Contains(one) ? begun.Where(k => k != one).ToItemList() : begun.Concat(houses).Distinct().ToItemList();
        StateHasChanged();
    });

    private Task Placed(double x, double y) => InvokeAsync(() =>
    {
        if (Open.Town.Board is { } board)
        {
            Put(Hand.Snapped(x, board.Depth.Millimetres - y));
        }
    });

    private void Put(Plan.Document.Point point)
    {
        if (_draft is { TakesMore: true } draft)
        {
            var closes = draft.IsClosedBy(point, Open.Town.Board!);
            _draft = closes ? draft : draft.With(point);
            if (closes || draft.IsOnePoint)
            {
                Finish();
            }

            StateHasChanged();
        }
    }

    private void Finish()
    {
        var edit = _draft?.Edit(Open.Town);
        if (edit is not null && !Do(edit))
        {
            return;
        }

        _draft = null;
        if (edit is AddBuilding { Added: var drawn })
        {
            Chosen(drawn.Key);
        }
    }

    private void Say(Building house, BuildingState state) => Open.Change(house.Key, b => b with { State = state }, $"{house.Name}: {state.ToString().ToLowerInvariant()}", told: false);

    private void Uncover(bool ground)
    {
        _ground = ground;
        if (House is null)
        {
            Look(View with { At = null });
        }
    }

    private bool Do(TownEdit? edit) => edit is not null && Open.Apply(edit).Count == 0;

    public async ValueTask DisposeAsync()
    {
        await _hand.DisposeAsync();
        Dispose();
        GC.SuppressFinalize(this);
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        Open.Settle();
        if (Open.Town.Board is not null)
        {
            await _hand.MountAsync(Js, _board, Open.Lengths.Nudge.Millimetres, Open.Lengths.FineNudge.Millimetres, zoomed: true);
        }
    }

    private void Chosen(string? key) => Look(View with { At = key });
}
