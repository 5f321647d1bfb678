using Duskwright.Book.Night;
using Duskwright.Plan.Document;
using Duskwright.Study;
using Duskwright.Study.Results;

namespace Duskwright.Places;

/// <summary>The town in the light of a room: every window as it will look, which packs fade, and which windows still read as lit.</summary>
public partial class NightPlace
{
    // Half of a window's fresh light, CIE L*.
    private const double DimLightness = 76;

    private readonly HashSet<string> _off = [];
    private string _eye = "";
    private NightScene? _scene;
    private TownStudy? _sceneOf;
    private bool _camera;
    private (int Storey, int Room, int Window)? _pane;

    private string Headline => Moment.Packs.OrderBy(p => p.WorstLightness).FirstOrDefault() is { WorstLightness: < DimLightness } p
        ? $"Pack {Open.Study.Packs.First(x => x.Supply.Id == p.Supply).Number} is fading"
        : "All packs hold at this hour";

    private string Told
    {
        get
        {
            var known = Moment.Lamps.Where(l => l.ReadsAsLit is not null).ToList();
            var lost = known.Count(l => l.ReadsAsLit == false);
            return known.Count == 0 ? "no window is described yet, so only the fading is shown."
                : lost == 0 ? "every described pane reads as lit."
                : $"{lost} of {known.Count} lamps with a described pane no longer read as lit. Darken the room, or give them more current.";
        }
    }

    private BuildingResult? Picked => (_scene?.Study ?? Open.Study).Buildings.FirstOrDefault(b => b.Building.Key == View.At);

    // Building the scene takes its time; until then the last one, or the plan, is shown.
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        var study = Open.Study;
        if (!ReferenceEquals(study, _sceneOf))
        {
            _sceneOf = study;
            _scene = await Night.SceneAsync();
            StateHasChanged();
        }
    }

    private IEnumerable<((int Storey, int Room, int Window) Key, string Words, PaneResult Pane, double Now)> PanesOf(BuildingResult house)
    {
        var now = (_scene?.Study ?? Open.Study).At(View.Hour, View.Lux).Panes.Where(p => p.Building == house.Building.Key).ToDictionary(p => (p.Storey, p.Room, p.Window), p => p.Luminance);
        foreach (var pane in house.Panes)
        {
            var storey = house.Building.Storeys[pane.Storey];
            var room = storey.Rooms[pane.Room];
            var place = room.Name ?? storey.Name ?? "room";
            var wall = room.Windows[pane.Window].Wall.ToString().ToLowerInvariant();
            yield return ((pane.Storey, pane.Room, pane.Window), $"{char.ToUpperInvariant(place[0])}{place[1..]}, {wall} {pane.Window + 1}:", pane, now.GetValueOrDefault((pane.Storey, pane.Room, pane.Window)));
        }
    }

    private void Choose((string Building, int Pane) chosen)
    {
        var pane = chosen.Pane >= 0 ? _scene?.Panes[chosen.Pane] : null;
        _pane = pane is null ? null : (pane.Storey, pane.Room, pane.Window);
        Look(View with { At = pane is null && chosen.Building == View.At ? null : chosen.Building });
        StateHasChanged();
    }

    private void Flip(string group)
    {
        if (!_off.Remove(group))
        {
            _off.Add(group);
        }
    }

    private void Play(Scene scene)
    {
        _off.Clear();
        _off.UnionWith(Open.Town.SwitchGroups.Select(g => g.Id).Where(g => !scene.On.Contains(g)));
    }
}
