using Duskwright.Plan.Document;
using Duskwright.Study;

namespace Duskwright.Book.Tiles;

/// <summary>The drill for a feed hole.</summary>
internal static class DrillSize
{
    // A bundle of n round leads is about 1.2 √n leads across: common practice, no source.
    private const double Bundling = 1.2;

    // Metric drills come in steps of half a millimetre; thinner than 1 mm they break in the hand.
    private const double Step = 0.5;
    private const double Thinnest = 1;

    /// <summary>The drill, mm.</summary>
    /// <param name="study">The town's results.</param>
    /// <param name="hole">The hole.</param>
    /// <returns>The bore as stated; else the least drill that passes its pairs, each twisted and so two leads across; none where no pair uses it.</returns>
    internal static double? Of(TownStudy study, FeedHole hole)
    {
        if (hole.Bore is { } bore)
        {
            return bore.Millimetres;
        }

        var pairs = study.Buildings.Where(b => b.Building.FeedHole == hole.Id && b.Lamps.Count > 0).Select(b => 2 * b.Wire.OuterDiameter.Millimetres).ToList();
        return pairs.Count == 0 ? null : Math.Max(Thinnest, Step * Math.Ceiling((Bundling * Math.Sqrt(pairs.Sum(d => d * d)) / Step) - 1e-9));
    }
}
