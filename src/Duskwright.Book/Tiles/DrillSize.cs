using Duskwright.Plan.Document;
using Duskwright.Study;
using Duskwright.Study.Results;

namespace Duskwright.Book.Tiles;

/// <summary>The drill for a feed hole.</summary>
internal static class DrillSize
{
    /// <summary>The drill, mm.</summary>
    /// <param name="study">The town's results.</param>
    /// <param name="hole">The hole.</param>
    /// <returns>The bore as stated; else the least drill that passes its pairs; none where no pair uses it.</returns>
    internal static double? Of(TownStudy study, FeedHole hole) => hole.Bore is { } bore
        ? bore.Millimetres
        : HoleDrill.Millimetres(study.Buildings.Where(b => b.Building.FeedHole == hole.Id && b.Lamps.Count > 0).SelectMany(b => b.Lamps.DistinctBy(l => l.SwitchGroup).Select(_ => b.Wire))) is > 0 and var drill ? drill : null;
}
