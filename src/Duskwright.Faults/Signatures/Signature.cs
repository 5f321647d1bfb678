using System.Collections.Immutable;
using Duskwright.Circuits.Faulting;

namespace Duskwright.Faults.Signatures;

/// <summary>What a fault shows.</summary>
/// <param name="LightShares">Light of each tagged lamp as a share of what it should give.</param>
/// <param name="PackAmps">Current that each tagged pack delivers, A.</param>
/// <param name="PackVolts">Volts between the ends of each tagged pack, V.</param>
public sealed record Signature(ImmutableArray<double> LightShares, ImmutableArray<double> PackAmps, ImmutableArray<double> PackVolts)
{
    /// <summary>How a lamp looks.</summary>
    /// <param name="lamp">Its place among the tagged lamps.</param>
    /// <returns>Lit, dim or dark.</returns>
    public LampLook Look(int lamp) => LightShares[lamp] switch
    {
        < BankView.DarkShare => LampLook.Dark,
        < BankView.DimShare => LampLook.Dim,
        _ => LampLook.Lit,
    };
}
