using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Operation;

namespace Duskwright.Study.Tests;

public class RoomLayoutTests
{
    [Fact]
    public void A_lamp_behind_a_side_wall_window_stands_where_it_is_said_to_stand_from_the_left()
    {
        var laid = Laid(WallSide.Right, new Lamp { FromLeft = Millimetres(12) });
        Assert.Equal(0.012, laid.Query.Lamps[0].At.X, 1e-12);
        Assert.Empty(laid.Moved);
    }

    [Fact]
    public void A_lamp_behind_a_side_wall_window_is_as_far_behind_it_as_said() =>
        Assert.Equal(0.05 - 0.015, Laid(WallSide.Right, new Lamp { BehindPane = Millimetres(15) }).Query.Lamps[0].At.X, 1e-12);

    [Fact]
    public void Two_distances_that_contradict_each_other_are_told() =>
        Assert.Contains("cannot be 12\u2009mm from the left wall and 15\u2009mm behind the pane in the right wall", Assert.Single(Laid(WallSide.Right, new Lamp { FromLeft = Millimetres(12), BehindPane = Millimetres(15) }).Moved), StringComparison.Ordinal);

    [Theory]
    [InlineData(39, false)]
    [InlineData(40.4, false)]
    [InlineData(44, true)]
    public void A_lamp_behind_the_far_wall_is_put_inside_and_that_is_told(double behindMillimetres, bool told)
    {
        var laid = Laid(WallSide.Front, new Lamp { BehindPane = Millimetres(behindMillimetres) });
        Assert.InRange(laid.Query.Lamps[0].At.Y, 0.001, 0.039 + 1e-12);
        Assert.Equal(told ? ["lamp 1 is taken 5\u2009mm towards the front, to lie inside the room"] : [], laid.Moved);
    }

    [Fact]
    public void A_window_above_the_ceiling_is_put_inside_and_that_is_told()
    {
        var laid = Laid(WallSide.Front, new Lamp(), sillMillimetres: 30);
        Assert.Equal(0.021, laid.Query.Panes[0].Opening.FromAlong, 1e-12);
        Assert.Equal("window 1 is taken 9\u2009mm down, to lie inside the room", Assert.Single(laid.Moved));
    }

    [Fact]
    public void What_nobody_measured_is_placed_without_a_word() =>
        Assert.All([WallSide.Front, WallSide.Right, WallSide.Back, WallSide.Left], wall => Assert.Empty(Laid(wall, new Lamp()).Moved));

    private static LaidRoom Laid(WallSide wall, Lamp lamp, double? sillMillimetres = null)
    {
        var room = new Room
        {
            Width = Millimetres(50),
            Depth = Millimetres(40),
            Lamps = [lamp],
            Windows = [new Window { Wall = wall, Width = Millimetres(14), Height = Millimetres(14), Sill = sillMillimetres is { } s ? Millimetres(s) : null }],
        };
        var storey = new Storey { Height = Millimetres(35), Rooms = [room] };
        return RoomLayout.Of(new Building { Name = "Eel house", Storeys = [storey] }, storey, 0, [(0, Math.PI / 3)])!;
    }

    private static Length Millimetres(double value) => Length.FromMillimetres(value);
}
