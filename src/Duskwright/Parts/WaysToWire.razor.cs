using System.Globalization;
using Duskwright.Book.Drawings;
using Duskwright.Book.Plans;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;
using Duskwright.Proposals.Wiring;
using Duskwright.Study;
using Duskwright.Towns;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>The three ways to wire a town side by side, and what is advised between least wire and least dark.</summary>
public partial class WaysToWire : IDisposable
{
    private static readonly string[] Titles = ["A pair to each house", "Shared trunks with taps", "From house to house"];
    private readonly CancellationTokenSource _gone = new();
    private TownStudy? _waysOf;
    private WiringWays? _ways;
    private string? _why;
    private double _robustness = 0.5;
    private ItemList<WiringAdvice> _advised = [];
    private ItemList<CommonReturn> _returns = [];
    private Dictionary<int, int> _chosen = [];
    private string? _told;
    private string? _wrong;

    [Inject]
    private OpenTown Open { get; set; } = default!;

    [Parameter, EditorRequired]
    public TownStudy Study { get; set; } = default!;

    public void Dispose()
    {
        _gone.Cancel();
        _gone.Dispose();
        GC.SuppressFinalize(this);
    }

    // Laying out takes a second or so; until then the last answer stands.
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (ReferenceEquals(Study, _waysOf))
        {
            return;
        }

        var (study, cancel) = (Study, _gone.Token);
        _waysOf = study;
        var (ways, why) = await Task.Run(() => WiringWays.Of(study, cancel));
        var returns = ways is null ? [] : await Task.Run(() => CommonReturn.Of(study, ways));
        if (ReferenceEquals(study, _waysOf) && !cancel.IsCancellationRequested)
        {
            (_ways, _why, _chosen, _returns) = (ways, why, [], returns);
            _advised = ways?.Advised(_robustness) ?? [];
            StateHasChanged();
        }
    }

    private static string M(double metres) => string.Create(CultureInfo.InvariantCulture, $"{metres:0.0} m");

    private static string Could(WiringWay way)
    {
        var atLeast = 2 * way.Groups.Sum(g => g.Tree.AtLeastMetres);
        return way.WireMetres - atLeast < 0.01 ? "no, that is proved" : $"never below {M(atLeast)}";
    }

    private static string Pairs(int pairs) => pairs == 1 ? "one pair" : $"{pairs} pairs";

    private string Faint(GroupWiring group) => group.Evenness >= 100 - _ways!.VisibleStep
        ? "no lamp is seen to be fainter than its like"
        : string.Create(CultureInfo.InvariantCulture, $"a lamp on switch {group.SwitchGroup} looks fainter than its like, by {100 - group.Evenness:0} of lightness");

    private bool IsAdvised(int way) => _advised.Count(a => _ways!.All[way].Groups.Contains(a.Wiring)) * 2 > _advised.Count;

    private Drawing Drawn(WiringWay way) => BoardPlan.Of(_waysOf!, _waysOf!.At(0), new BoardView { Instead = way.Groups.SelectMany(Lines).ToItemList(), Pen = 7 });

    // Each pair in the colour of the circuit of a house that it feeds.
    private static IEnumerable<Plan.Document.Route> Lines(GroupWiring group) => group.Tree.Pieces
        .Zip(group.FirstFed)
        .Where(x => x.First.Points.Length > 1)
        .Select(x => new Plan.Document.Route
        {
            Building = x.Second,
            Points = x.First.Points.Select(p => Point.At(1000 * p.X, 1000 * p.Y)).ToItemList(),
            Length = Length.FromMetres(x.First.Metres),
        });

    // Where the maker has not chosen, the advised way.
    private int Chosen(int group) => _chosen.TryGetValue(group, out var way)
        ? way
        : _ways!.All.Select((w, i) => (w, i)).First(x => x.w.Groups[group] == _advised[group].Wiring).i;

    private WiringEdit Taking(int group) => _ways!.Taking(_waysOf!, _ways.All[Chosen(group)].Groups[group]);

    private ItemList<string> Changes(int group) => Taking(group).Changes;

    private void Choose(int group, string? way) => _chosen[group] = int.Parse(way!, CultureInfo.InvariantCulture);

    // Taken against the town as it stands: the ways are worked out anew after every edit.
    private void Take(int group)
    {
        var edit = Taking(group).Edit;
        var problems = Open.Apply(edit, told: true);
        _wrong = problems.Count == 0 ? null : $"{problems[0].Message} {problems[0].Remedy}";
        _told = problems.Count == 0 ? $"Switch {edit.SwitchGroup} is wired so." : null;
    }

    private static string Taps(int taps) => taps == 1 ? "There is one tap" : $"There are {taps} taps";

    private string Named(string group) => Open.Town.SwitchGroups.FirstOrDefault(g => g.Id == group)?.Name is { } name ? $", {name}" : "";

    private void Weigh(ChangeEventArgs e)
    {
        if (double.TryParse(e.Value?.ToString(), NumberStyles.Float, CultureInfo.InvariantCulture, out var value))
        {
            _robustness = Math.Clamp(value, 0, 1);
            _advised = _ways!.Advised(_robustness);
        }
    }
}
