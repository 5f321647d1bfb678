using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Document;

/// <summary>A way along which pairs may run, under the board or hidden on it.</summary>
public sealed record Wireway
{
    /// <summary>How the wireway is referred to.</summary>
    public required string Id { get; init; }

    /// <summary>Its line; wireways whose points coincide are joined there.</summary>
    public required ItemList<Point> Points { get; init; }

    /// <summary>The level under which it runs; none means the lowest.</summary>
    public string? Level { get; init; }

    /// <summary>How many pairs it takes; none means as many as are needed.</summary>
    public int? CapacityPairs { get; init; }

    /// <summary>Extra length where it changes level, used once along it.</summary>
    public Length? Climb { get; init; }
}
