using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Document;

/// <summary>A point on the board: x to the right, y away from the front edge towards the back, from the board's front left corner.</summary>
public sealed record Point
{
    /// <summary>Distance from the board's left edge.</summary>
    public required Length X { get; init; }

    /// <summary>Distance from the board's front edge.</summary>
    public required Length Y { get; init; }

    /// <summary>Makes a point of two numbers.</summary>
    /// <param name="xMillimetres">Distance from the left edge in mm.</param>
    /// <param name="yMillimetres">Distance from the front edge in mm.</param>
    /// <returns>The point.</returns>
    public static Point At(double xMillimetres, double yMillimetres) =>
        new() { X = Length.FromMillimetres(xMillimetres), Y = Length.FromMillimetres(yMillimetres) };
}
