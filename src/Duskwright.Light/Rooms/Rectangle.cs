namespace Duskwright.Light.Rooms;

/// <summary>A rectangle in a plane, its sides along the plane's two axes.</summary>
/// <param name="FromAcross">Near side on the first axis, m.</param>
/// <param name="ToAcross">Far side on the first axis, m.</param>
/// <param name="FromAlong">Near side on the second axis, m.</param>
/// <param name="ToAlong">Far side on the second axis, m.</param>
public readonly record struct Rectangle(double FromAcross, double ToAcross, double FromAlong, double ToAlong)
{
    /// <summary>Its area, m².</summary>
    public double Area => (ToAcross - FromAcross) * (ToAlong - FromAlong);

    /// <summary>Its four corners with the sign each takes in an alternating sum.</summary>
    internal ReadOnlySpan<(double Across, double Along, double Sign)> Corners() => new[]
    {
        (FromAcross, FromAlong, 1.0), (ToAcross, FromAlong, -1.0), (FromAcross, ToAlong, -1.0), (ToAcross, ToAlong, 1.0),
    };
}
