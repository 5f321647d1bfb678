using System.Collections.Immutable;

namespace Duskwright.Circuits.Tolerance;

/// <summary>Lamps of one kind that are seen together.</summary>
/// <param name="Name">What they are called in the result.</param>
/// <param name="Lamps">Places of their elements, each next to the one before it; two or more.</param>
/// <param name="MostAmps">The most current that one of them bears, A.</param>
public sealed record Neighbours(string Name, ImmutableArray<int> Lamps, double MostAmps = double.PositiveInfinity);
