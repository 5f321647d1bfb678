using Duskwright.Light.Rooms;
using Duskwright.Light.Sight;
using Duskwright.Light.Surfaces;

namespace Duskwright.Light.Tests.Sight;

public class SightLineTests
{
    private static readonly RoomBox Room = new(0.05, 0.04, 0.035, Finishes.White);

    // A pane 10 × 10 mm in the middle of the front, 5 to 15 mm up.
    private static readonly RoomPane Pane = new(BoxFace.Front, new Rectangle(0.02, 0.03, 0.005, 0.015), PaneSheets.Clear);

    // Source: closed form. The eye 200 mm before the front and 110 mm up looks at a lamp 20 mm behind: similar triangles put the crossing
    // a tenth of the way back from the lamp, at z = z_lamp + (0.110 − z_lamp) × 20/220; the pane's upper edge of 15 mm is met at z_lamp = 5.5 mm.
    [Theory]
    [InlineData(0.0054, true)]
    [InlineData(0.0056, false)]
    public void A_lamp_above_the_line_over_the_panes_upper_edge_is_hidden(double lampMetres, bool seen) =>
        Assert.Equal(seen, SightLine.Passes(Room, Pane, new RoomPoint(0.025, -0.2, 0.11), new RoomPoint(0.025, 0.02, lampMetres), 0));

    [Fact]
    public void A_child_sees_the_lamp_that_a_standing_viewer_does_not()
    {
        var lamp = new RoomPoint(0.025, 0.02, 0.02);
        Assert.False(SightLine.Passes(Room, Pane, new RoomPoint(0.025, -0.5, 0.45), lamp, 0.0008));
        Assert.True(SightLine.Passes(Room, Pane, new RoomPoint(0.025, -0.5, -0.15), lamp, 0.0008));
    }

    [Fact]
    public void Nobody_sees_through_a_wall_from_behind_it() =>
        Assert.False(SightLine.Passes(Room, Pane, new RoomPoint(0.025, 0.5, 0.01), new RoomPoint(0.025, 0.02, 0.01), 0.01));

    [Fact]
    public void Where_a_lamp_is_hidden_nobody_sees_it_and_a_millimetre_less_is_not_enough() =>
        Gen.Select(Gen.Double[-0.3, 0.3], Gen.Double[-0.6, -0.1], Gen.Double[-0.1, 0.5]).Select(e => new RoomPoint(e.Item1, e.Item2, e.Item3)).Array[1, 4].Sample(eyes =>
        {
            var lamp = new RoomPoint(0.025, 0.02, 0.01);
            var looks = eyes.Select(e => (Pane, e)).ToList();
            if (HidingPlace.Nearest(Room, lamp, 0.001, looks) is not { } move)
            {
                return true;
            }

            bool Seen(RoomPoint at) => looks.Any(l => SightLine.Passes(Room, l.Pane, l.e, at, 0.001));
            var far = Math.Abs(move.X) + Math.Abs(move.Y) + Math.Abs(move.Z);
            return !Seen(lamp + move) && (far < 0.0015 || Seen(lamp + ((far - 0.001) / far * move)));
        });

    // Source: by hand. 0.03 cd from a face of 1.6 × 0.8 mm is 23 437.5 cd/m²; clear sheet passes 0.90 × 0.98 of it unscattered.
    [Fact]
    public void A_bare_chip_through_clear_sheet_is_as_bright_as_its_intensity_over_its_face() =>
        Assert.Equal(20671.875, BareLampSight.Luminance(0.03, 1.6e-3 * 0.8e-3, PaneSheets.Clear), 1e-6);

    [Fact]
    public void Two_coats_of_frosting_make_of_clear_sheet_what_frosted_sheet_is()
    {
        var coated = PaneSheets.Coated(PaneSheets.Clear, 2);
        Assert.Equal(PaneSheets.Frosted.Transmittance, coated.Transmittance, 1e-12);
        Assert.Equal(PaneSheets.Frosted.Haze, coated.Haze, 1e-12);
        Assert.Equal(PaneSheets.Frosted.Reflectance, coated.Reflectance, 1e-12);
    }

    // Source: by hand. One coat leaves √(0.10/0.98) = 0.319 of the straight light: a dot of 31 needs one coat, of 32 two, of 97 two, of 99 three.
    [Theory]
    [InlineData(10, 0)]
    [InlineData(31, 1)]
    [InlineData(32, 2)]
    [InlineData(97, 2)]
    [InlineData(99, 3)]
    public void A_brighter_dot_needs_more_coats(double ratio, int coats) => Assert.Equal(coats, BareLampSight.CoatsToHide(PaneSheets.Clear, ratio));

    [Fact]
    public void No_number_of_coats_that_anybody_would_brush_hides_a_thousandfold_dot() => Assert.Null(BareLampSight.CoatsToHide(PaneSheets.Clear, 1000));
}
