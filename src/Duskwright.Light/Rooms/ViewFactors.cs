namespace Duskwright.Light.Rooms;

/// <summary>Shares of the light leaving one rectangle that fall on another, as closed forms.</summary>
/// <remarks>
/// Source: J. R. Howell, A Catalog of Radiation Heat Transfer Configuration Factors, 3rd edition: B-3 and B-4 (element to rectangle),
/// C-11 and C-13 (parallel rectangles), C-14 and C-15 (perpendicular rectangles). All rectangles have their sides along the axes.
/// </remarks>
public static class ViewFactors
{
    /// <summary>From one rectangle to a parallel one that faces it (C-13).</summary>
    /// <param name="one">The rectangle the light leaves; its area is more than zero.</param>
    /// <param name="other">The rectangle it falls on, in the same two axes.</param>
    /// <param name="gapMetres">Distance between their planes, m, more than zero.</param>
    /// <returns>The share, 0 to 1.</returns>
    public static double Parallel(Rectangle one, Rectangle other, double gapMetres)
    {
        var sum = 0.0;
        foreach (var (x, y, sign) in one.Corners())
        {
            foreach (var (xi, eta, otherSign) in other.Corners())
            {
                sum += sign * otherSign * ParallelCorner(x - xi, y - eta, gapMetres);
            }
        }

        return sum / one.Area;
    }

    /// <summary>From one rectangle to one in a plane at right angles (C-15).</summary>
    /// <param name="one">The rectangle the light leaves: across is its distance from the line where the planes meet, zero or more, along runs with that line.</param>
    /// <param name="other">The rectangle it falls on, measured likewise in its own plane.</param>
    /// <returns>The share, 0 to 1.</returns>
    public static double Perpendicular(Rectangle one, Rectangle other)
    {
        var sum = 0.0;
        foreach (var (x, y, sign) in one.Corners())
        {
            foreach (var (xi, eta, otherSign) in other.Corners())
            {
                sum += sign * otherSign * PerpendicularCorner(x, xi, y - eta);
            }
        }

        return sum / one.Area;
    }

    /// <summary>From a small element to a parallel rectangle, one corner of which stands square before the element (B-3).</summary>
    /// <param name="widthMetres">One side, m.</param>
    /// <param name="heightMetres">The other side, m.</param>
    /// <param name="gapMetres">Distance, m, more than zero.</param>
    /// <returns>The share.</returns>
    public static double ElementToFacingCorner(double widthMetres, double heightMetres, double gapMetres)
    {
        var (a, b) = (widthMetres / gapMetres, heightMetres / gapMetres);
        var (ra, rb) = (Math.Sqrt(1 + (a * a)), Math.Sqrt(1 + (b * b)));
        return ((a / ra * Math.Atan(b / ra)) + (b / rb * Math.Atan(a / rb))) / (2 * Math.PI);
    }

    /// <summary>From a small element to a rectangle at right angles that stands on the element's plane, one end of it straight before the element (B-4).</summary>
    /// <param name="heightMetres">Height of the rectangle above the element's plane, m.</param>
    /// <param name="lengthMetres">Its length, m.</param>
    /// <param name="gapMetres">Distance from the element to the rectangle's foot, m, more than zero.</param>
    /// <returns>The share.</returns>
    public static double ElementToStandingCorner(double heightMetres, double lengthMetres, double gapMetres)
    {
        var slope = Math.Sqrt((heightMetres * heightMetres) + (gapMetres * gapMetres));
        return (Math.Atan(lengthMetres / gapMetres) - (gapMetres / slope * Math.Atan(lengthMetres / slope))) / (2 * Math.PI);
    }

    /// <summary>The corner function of C-13: exchange areas are its alternating sum over the corners of both rectangles.</summary>
    internal static double ParallelCorner(double dx, double dy, double gap)
    {
        var (rx, ry) = (Math.Sqrt((dx * dx) + (gap * gap)), Math.Sqrt((dy * dy) + (gap * gap)));
        return ((dy * rx * Math.Atan(dy / rx)) + (dx * ry * Math.Atan(dx / ry)) - (gap * gap / 2 * Math.Log((dx * dx) + (dy * dy) + (gap * gap)))) / (2 * Math.PI);
    }

    /// <summary>The corner function of C-15; corners that touch have none.</summary>
    internal static double PerpendicularCorner(double across, double otherAcross, double along)
    {
        var square = (across * across) + (otherAcross * otherAcross);
        var all = square + (along * along);
        if (all == 0)
        {
            return 0;
        }

        var root = Math.Sqrt(square);
        var turned = root == 0 ? 0 : along * root * Math.Atan(along / root);
        return (turned - ((square - (along * along)) / 4 * Math.Log(all))) / (2 * Math.PI);
    }
}
