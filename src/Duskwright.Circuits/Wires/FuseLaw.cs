namespace Duskwright.Circuits.Wires;

/// <summary>A fuse.</summary>
/// <param name="HoldAmps">The current it carries for ever, A.</param>
/// <param name="TripAmps">The current at which it is sure to open, A.</param>
/// <param name="Ohms">Its resistance, Ω.</param>
public sealed record FuseLaw(double HoldAmps, double TripAmps, double Ohms);
