using System.Collections.Immutable;
using Duskwright.Circuits.Networks;

namespace Duskwright.Faults.Testing;

/// <summary>Something about the parts of a circuit that is not known exactly: a lamp's volts, a resistor, a length, how full the cells are.</summary>
/// <param name="Name">What it is; factors of two circuits with one name are the same thing.</param>
/// <param name="Lowered">What stands in the circuit at the lower end, each with its place among the elements.</param>
/// <param name="Raised">What stands there at the upper end.</param>
/// <param name="Deviations">How many standard deviations either end is from the middle, more than zero.</param>
/// <param name="Lasts">Whether it is still the same at the next reading: parts do, cells do not.</param>
public sealed record Factor(
    string Name, ImmutableArray<(int Element, Element Now)> Lowered, ImmutableArray<(int Element, Element Now)> Raised, double Deviations, bool Lasts);
