using System.Globalization;
using Duskwright.Book.Drawings;
using Duskwright.Book.Plans;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;
using Duskwright.Proposals.Growth;
using Duskwright.Study;
using Duskwright.Towns;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>Where a house that comes later is tied in, what it does to everybody, and what the town still takes.</summary>
public partial class Growing : IDisposable
{
    private readonly CancellationTokenSource _gone = new();
    private CancellationTokenSource _trying = new();
    private TownStudy? _roomOf;
    private SpareRoom? _room;
    private GrowthProposal? _found;
    private int _shown;
    private bool _busy;
    private string? _told;
    private string? _wrong;
    private string _name = "New house";
    private int _leds = 2;
    private string _beside = "";
    private Placement? _place;
    private Length _x;
    private Length _y;
    private Length _distance = Length.FromMillimetres(400);

    [Inject]
    private OpenTown Open { get; set; } = default!;

    /// <summary>The results of the town as it stands.</summary>
    [Parameter, EditorRequired]
    public TownStudy Study { get; set; } = default!;

    private List<Building> Placed => [.. Open.Town.Buildings.Where(b => b.Place is not null)];

    private Drawing? Picture => _found is { Before: { Town.Board: not null } before } found && found.Choices.ElementAtOrDefault(_shown) is { Option.Edit: { Pair: not null } edit }
        ? Drawn(before, edit)
        : null;

    public void Dispose()
    {
        _gone.Cancel();
        _gone.Dispose();
        _trying.Cancel();
        _trying.Dispose();
        GC.SuppressFinalize(this);
    }

    protected override void OnInitialized()
    {
        if (Placed.FirstOrDefault() is { } first)
        {
            Stand(first.Key);
        }
    }

    // The room at the taps is tried out, which takes a moment; what was found for an earlier town no longer holds.
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (ReferenceEquals(Study, _roomOf))
        {
            return;
        }

        var (study, cancel) = (Study, TryAnew());
        (_roomOf, _found) = (study, null);
        try
        {
            _room = await Task.Run(() => SpareRoom.Of(study, cancel), cancel);
        }
        catch (OperationCanceledException) when (cancel.IsCancellationRequested)
        {
            // The town has changed, and a later trying tells what it takes; or the page has gone.
            return;
        }

        StateHasChanged();
    }

    private CancellationToken TryAnew()
    {
        _trying.Cancel();
        _trying.Dispose();
        _trying = new CancellationTokenSource();
        return _trying.Token;
    }

    private static Drawing Drawn(TownStudy study, Plan.Edits.TieIn edit)
    {
        var with = study.After(edit.Apply(study.Town));
        return BoardPlan.Of(with, with.At(0), new BoardView { Chosen = edit.Added.Key, Pen = 5 });
    }

    private static string M(double metres) => string.Create(CultureInfo.InvariantCulture, $"{metres:0.00} m");

    private static string Count(int more, string thing) => more == 0 ? $"no {thing}" : more == 1 ? $"1 {thing}" : string.Create(CultureInfo.InvariantCulture, $"{more} {thing}s");

    private static string Carries(PackChange pack)
    {
        string Ma(double amps) => string.Create(CultureInfo.InvariantCulture, $"{1000 * amps:0.0} mA");
        string Hours(double? hours) => hours is { } h ? string.Create(CultureInfo.InvariantCulture, $"half light after {h:0.0} h") : "does not fade";
        return pack.AmpsBefore is { } was
            ? $"{Ma(pack.AmpsAfter)} instead of {Ma(was)}; {Hours(pack.HoursAfter)}{(pack.HoursBefore == pack.HoursAfter ? "" : $", now {Hours(pack.HoursBefore)}")}"
            : $"{Ma(pack.AmpsAfter)}; {Hours(pack.HoursAfter)}";
    }

    private string Worst(GrowthEffect effect)
    {
        if (effect.Worst is not { LightShare: < 0.9995 } worst)
        {
            return "No other lamp changes.";
        }

        var house = Open.Town.Buildings.FirstOrDefault(b => b.Key == worst.Building)?.Name ?? worst.Building;
        var changed = effect.Lamps.Count(l => l.LightShare < 0.9995);
        return string.Create(CultureInfo.InvariantCulture, $"{changed} of {effect.Lamps.Count} lamps lose light, {worst.Lamp} of {house} the most: {100 * (1 - worst.LightShare):0.0}\u2009%, {(-worst.Step > Open.Town.Show.VisibleStep ? "which is seen" : "which nobody sees")}.");
    }

    private void Stand(string key)
    {
        _beside = key;
        if (Open.Town.Buildings.FirstOrDefault(b => b.Key == key) is { } neighbour)
        {
            _place = PlaceBeside.Of(Open.Town, neighbour);
            _wrong = _place is null ? $"There is no free ground beside {neighbour.Name}: say its place by hand." : null;
            (_x, _y) = _place is { } place ? (place.At.X, place.At.Y) : (_x, _y);
        }
    }

    // What is chosen on the board may be a pack, beside which no house stands.
    private Task StandAt(string key)
    {
        if (Placed.All(b => b.Key != key))
        {
            return Task.CompletedTask;
        }

        Stand(key);
        return Find();
    }

    private void At(Length x, Length y)
    {
        (_x, _y, _beside) = (x, y, "");
        _place = (_place ?? new Placement { At = new Point { X = x, Y = y } }) with { At = new Point { X = x, Y = y } };
    }

    private async Task Find()
    {
        (_busy, _told, _wrong, _shown) = (true, null, null, 0);
        var (study, cancel) = (Study, _gone.Token);
        var house = new Building { Name = _name, Leds = _leds, Place = study.Town.Board is null ? null : _place ?? new Placement { At = new Point { X = _x, Y = _y } }, Distance = study.Town.Board is null ? _distance : null };
        try
        {
            var found = await Task.Run(() => GrowthProposal.Of(study, house, cancel), cancel);
            _found = ReferenceEquals(study, Study) ? found : null;
            _wrong = _found is { Options.Count: 0, Why: null } ? "Nothing in the town can be reached from there." : null;
        }
        catch (OperationCanceledException)
        {
            return;
        }

        _busy = false;
    }

    private void Take(GrowthEffect choice)
    {
        var problems = Open.Apply(choice.Option.Edit, told: true);
        _wrong = problems.Count == 0 ? null : $"{problems[0].Message} {problems[0].Remedy}";
        _told = problems.Count == 0 ? $"{choice.Option.Edit.Added.Name} is in the town: its pair stands in the cut list, the labels and the laying order." : null;
        if (problems.Count == 0)
        {
            _found = null;
        }
    }
}
