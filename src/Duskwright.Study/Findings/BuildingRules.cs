using Duskwright.Plan.Parts;
using Duskwright.Study.Figures;
using Duskwright.Study.Results;

namespace Duskwright.Study.Findings;

/// <summary>What buildings lack, or look like.</summary>
internal static class BuildingRules
{
    // More clauses than these are counted, not told.
    private const int MostSaid = 3;

    internal static IEnumerable<Finding> Of(TownStudy study)
    {
        var lit = study.Buildings.Where(b => b.Lamps.Count > 0).ToList();

        // Before there are packs one sentence says it for all houses.
        return lit.Count > 1 && lit.All(b => b.Lamps.All(l => l.Supply is null))
            ? [NotShared(Subject.Town, "No house hangs on a pack yet, so nothing lights.", "them")]
            : lit.SelectMany(b => OfBuilding(study, b)).Concat(ReadsUnlit(study));
    }

    private static Finding NotShared(Subject subject, string words, string what) => new()
    {
        Rule = "not-shared-out",
        Severity = Severity.Look,
        Subject = subject,
        Words = words,
        Remedy = $"Share the lamps over packs, or put {what} on a switch; both are done under Power.",
    };

    private static IEnumerable<Finding> OfBuilding(TownStudy study, BuildingResult building)
    {
        var name = building.Building.Name;
        var subject = Subject.Building(building.Building.Key);
        if (building.Lamps.Any(l => l.Supply is null))
        {
            yield return NotShared(subject, $"{name} hangs on no pack yet.", "it");
            yield break;
        }

        if (building.Building.Pack is { } wished && building.Lamps.Any(l => l.Supply != wished))
        {
            var numbers = study.Packs.ToDictionary(p => p.Supply.Id, p => p.Number, StringComparer.Ordinal);
            yield return new Finding
            {
                Rule = "on-another-pack",
                Severity = Severity.Look,
                Subject = subject,
                Words = $"{name} is to stay on pack {numbers[wished]} and hangs on pack {string.Join(" and ", building.Lamps.Select(l => l.Supply!).Distinct().Select(s => numbers[s]))}.",
                Remedy = "Put it on a switch of the pack you chose for it, or let it go free.",
            };
        }

        foreach (var approximated in Approximated(building))
        {
            yield return approximated;
        }

        var worst = building.Lamps.MinBy(l => l.Evenness ?? 100)!;
        if (worst.Evenness is { } evenness && 100 - evenness > study.Town.Show.VisibleStep && worst.Part.Kind == LampKind.Led)
        {
            yield return new Finding
            {
                Rule = "stands-apart",
                Severity = Severity.Look,
                Subject = subject,
                Words = $"{name} looks dimmer than the brightest of its kind on its pack, by {{0}}; its pair loses {{1}}.",
                Figures = [Figure.Given("difference", 100 - evenness, "L*", "CIE 1976 L* of its light against the brightest of the same part", Certainty.Computed), building.PairDrop!],
                Remedy = "Where they are seen together, give them the same resistor; a thicker wire helps only where the pair loses much.",
            };
        }
    }

    // One sentence a building: light of what is described is computed all the same.
    private static IEnumerable<Finding> Approximated(BuildingResult building)
    {
        var said = building.Panes.DistinctBy(p => (p.Storey, p.Room)).SelectMany(p => p.Moved.Select(m => $"In {RoomName(building, p)}, {m}")).ToList();
        var round = building.Panes.Count > 0 && building.Building.Place is { Round: true };
        if (said.Count > 0 || round)
        {
            yield return new Finding
            {
                Rule = "approximated-as",
                Severity = said.Count > 0 ? Severity.Look : Severity.Sound,
                Subject = Subject.Building(building.Building.Key),
                Words = $"The light of {building.Building.Name} is approximated. {(round ? "Its round wall is taken as a box. " : "")}{string.Concat(said.Take(MostSaid).Select(s => $"{s}. "))}{(said.Count > MostSaid ? $"And {said.Count - MostSaid} more." : "")}".TrimEnd(),
                Remedy = said.Count > 0 ? "Measure again, or describe the room as it is." : null,
            };
        }
    }

    internal static string RoomName(BuildingResult building, PaneResult pane) =>
        building.Building.Storeys[pane.Storey] is var storey && storey.Rooms[pane.Room].Name is { } name ? name : storey.Name ?? "room";

    private static IEnumerable<Finding> ReadsUnlit(TownStudy study)
    {
        if (study.Town.Show.RoomIlluminance is not { } room)
        {
            yield break;
        }

        var panes = study.Buildings
            .SelectMany(b => b.Lamps.Where(l => l.ReadsAsLitTo is not null).DistinctBy(l => l.Room).Select(l => (Building: b.Building.Name, Lamp: l)))
            .OrderBy(x => x.Lamp.ReadsAsLitTo!.Value)
            .ToList();
        var dull = panes.Count(x => x.Lamp.ReadsAsLitTo!.Value < room.Lux);
        if (dull > 0)
        {
            yield return new Finding
            {
                Rule = "reads-unlit",
                Severity = Severity.Look,
                Subject = Subject.Town,
                Words = $"In {{0}}, {dull} of the {panes.Count} rooms described read as unlit; the dullest is {panes[0].Building}, {panes[0].Lamp.Room}, lit up to {{1}}.",
                Figures = [Figure.Given("light in the room", room.Lux, "lx", "as said of the show", Certainty.Assumed), panes[0].Lamp.ReadsAsLitTo!],
                Remedy = "Dim the room, paint insides white, frost clear panes, or give them more current.",
            };
        }
    }
}
