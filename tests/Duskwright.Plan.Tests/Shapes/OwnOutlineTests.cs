using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;
using Duskwright.Plan.Shapes;

namespace Duskwright.Plan.Tests.Shapes;

/// <summary>Grounds by their own corners. A turn by 90° counter-clockwise takes (x, y) to (−y, x) (plane geometry; from memory).</summary>
public sealed class OwnOutlineTests
{
    private static readonly Placement Turned = new() { At = Point.At(200, 100), Rotation = Angle.FromDegrees(90), Width = Length.FromMillimetres(60), Depth = Length.FromMillimetres(40) };

    [Fact]
    public void A_rectangle_has_four_corners_where_it_is_turned_to() =>
        Assert.Equal([(220, 70), (220, 130), (180, 130), (180, 70)], Rounded(OwnOutline.Corners(OwnOutline.Of(Turned))));

    [Fact]
    public void A_corner_that_moves_leaves_the_others_where_they_lie()
    {
        var corners = OwnOutline.Corners(OwnOutline.Of(Turned));
        var bent = OwnOutline.With(OwnOutline.Of(Turned), corners.With(0, Point.At(240, 50)));
        Assert.Equal([(240, 50), (220, 130), (180, 130), (180, 70)], Rounded(OwnOutline.Corners(bent)));

        // The box about the corners is 60 mm across the board and 80 mm deep; turned by 90°, its depth lies across.
        Assert.Equal((80, 60), (Math.Round(bent.Width!.Value.Millimetres), Math.Round(bent.Depth!.Value.Millimetres)));
        Assert.Equal((210, 90), Rounded([bent.At])[0]);
    }

    [Fact]
    public void One_corner_more_halves_the_longest_side_and_moves_nothing()
    {
        var more = Rounded(OwnOutline.Corners(OwnOutline.OneMore(OwnOutline.Of(Turned))));
        Assert.Equal([(220, 70), (220, 100), (220, 130), (180, 130), (180, 70)], more);
    }

    [Fact]
    public void A_round_ground_becomes_the_square_about_it() =>
        Assert.Equal((60, 60), (OwnOutline.Of(Turned with { Round = true, Depth = null }).Width!.Value.Millimetres, OwnOutline.Of(Turned with { Round = true, Depth = null }).Depth!.Value.Millimetres));

    private static List<(double X, double Y)> Rounded(IEnumerable<Point> points) => [.. points.Select(p => (Math.Round(p.X.Millimetres, 1), Math.Round(p.Y.Millimetres, 1)))];
}
