using Duskwright.Plan.Parts;

namespace Duskwright.Study.Results;

/// <summary>The drill for the pairs that go through a feed hole.</summary>
/// <remarks>Wires fill at most half of the hole, which is √(2 × wires) of their outer diameter across; half a millimetre more lets them slide. Common practice, no source.</remarks>
public static class HoleDrill
{
    private const double Sliding = 0.5;

    // What a joint needs around it; common practice, no source.
    private const double AroundJoint = 1;

    // Metric drills come in steps of half a millimetre; thinner than 1 mm they break in the hand.
    private const double Step = 0.5;
    private const double Thinnest = 1;

    /// <summary>The least drill that passes some pairs.</summary>
    /// <param name="pairs">The wire of each pair.</param>
    /// <param name="jointMillimetres">The fattest joint that must pass as well, mm; 0 where joints are made when the pairs are through.</param>
    /// <returns>Diameter, mm; 0 where no pair goes through.</returns>
    public static double Millimetres(IEnumerable<WirePart> pairs, double jointMillimetres = 0) =>
        Millimetres([.. pairs.Select(w => w.OuterDiameter.Millimetres)], jointMillimetres);

    internal static double Millimetres(IReadOnlyList<double> outerMillimetres, double jointMillimetres) => outerMillimetres.Count == 0
        ? 0
        : Math.Max(Thinnest, Step * Math.Ceiling((Math.Max(BundleMillimetres(outerMillimetres) + Sliding, jointMillimetres > 0 ? jointMillimetres + AroundJoint : 0) / Step) - 1e-9));

    /// <summary>How wide a round hole the pairs fill by half.</summary>
    /// <param name="outerMillimetres">Outer diameter of a conductor of each pair, mm.</param>
    /// <returns>Diameter, mm.</returns>
    internal static double BundleMillimetres(IReadOnlyList<double> outerMillimetres) => 2 * Math.Sqrt(outerMillimetres.Sum(d => d * d));
}
