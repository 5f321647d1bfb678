namespace Duskwright.Circuits.Faulting;

/// <summary>How finely a circuit is looked at from the bank: a meter on each pack, and eyes on the lamps.</summary>
/// <param name="Volts">Two pack voltages closer than this cannot be told apart, V, more than zero.</param>
/// <param name="Amps">Two pack currents closer than this cannot be told apart, A, more than zero.</param>
public sealed record BankView(double Volts, double Amps)
{
    /// <summary>Below this share of its sound light a lamp is seen to be dim (CIE L* 76).</summary>
    public const double DimShare = 0.5;

    /// <summary>Below this share a lamp is lost to the eye beside lit windows; assumed.</summary>
    public const double DarkShare = 0.01;
}
