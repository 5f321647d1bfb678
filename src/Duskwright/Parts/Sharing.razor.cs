using System.Globalization;
using Duskwright.Plan.Document;
using Duskwright.Study.Results;
using Duskwright.Towns;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>The houses under their switches, moved from one to another by drag or by choice; their lamps are seen to dim or brighten.</summary>
public partial class Sharing
{
    private string? _held;
    private (string House, string Group, string Words)? _told;
    private string? _wrong;

    /// <summary>The hour that is looked at.</summary>
    [Parameter, EditorRequired]
    public Moment Moment { get; set; } = default!;

    /// <summary>How many hours into the show that is.</summary>
    [Parameter, EditorRequired]
    public double Hour { get; set; }

    [Inject]
    private OpenTown Open { get; set; } = default!;

    // What undo has taken back is not told any more.
    private string? Said => _told is { } told && Open.Town.Buildings.Any(b => b.Key == told.House && b.SwitchGroup == told.Group) ? told.Words : null;

    private PackResult? PackOf(SwitchGroup group) => Open.Study.Packs.FirstOrDefault(p => p.Supply.Id == group.Supply);

    private IEnumerable<BuildingResult> On(SwitchGroup group) => Open.Study.Buildings.Where(b => b.Building.SwitchGroup == group.Id);

    // A house whose lamps name switches of their own hangs there.
    private List<BuildingResult> Unhung => [.. Open.Study.Buildings.Where(b => b.Building.SwitchGroup is null && b.Lamps.Any(l => l.Supply is null))];

    private static double? LightOf(Moment moment, string building) =>
        moment.Lamps.Where(l => l.Building == building).Select(l => (double?)l.LightShare).DefaultIfEmpty(null).Average();

    private double Share(BuildingResult house) => LightOf(Moment, house.Building.Key) ?? 0;

    private string Words(BuildingResult house)
    {
        var leds = $"{house.Lamps.Count}\u00A0{(house.Lamps.Count == 1 ? "LED" : "LEDs")}";
        return LightOf(Moment, house.Building.Key) is { } share ? string.Create(CultureInfo.InvariantCulture, $"{leds} at\u00A0{100 * share:0}\u202F%") : $"{leds}, dark";
    }

    private void Drop(SwitchGroup group)
    {
        if (Open.Town.Buildings.FirstOrDefault(b => b.Key == _held) is { } house)
        {
            Hang(house, group.Id);
        }

        _held = null;
    }

    private void Hang(Building house, string? group)
    {
        if (group is null or "" || group == house.SwitchGroup)
        {
            return;
        }

        var before = Open.Study.Buildings.First(b => b.Building.Key == house.Key);
        var problems = Open.Change(house.Key, h => h with { SwitchGroup = group }, $"{house.Name}: hang it on switch {group}");
        _wrong = problems.Count == 0 ? null : $"{problems[0].Message} {problems[0].Remedy}";
        _told = problems.Count == 0 ? (house.Key, group, Told(house, before, group)) : null;
    }

    // Fresh light follows the current; what fades with the hours is told beside it.
    private string Told(Building house, BuildingResult before, string group)
    {
        var after = Open.Study.Buildings.First(b => b.Building.Key == house.Key);
        var faded = LightOf(Open.Study.At(Hour), house.Key);
        var light = faded is { } share ? string.Create(CultureInfo.InvariantCulture, $" At this hour its lamps give {100 * share:0}\u202F% of their fresh light.") : "";
        return $"{house.Name} hangs on switch {group}{(after.Circuit > 0 ? $", pack {after.Circuit}" : "")}.{Currents(before, after)}{light}";
    }

    private static string Currents(BuildingResult before, BuildingResult after) => (before.Current, after.Current) switch
    {
        ({ } was, { } now) when was.Value != now.Value => string.Create(CultureInfo.InvariantCulture, $" It takes {now.Value * 1000:0.0}\u2009mA where it took {was.Value * 1000:0.0}\u2009mA."),
        _ => "",
    };
}
