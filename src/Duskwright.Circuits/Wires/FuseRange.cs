namespace Duskwright.Circuits.Wires;

/// <summary>A fuse with the ends of its resistance.</summary>
/// <param name="Name">What it is called in the result.</param>
/// <param name="HoldAmps">The current it carries for ever at 20 °C, A.</param>
/// <param name="TripAmps">The current at which it is sure to open, A. Between the two nothing is sure.</param>
/// <param name="LeastOhms">Its least resistance, new, Ω.</param>
/// <param name="MostOhms">Its most, of a resettable fuse an hour after it tripped, Ω.</param>
/// <param name="MostVolts">The most voltage, V.</param>
public sealed record FuseRange(string Name, double HoldAmps, double TripAmps, double LeastOhms, double MostOhms, double MostVolts = double.PositiveInfinity);
