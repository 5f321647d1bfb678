using Duskwright.Light.Perception;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Study.Figures;
using Duskwright.Study.Findings;
using Duskwright.Study.Results;

namespace Duskwright.Study.Comparing;

/// <summary>Two states of a town compared in words: what was said otherwise, and what that did to hours, brightness, wire and cost.</summary>
/// <param name="Changed">What was said otherwise: houses first, then packs, wires, the board and the show.</param>
/// <param name="Came">What came of it.</param>
public sealed record TownsCompared(ItemList<SaidChange> Changed, ItemList<SaidChange> Came)
{
    // Houses whose light has changed beyond these are counted, not told.
    private const int MostLights = 12;

    /// <summary>Compares.</summary>
    /// <param name="before">The one.</param>
    /// <param name="after">The other, as a rule the later.</param>
    /// <returns>What differs from the one to the other; both empty where nothing does.</returns>
    public static TownsCompared Of(TownStudy before, TownStudy after)
    {
        var was = before.Buildings.ToDictionary(b => b.Building.Key, StringComparer.Ordinal);
        var now = after.Buildings.ToDictionary(b => b.Building.Key, StringComparer.Ordinal);
        var stayed = after.Buildings.Where(b => was.ContainsKey(b.Building.Key)).Select(b => (Was: was[b.Building.Key], Now: b)).ToList();
        return new TownsCompared(
            after.Buildings.Where(b => !was.ContainsKey(b.Building.Key)).Select(b => Plain($"{b.Building.Name} is new, with {HousesCompared.Count(b.Lamps.Count, "LED")}."))
                .Concat(before.Buildings.Where(b => !now.ContainsKey(b.Building.Key)).Select(b => Plain($"{b.Building.Name} is gone, with {HousesCompared.Count(b.Lamps.Count, "LED")}.")))
                .Concat(stayed.Select(b => HousesCompared.Of(b.Was, b.Now)).OfType<SaidChange>())
                .Concat(Packs(before, after))
                .Concat(Town(before.Town, after.Town))
                .ToItemList(),
            Hours(before, after)
                .Concat(Lights(after, stayed))
                .Concat(Sums(before, after))
                .Concat(Spoiling(before, after))
                .ToItemList());
    }

    private static SaidChange Plain(string words) => new(words, []);

    private static IEnumerable<SaidChange> Packs(TownStudy before, TownStudy after)
    {
        var was = before.Packs.ToDictionary(p => p.Supply.Id, StringComparer.Ordinal);
        foreach (var pack in after.Packs)
        {
            if (!was.Remove(pack.Supply.Id, out var old))
            {
                yield return Plain($"Pack {pack.Number} is new: {pack.Words}.");
            }
            else if (old.Supply != pack.Supply)
            {
                yield return Plain(old.Words == pack.Words ? $"Pack {pack.Number}: another name, fuse or charge." : $"Pack {pack.Number} is {pack.Words}, was {old.Words}.");
            }
        }

        foreach (var gone in was.Values)
        {
            yield return Plain($"Pack {gone.Number} is gone: {gone.Words}.");
        }
    }

    private static IEnumerable<SaidChange> Town(Town before, Town after)
    {
        var said = new Clauses();
        var (was, now) = (before.Routes.ToDictionary(r => r.Building, StringComparer.Ordinal), after.Routes.ToDictionary(r => r.Building, StringComparer.Ordinal));
        var kept = now.Keys.Where(was.ContainsKey).ToList();
        Routes(said, now.Count - kept.Count, "taken");
        Routes(said, was.Count - kept.Count, "given up");
        Routes(said, kept.Count(k => was[k] != now[k]), "another");
        if (said.Count > 0)
        {
            yield return said.Sentence("Routes");
        }

        foreach (var (differs, words) in new[]
        {
            (before.Name != after.Name, $"The town is called {after.Name}, was {before.Name}."),
            (!Equals(before.Board?.Wireways, after.Board?.Wireways) || !Equals(before.Board?.FeedHoles, after.Board?.FeedHoles), "Wireways or holes of the board are others."),
            (before.Board?.Bank != after.Board?.Bank, "The bank is elsewhere or of another size."),
            ((before.Board?.Width, before.Board?.Depth) != (after.Board?.Width, after.Board?.Depth), "The board has another size."),
            (!Equals(before.Board?.Scenery, after.Board?.Scenery), "What else lies on the board is otherwise."),
            (before.Show.HoursPerDay != after.Show.HoursPerDay, $"The show is {after.Show.HoursPerDay.Hours:0.#} h, was {before.Show.HoursPerDay.Hours:0.#} h."),
            (before.Show with { HoursPerDay = after.Show.HoursPerDay } != after.Show, "Something else of the show is otherwise: its days, the light in the room, or where people stand."),
            (before.Wiring != after.Wiring, "The town's usual wire, resistor or joint is another."),
            (!before.Scenes.Equals(after.Scenes), "The scenes are others."),
            (before.Log.Count != after.Log.Count, $"The log holds {after.Log.Count} {(after.Log.Count == 1 ? "entry" : "entries")}, was {before.Log.Count}."),
        })
        {
            if (differs)
            {
                yield return Plain(words);
            }
        }
    }

    private static void Routes(Clauses said, int count, string word) => said.Add(count > 0, $"{count} {word}");

    private static IEnumerable<SaidChange> Hours(TownStudy before, TownStudy after)
    {
        var was = before.Packs.ToDictionary(p => p.Supply.Id, StringComparer.Ordinal);
        foreach (var pack in after.Packs)
        {
            if (was.TryGetValue(pack.Supply.Id, out var old))
            {
                var said = new Clauses();
                said.Add("gives", pack.Load, old.Load);
                said.Add("half light after", pack.HoursToDim, old.HoursToDim);
                said.Add(pack.HoursToDim is null && old.HoursToDim is not null, "does not fall to half light any more");
                said.Add(pack.HoursToDim is not null && old.HoursToDim is null, "now falls to half light");
                if (said.Count > 0)
                {
                    yield return said.Sentence($"Pack {pack.Number}");
                }
            }
        }
    }

    // Lightness of the darker of two, the lighter taken as white: CIE 1976 L*, as everywhere.
    private static IEnumerable<SaidChange> Lights(TownStudy after, List<(BuildingResult Was, BuildingResult Now)> houses)
    {
        var changed = houses
            .Select(h => (h.Now, h.Was, Share: Share(h.Was, h.Now)))
            .Where(h => h.Share is { } share && 100 - Lightness.OfShare(Math.Min(share, 1 / share)) > after.Town.Show.VisibleStep)
            .OrderByDescending(h => Math.Abs(Math.Log(h.Share!.Value)))
            .ToList();
        foreach (var (now, was, share) in changed.Take(MostLights))
        {
            var said = new Clauses();
            said.Add("each lamp takes", now.Lamps[0].Current, was.Lamps[0].Current);
            said.Add(said.Count == 0, "its windows differ though its lamps take the same");
            yield return said.Sentence($"{now.Building.Name} is visibly {(share > 1 ? "brighter" : "dimmer")}");
        }

        if (changed.Count > MostLights)
        {
            yield return Plain($"And {changed.Count - MostLights} houses more are visibly brighter or dimmer.");
        }
    }

    private static double? Share(BuildingResult was, BuildingResult now)
    {
        var old = was.Lamps.ToDictionary(l => l.Name, StringComparer.Ordinal);
        var shares = now.Lamps.Where(l => old.ContainsKey(l.Name)).Select(l => Light(l, old[l.Name])).OfType<double>().ToList();
        return shares.Count == 0 ? null : shares.Average();
    }

    private static double? Light(LampResult now, LampResult was) => (now, was) switch
    {
        ({ PaneLuminance: { Value: > 0 } a }, { PaneLuminance: { Value: > 0 } b }) => a.Value / b.Value,
        ({ Current: { Value: > 0 } a }, { Current: { Value: > 0 } b }) when now.Part.Id == was.Part.Id => a.Value / b.Value,
        _ => null,
    };

    private static IEnumerable<SaidChange> Sums(TownStudy before, TownStudy after)
    {
        var said = new Clauses();
        said.Add("wire to cut", Wire(after), Wire(before));
        said.Add("parts to buy, in your currency", after.PartsCost, before.PartsCost);
        if (said.Count > 0)
        {
            yield return said.Sentence("In all");
        }
    }

    private static Figure Wire(TownStudy study) => Figure.Given("wire", study.CutList.Sum(c => c.Conductors * c.Length.Value), "m", "the cut list, every conductor", Certainty.Computed);

    private static IEnumerable<SaidChange> Spoiling(TownStudy before, TownStudy after)
    {
        var (was, now) = (Spoils(before), Spoils(after));
        return now.Where(f => !was.Any(w => Same(w, f))).Select(f => new SaidChange($"New, and it spoils the show: {f.Words}", f.Figures))
            .Concat(was.Where(f => !now.Any(n => Same(n, f))).Select(f => new SaidChange($"No longer: {f.Words}", f.Figures)));
    }

    private static List<Finding> Spoils(TownStudy study) => [.. study.Findings.Where(f => f.Severity == Severity.Spoils)];

    private static bool Same(Finding one, Finding other) => one.Rule == other.Rule && one.Subject == other.Subject;
}
