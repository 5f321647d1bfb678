using System.Collections.Immutable;

namespace Duskwright.Harness.Routes;

/// <summary>A run through a free area.</summary>
/// <param name="Points">Its corners, both ends included; empty where there is none.</param>
/// <param name="Metres">Its length, infinite where there is none.</param>
public sealed record FreeRun(ImmutableArray<PlanePoint> Points, double Metres)
{
    internal static FreeRun None { get; } = new([], double.PositiveInfinity);
}
