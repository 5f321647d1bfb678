using Duskwright.Study.Figures;
using Duskwright.Study.Results;

namespace Duskwright.Study.Findings;

/// <summary>What people see through windows and should not: a bare lamp, its back and wires, an empty room. Told once a building each.</summary>
internal static class SightRules
{
    // From three times its surroundings on a thing is recognised, from ten it draws the eye (a university's table of focal ratios).
    private const double Recognised = 3;

    internal static IEnumerable<Finding> Of(TownStudy study)
    {
        var sights = study.Sights.ToLookup(s => s.Building, StringComparer.Ordinal);
        return study.Buildings.SelectMany(b => Dot(b, [.. sights[b.Building.Key]]).Concat(Inside(b, [.. sights[b.Building.Key]]))).Concat(Flashes(study));
    }

    // Rate and lit area decide; within the limits the caution of the town's work is enough.
    private static IEnumerable<Finding> Flashes(TownStudy study)
    {
        if (study.Flicker.Where(f => !f.WithinFlashLimit).MaxBy(f => f.Area.Value) is { } worst)
        {
            yield return new Finding
            {
                Rule = "flicker-area",
                Severity = Severity.Spoils,
                Subject = Subject.Town,
                Words = $"From “{worst.From}” {worst.Panes} windows flicker {{0}} times a second over {{1}} of the view, more than the 6 msr that may flash faster than 3 a second: it can set off seizures in people who are sensitive to it.",
                Figures = [worst.Rate, worst.Area],
                Remedy = "Let fewer windows flicker in one view, or keep people farther off, and say at the entrance that lights flicker.",
            };
        }
    }

    private static IEnumerable<Finding> Dot(BuildingResult building, List<PaneSight> sights)
    {
        var name = building.Building.Name;
        var subject = Subject.Building(building.Building.Key);
        if (sights.Where(s => s.Lamps.Any(l => l.Glare is not null)).MaxBy(s => s.Lamps.Max(l => l.Glare?.Value)) is { } sight)
        {
            var seen = sight.Lamps.Where(l => l.Glare is not null).MaxBy(l => l.Glare!.Value)!;
            yield return new Finding
            {
                Rule = "dot-shows",
                Severity = Severity.Look,
                Subject = subject,
                Words = $"{name}, {Place(building, sight)}: the bare {seen.Lamp} is seen through its pane from {Quoted(seen.From)}, {{0}} times as bright as the pane itself.",
                Figures = [seen.Glare!],
                Remedy = $"Turn it to the back wall or the ceiling{(seen.Move is { } move ? $", or move it {move.Millimetres}\u2009mm {move.Way}" : "")}{Frosting(sight.Open ? null : seen.Coats)}.",
            };
        }
        else if (building.Lamps.FirstOrDefault(l => l.DotShows) is { } lamp)
        {
            yield return new Finding
            {
                Rule = "dot-shows",
                Severity = Severity.Look,
                Subject = subject,
                Words = $"{name}, {lamp.Room}: {lamp.Name} points at its pane from close behind and shows as a dot; the pane itself has {{0}}.",
                Figures = [lamp.PaneLuminance!],
                Remedy = "Turn it to the back wall or the ceiling, 15 to 25 mm from the pane, or frost the pane on both faces.",
            };
        }
    }

    private static IEnumerable<Finding> Inside(BuildingResult building, List<PaneSight> sights)
    {
        var open = sights.Where(s => s.SeenThrough).ToList();
        if (open.OrderByDescending(s => s.Lamps.Count).FirstOrDefault() is not { } sight)
        {
            yield break;
        }

        var backs = sight.Lamps.Where(l => l.Glare is null).ToList();
        var metal = sight.MetalOverWall!;
        var stands = metal.Value >= Recognised;
        var opening = sight.Open ? "open doorway" : "clear pane";
        var what = backs.Count == 0 ? "no lamp is in the line of sight, but the room shows as it is, empty or furnished"
            : $"the back of {Told(backs.Select(l => l.Lamp))} with solder and wires is in the line of sight";
        var darken = backs.Count == 0 ? "Furnish it" : stands ? "Paint solder, leads and card edges black" : "Furnish the room, or darken solder and leads";
        var move = backs.Count == 1 && backs[0].Move is { } m ? $", or move the lamp {m.Millimetres}\u2009mm {m.Way}" : "";
        yield return new Finding
        {
            Rule = "inside-shows",
            Severity = backs.Count > 0 ? Severity.Look : Severity.Sound,
            Subject = Subject.Building(building.Building.Key),
            Words = $"{building.Building.Name}, {Place(building, sight)}: from {Quoted(sight.From)} one sees in through the {opening}; {what}{(stands ? ". Bare metal is {0} times as bright as the wall behind it" : "")}.",
            Figures = stands ? [metal] : [],
            Remedy = $"{darken}{move}{(sight.Open ? "" : $"{Frosting(sight.CoatsToClose)}, which leaves {FigureText.Of(sight.LightAfterCoats)} of its light")}.",
        };
    }

    private static string Frosting(int? coats) => coats is > 0 ? $", or frost the pane with {coats} more coat{(coats == 1 ? "" : "s")}" : "";

    private static string Place(BuildingResult building, PaneSight sight)
    {
        var storey = building.Building.Storeys[sight.Storey];
        return storey.Rooms[sight.Room].Name ?? storey.Name ?? "room";
    }

    // Viewing positions have names of the maker's own.
    private static string Quoted(IEnumerable<string> positions) => Told(positions.Select(p => $"“{p}”"));

    private static string Told(IEnumerable<string> names)
    {
        var all = names.ToList();
        return all.Count == 1 ? all[0] : $"{string.Join(", ", all.SkipLast(1))} and {all[^1]}";
    }
}
