namespace Duskwright.Circuits.Metering;

/// <summary>A value with and without the meter that reads it.</summary>
/// <param name="Undisturbed">What is there while no meter is, V or A.</param>
/// <param name="WithMeter">What is there while the meter is, V or A.</param>
/// <param name="Reading">What the display shows of it.</param>
public sealed record MeteredValue(double Undisturbed, double WithMeter, MeterReading Reading);
