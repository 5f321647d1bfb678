using System.Collections.Immutable;

namespace Duskwright.Harness.Routes;

/// <summary>A place under the board where wire may lie anywhere: an outline with battens, legs and magnets in it.</summary>
/// <param name="Outline">The wall round it, m, in either sense; empty where the ground is open on all sides.</param>
/// <param name="Obstacles">What wire may touch and never cross, each a closed outline without repeat of its first point, m.</param>
public sealed record FreeArea(ImmutableArray<PlanePoint> Outline, ImmutableArray<ImmutableArray<PlanePoint>> Obstacles);

/// <summary>A run through a free area.</summary>
/// <param name="Points">Its corners, both ends included; empty where there is none.</param>
/// <param name="Metres">Its length, infinite where there is none.</param>
public sealed record FreeRun(ImmutableArray<PlanePoint> Points, double Metres)
{
    internal static FreeRun None { get; } = new([], double.PositiveInfinity);
}
