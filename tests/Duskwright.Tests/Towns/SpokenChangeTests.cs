using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Quantities;
using Duskwright.Towns;

namespace Duskwright.Tests.Towns;

/// <summary>What a maker who does not see the drawing hears of a change.</summary>
public sealed class SpokenChangeTests
{
    private static readonly LengthRule Millimetres = LengthRule.All[0];

    private static readonly Building Mill = new()
    {
        Name = "Mill",
        Place = new Placement { At = Point.At(120, 80), Width = Length.FromMillimetres(60), Depth = Length.FromMillimetres(40) },
        Storeys = [new Storey { Rooms = [new Room { Windows = [Window(5), Window(25)], Lamps = [new Lamp { FromLeft = Length.FromMillimetres(8) }] }] }],
    };

    private static readonly Town Town = new() { Name = "Osierby", Buildings = [Mill, new Building { Name = "Forge", Leds = 2 }] };

    [Fact]
    public void A_house_that_was_moved_is_told_with_where_it_stands_now()
    {
        var moved = Mill.Place! with { At = Point.At(125, 80), Rotation = Angle.FromDegrees(-5) };
        Assert.Equal("Move Mill. It stands 125 mm from the left edge and 80 mm from the front edge, turned by -5°.", Told(Mill with { Place = moved }, "Move Mill"));
    }

    [Fact]
    public void A_window_that_was_moved_is_told_with_its_size_and_place() =>
        Assert.Equal("Mill: move a window. It is 10 mm wide and 12 mm high, 27 mm from the wall's left end, 9 mm from floor to sill.", Told(WithRoom(r => r with { Windows = r.Windows.With(1, Window(27)) }), "Mill: move a window"));

    [Fact]
    public void A_lamp_that_was_moved_is_told_with_what_is_said_of_its_place() =>
        Assert.Equal("Mill: move a lamp. It is 8 mm from the room's left wall, 20 mm above the floor.", Told(WithRoom(r => r with { Lamps = [r.Lamps[0] with { AboveFloor = Length.FromMillimetres(20) }] }), "Mill: move a lamp"));

    [Fact]
    public void What_came_or_went_or_was_many_things_at_once_is_told_by_its_label_alone()
    {
        Assert.Equal("Mill: one window more.", Told(WithRoom(r => r with { Windows = r.Windows.Add(Window(45)) }), "Mill: one window more"));
        Assert.Equal("Mill: take off the board.", Told(Mill with { Place = null }, "Mill: take off the board"));
        var both = new ChangeBuildings([Mill with { Leds = 1 }, Town.Buildings[1] with { Leds = 3 }], "Count the LEDs").Apply(Town);
        Assert.Equal("Count the LEDs.", SpokenChange.Of(Town, both, "Count the LEDs", Millimetres));
    }

    [Fact]
    public void Lengths_are_told_in_the_makers_own_unit()
    {
        var moved = Mill with { Place = Mill.Place! with { At = Point.At(127, 80) } };
        Assert.Contains("12.7 cm from the left edge", SpokenChange.Of(Town, new ChangeBuildings([moved], "Move").Apply(Town), "Move", LengthRule.All.First(r => r.Unit == "cm")), StringComparison.Ordinal);
    }

    private static string Told(Building changed, string label) => SpokenChange.Of(Town, new ChangeBuildings([changed], label).Apply(Town), label, Millimetres);

    private static Building WithRoom(Func<Room, Room> changed) => Mill with { Storeys = [Mill.Storeys[0] with { Rooms = [changed(Mill.Storeys[0].Rooms[0])] }] };

    private static Window Window(double left) => new() { Width = Length.FromMillimetres(10), Height = Length.FromMillimetres(12), FromLeft = Length.FromMillimetres(left), Sill = Length.FromMillimetres(9) };
}
