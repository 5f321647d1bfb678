namespace Duskwright.Circuits.Tolerance;

/// <summary>What flickering lamps on the same pack do to a lamp.</summary>
/// <param name="Element">Its place among the elements.</param>
/// <param name="LeastLight">Its light while all others are lit, 1 being steady light at its law's reference current.</param>
/// <param name="MostLight">Its light while all others are dark.</param>
/// <param name="Difference">ΔL* between the two; above 5 it is seen.</param>
/// <param name="Ripple">Standard deviation of its light over its mean while all others flicker on their own.</param>
public sealed record DisturbedLamp(int Element, double LeastLight, double MostLight, double Difference, double Ripple);
