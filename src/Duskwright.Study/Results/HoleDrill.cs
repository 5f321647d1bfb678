using Duskwright.Plan.Parts;

namespace Duskwright.Study.Results;

/// <summary>The drill for the pairs that go through a feed hole.</summary>
public static class HoleDrill
{
    // A bundle of n round leads is about 1.2 √n leads across: common practice, no source.
    private const double Bundling = 1.2;

    // Metric drills come in steps of half a millimetre; thinner than 1 mm they break in the hand.
    private const double Step = 0.5;
    private const double Thinnest = 1;

    /// <summary>The least drill that passes some pairs, each twisted and so two leads across; joints are made when the pairs are through.</summary>
    /// <param name="pairs">The wire of each pair.</param>
    /// <returns>Diameter, mm; 0 where no pair goes through.</returns>
    public static double Millimetres(IEnumerable<WirePart> pairs)
    {
        var widths = pairs.Select(w => 2 * w.OuterDiameter.Millimetres).ToList();
        return widths.Count == 0 ? 0 : Math.Max(Thinnest, Step * Math.Ceiling((Bundling * Math.Sqrt(widths.Sum(d => d * d)) / Step) - 1e-9));
    }
}
