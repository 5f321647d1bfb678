namespace Duskwright.Circuits.Fitting;

/// <summary>Voltage of a pack at a current, as read on the bench.</summary>
/// <param name="Amps">Current drawn, A; zero for the open pack.</param>
/// <param name="Volts">Voltage between its ends, V.</param>
/// <param name="VoltsSigma">Standard error of that voltage, V, more than zero.</param>
public sealed record PackReading(double Amps, double Volts, double VoltsSigma);
