using Duskwright.Plan.Parts;

namespace Duskwright.Proposals.Wiring;

/// <summary>How wide a hole must be for the pairs that go through it.</summary>
public static class DrillSize
{
    // Wires pulled by hand fill two fifths of a hole at most: common practice, no source.
    private const double Fill = 0.4;

    // A soldered joint in a sleeve is about three times as thick as its wire: common practice, no source.
    private const double JointOverWire = 3;

    // Drills are sold in steps of half a millimetre: common practice, no source.
    private const double StepMillimetres = 0.5;

    /// <summary>The drill for a hole: all wires and the fattest joint within two fifths of it.</summary>
    /// <param name="pairs">The wire of each pair that goes through.</param>
    /// <returns>Diameter, mm; 0 for no pair.</returns>
    public static double Millimetres(IReadOnlyCollection<WirePart> pairs)
    {
        if (pairs.Count == 0)
        {
            return 0;
        }

        // The last pair comes with the joint of one conductor on it, drawn past all other wires.
        var fattest = pairs.Max(w => w.OuterDiameter.Millimetres);
        var squares = pairs.Sum(w => 2 * w.OuterDiameter.Millimetres * w.OuterDiameter.Millimetres) + (((JointOverWire * JointOverWire) - 1) * fattest * fattest);
        return StepMillimetres * Math.Ceiling(Math.Sqrt(squares / Fill) / StepMillimetres);
    }
}
