namespace Duskwright.Harness.Routes;

/// <summary>A point on the board.</summary>
/// <param name="X">Metres from the left edge.</param>
/// <param name="Y">Metres from the front edge.</param>
public readonly record struct PlanePoint(double X, double Y)
{
    /// <summary>Straight distance to another point, m.</summary>
    /// <param name="other">The other point.</param>
    /// <returns>Metres.</returns>
    public double DistanceTo(PlanePoint other) => Math.Sqrt(((X - other.X) * (X - other.X)) + ((Y - other.Y) * (Y - other.Y)));

    /// <summary>The point of a straight piece nearest to this one.</summary>
    /// <param name="from">One end.</param>
    /// <param name="to">The other end.</param>
    /// <returns>A point on the piece, its ends included.</returns>
    public PlanePoint NearestOn(PlanePoint from, PlanePoint to)
    {
        var (dx, dy) = (to.X - from.X, to.Y - from.Y);
        var square = (dx * dx) + (dy * dy);
        var along = square == 0 ? 0 : Math.Clamp((((X - from.X) * dx) + ((Y - from.Y) * dy)) / square, 0, 1);
        return new PlanePoint(from.X + (along * dx), from.Y + (along * dy));
    }
}
