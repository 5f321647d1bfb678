using System.Collections.Immutable;

namespace Duskwright.Faults.Signatures;

/// <summary>What a fault shows.</summary>
/// <param name="LightShares">Light of each tagged lamp as a share of what it should give.</param>
/// <param name="PackAmps">Current that each tagged pack delivers, A.</param>
public sealed record Signature(ImmutableArray<double> LightShares, ImmutableArray<double> PackAmps)
{
    // Half the light is where fading is called dim (CIE L* 76); a hundredth is lost to the eye beside lit windows, assumed.
    private const double DimShare = 0.5;
    private const double DarkShare = 0.01;

    /// <summary>How a lamp looks.</summary>
    /// <param name="lamp">Its place among the tagged lamps.</param>
    /// <returns>Lit, dim or dark.</returns>
    public LampLook Look(int lamp) => LightShares[lamp] switch
    {
        < DarkShare => LampLook.Dark,
        < DimShare => LampLook.Dim,
        _ => LampLook.Lit,
    };
}
