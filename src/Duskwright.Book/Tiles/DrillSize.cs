using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Study;
using Duskwright.Study.Results;

namespace Duskwright.Book.Tiles;

/// <summary>The drill for a feed hole.</summary>
public static class DrillSize
{
    /// <summary>The drill for the pair of a building, mm.</summary>
    /// <param name="study">The town's results.</param>
    /// <param name="building">One of its buildings.</param>
    /// <returns>That of its feed hole, with all that goes through; without one, the least drill that passes its own pairs; none where it has no lamps.</returns>
    public static double? Of(TownStudy study, BuildingResult building) =>
        study.Town.Board?.FeedHoles.FirstOrDefault(h => h.Id == building.Building.FeedHole) is { } hole ? Of(study, hole) : Passing(Pairs(building));

    /// <summary>The drill, mm.</summary>
    /// <param name="study">The town's results.</param>
    /// <param name="hole">The hole.</param>
    /// <returns>The bore as stated; else the least drill that passes its pairs; none where no pair uses it.</returns>
    internal static double? Of(TownStudy study, FeedHole hole) => hole.Bore is { } bore
        ? bore.Millimetres
        : Passing(study.Buildings.Where(b => b.Building.FeedHole == hole.Id).SelectMany(Pairs));

    // One for each switch that its lamps hang on.
    private static IEnumerable<WirePart> Pairs(BuildingResult building) => building.Lamps.DistinctBy(l => l.SwitchGroup).Select(_ => building.Wire);

    private static double? Passing(IEnumerable<WirePart> pairs) => HoleDrill.Millimetres(pairs) is > 0 and var drill ? drill : null;
}
