namespace Duskwright.Circuits.Fitting;

/// <summary>Current through a lamp and voltage across it, as read on the bench.</summary>
/// <param name="Amps">Current, A, more than zero.</param>
/// <param name="Volts">Voltage across the lamp, V.</param>
/// <param name="AmpsSigma">Standard error of the current, A, zero or more.</param>
/// <param name="VoltsSigma">Standard error of the voltage, V, more than zero.</param>
public sealed record LampReading(double Amps, double Volts, double AmpsSigma, double VoltsSigma);
