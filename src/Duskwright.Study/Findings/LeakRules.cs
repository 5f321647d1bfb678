using Duskwright.Plan.Document;
using Duskwright.Study.Figures;
using Duskwright.Study.Results;

namespace Duskwright.Study.Findings;

/// <summary>Light that shows where it should not: bare walls and roofs, and a dark room over a lit one. Told once a building each.</summary>
internal static class LeakRules
{
    internal static IEnumerable<Finding> Of(TownStudy study)
    {
        var leaks = study.Leaks.ToLookup(l => l.Building, StringComparer.Ordinal);
        return study.Buildings.SelectMany(b => Bare(b, [.. leaks[b.Building.Key]]).Concat(Above(b, [.. leaks[b.Building.Key]])));
    }

    // White inside means black beneath it, so only bare rooms are told of.
    private static IEnumerable<Finding> Bare(BuildingResult building, List<RoomLeaks> leaks)
    {
        var bare = leaks.Where(l => (building.Building.Storeys[l.Storey].Rooms[l.Room].Finish ?? building.Building.Finish ?? InteriorFinish.Raw) == InteriorFinish.Raw).ToList();
        if (bare.SelectMany(l => l.Leaks).Where(l => l.What is "walls" or "roof").MaxBy(l => l.Coats.Value) is not { Coats.Value: > 0 } worst)
        {
            yield break;
        }

        var walls = bare.SelectMany(l => l.Leaks).Where(l => l.What == "walls").MaxBy(l => l.Coats.Value)!;
        var roof = bare.SelectMany(l => l.Leaks).Where(l => l.What == "roof").MaxBy(l => l.Coats.Value);
        yield return new Finding
        {
            Rule = "walls-glow",
            Severity = Severity.Look,
            Subject = Subject.Building(building.Building.Key),
            Words = $"{building.Building.Name} is bare inside, and its lamps put up to {{0}} on it: in {{1}} its walls glow until {walls.Covering} has {{2}} coats of black{(roof is null ? "" : $", its roof until {roof.Covering} has {{3}}")}.",
            Figures = [worst.InsideLux, worst.Coats.Inputs[2], walls.Coats, .. roof is null ? Array.Empty<Figure>() : [roof.Coats]],
            Remedy = "Black first, then white inside; close every seam and let the roof overlap 2 to 3 mm. Look at it in the dark before the outside is painted.",
        };
    }

    private static IEnumerable<Finding> Above(BuildingResult building, List<RoomLeaks> leaks)
    {
        if (leaks.SelectMany(l => l.Leaks).Where(l => l.What.StartsWith("floor", StringComparison.Ordinal)).MaxBy(l => l.Coats.Value) is not { Coats.Value: > 0 } floor)
        {
            yield break;
        }

        yield return new Finding
        {
            Rule = "storey-glows",
            Severity = Severity.Look,
            Subject = Subject.Building(building.Building.Key),
            Words = $"A dark room of {building.Building.Name} lies over a lit one, whose lamps put up to {{0}} on its ceiling: through a floor of {floor.Covering} its window glows until the floor has {{1}} coats of black.",
            Figures = [floor.InsideLux, floor.Coats],
            Remedy = "Paint the floor between black on both faces and seal its edge to the walls.",
        };
    }
}
