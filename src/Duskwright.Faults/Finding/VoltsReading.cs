namespace Duskwright.Faults.Finding;

/// <summary>A pack's volts under load as read together with its current, what an ammeter in line takes taken off, with the band in which the true ones lie.</summary>
/// <param name="LeastVolts">Lower end, V.</param>
/// <param name="MostVolts">Upper end, V.</param>
public sealed record VoltsReading(double LeastVolts, double MostVolts);
