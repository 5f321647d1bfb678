using System.Collections.Immutable;
using Duskwright.Circuits.Networks;

namespace Duskwright.Circuits.Tolerance;

/// <summary>A part of which the maker only knows that it is one of several, each as likely as the next.</summary>
/// <param name="Element">Its place among the elements of the network.</param>
/// <param name="CouldBe">What it may be, between the same nodes, one or more; the spreads come on top.</param>
public sealed record UnknownPart(int Element, ImmutableArray<Element> CouldBe);
