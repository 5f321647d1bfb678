using Duskwright.Circuits.Fitting;

namespace Duskwright.Circuits.Tolerance;

/// <summary>How even lamps that are seen together turn out.</summary>
/// <param name="Name">What they are called.</param>
/// <param name="PairDiffers">Probability that two lamps next to one another differ visibly.</param>
/// <param name="AnyDiffers">Probability that some lamp differs visibly from the brightest.</param>
/// <param name="GreatestShare">Current of the lamp that takes most, over the mean of all: 1 is perfect, two and more is hogging.</param>
/// <param name="Overloaded">Probability that some lamp takes more than it bears.</param>
public sealed record NeighbourSpread(string Name, double PairDiffers, double AnyDiffers, Estimate GreatestShare, double Overloaded);
