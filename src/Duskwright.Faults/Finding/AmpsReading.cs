namespace Duskwright.Faults.Finding;

/// <summary>A pack's current as read, with the band in which the true one is taken to lie.</summary>
/// <param name="LeastAmps">Lower end, A.</param>
/// <param name="MostAmps">Upper end, A.</param>
public sealed record AmpsReading(double LeastAmps, double MostAmps);
