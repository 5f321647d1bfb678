namespace Duskwright.Circuits.Lamps;

/// <summary>What a lamp does at a voltage: a strictly increasing, smooth current.</summary>
public abstract record LampLaw
{
    /// <summary>A conductance beside every lamp that keeps a reversed or dark one joined to the network, S. At 12 V it carries 12 pA.</summary>
    public const double LeakSiemens = 1e-12;

    /// <summary>The branch of this lamp and a resistor at a voltage.</summary>
    /// <param name="branchVolts">Voltage across the branch, V; any finite value.</param>
    /// <param name="resistorOhms">Resistance in series with the lamp, Ω, zero or more.</param>
    /// <returns>Current, slope, lamp voltage and light.</returns>
    public abstract LampPoint At(double branchVolts, double resistorOhms);
}
