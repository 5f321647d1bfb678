namespace Duskwright.Circuits.Tolerance;

/// <summary>How far apart two lights look, on CIE 1976 L* with the brighter as white (CIE 15).</summary>
public static class LightnessDifference
{
    /// <summary>From this difference on, neighbours are seen to differ. The default of the trade's rule; makers may move it.</summary>
    public const double Visible = 5;

    private const double Knee = 6.0 / 29.0;

    /// <summary>The difference.</summary>
    /// <param name="one">Light, zero or more.</param>
    /// <param name="other">Light in the same unit, zero or more.</param>
    /// <returns>ΔL*, 0 to 100; 0 when both are dark.</returns>
    public static double Between(double one, double other)
    {
        var (less, more) = one < other ? (one, other) : (other, one);
        if (!(more > 0))
        {
            return 0;
        }

        var share = Math.Max(0, less) / more;
        return 100 - (share > Knee * Knee * Knee ? (116 * Math.Cbrt(share)) - 16 : 116 * share / (3 * Knee * Knee));
    }

    /// <summary>Whether two lights are seen to differ.</summary>
    /// <param name="one">Light, zero or more.</param>
    /// <param name="other">Light in the same unit, zero or more.</param>
    /// <returns>Whether ΔL* is above <see cref="Visible"/>.</returns>
    public static bool IsVisible(double one, double other) => Math.Min(one, other) < VisibleShare * Math.Max(one, other);

    // L* = 116·∛share − 16 turned round.
    private const double VisibleCubeRoot = (100 - Visible + 16) / 116;
    private const double VisibleShare = VisibleCubeRoot * VisibleCubeRoot * VisibleCubeRoot;
}
