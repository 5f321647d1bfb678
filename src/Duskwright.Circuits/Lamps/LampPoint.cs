namespace Duskwright.Circuits.Lamps;

/// <summary>What a lamp and its resistor do at one voltage.</summary>
/// <param name="Amps">Mean current of the branch, A.</param>
/// <param name="Siemens">Slope of that current against the branch's voltage, A/V, more than zero.</param>
/// <param name="LampVolts">Voltage across the lamp itself, V; of a flickering lamp in its lit state.</param>
/// <param name="LitAmps">Current in the lit state, A; the same as <paramref name="Amps"/> for a steady lamp.</param>
/// <param name="Light">Mean light, where 1 is the steady light at the law's reference current.</param>
public readonly record struct LampPoint(double Amps, double Siemens, double LampVolts, double LitAmps, double Light);
