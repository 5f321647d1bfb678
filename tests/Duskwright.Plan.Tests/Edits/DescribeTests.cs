using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Tests.Edits;

public sealed class DescribeTests
{
    private static readonly RoomAt Taproom = new(0, 0);

    private static readonly Town Town = new()
    {
        Name = "Fenhithe",
        Buildings = [new Building { Name = "Eel house", Leds = 3 }, new Building { Name = "Reed barn", Storeys = [new Storey { Height = Mm(30), Rooms = [new Room { Name = "loft", Windows = [At(5)] }] }] }],
    };

    [Fact]
    public void The_first_storey_takes_in_the_lamps_that_were_only_counted()
    {
        var after = DescribeStorey.OnTop(Town.Buildings[0]).Apply(Town);
        Assert.Null(after.Buildings[0].Leds);
        Assert.Equal(3, after.Buildings[0].DescribedLamps().Count());
        Assert.Empty(TownChecks.Of(after));
    }

    [Fact]
    public void A_storey_on_top_is_as_high_as_the_one_below_it_and_has_no_windows_yet()
    {
        var added = DescribeStorey.OnTop(Town.Buildings[1]).Apply(Town).Buildings[1].Storeys[1];
        Assert.Equal(30, added.Height!.Value.Millimetres);
        Assert.Empty(added.Rooms[0].Windows);
        Assert.Null(added.Rooms[0].Name);
    }

    [Fact]
    public void A_storey_that_is_taken_away_takes_its_rooms_with_it() =>
        Assert.Empty(new DescribeStorey("reed-barn", 0, null, "Less").Apply(Town).Buildings[1].Storeys);

    [Fact]
    public void A_lamp_in_a_room_ends_the_bare_count()
    {
        var shell = Town with { Buildings = [Town.Buildings[1] with { Leds = 2 }] };
        var after = new DescribeRoom("reed-barn", Taproom, shell.Buildings[0].Storeys[0].Rooms[0] with { Lamps = [new Lamp()] }, "One lamp more").Apply(shell);
        Assert.Null(after.Buildings[0].Leds);
        Assert.Empty(TownChecks.Of(after));
    }

    [Theory]
    [InlineData(14.9, true)]
    [InlineData(15, false)]
    public void A_window_may_touch_another_and_not_lie_over_it(double left, bool over)
    {
        var problems = new DescribeRoom("reed-barn", Taproom, new Room { Windows = [At(5), At(left)] }, "One more").Problems(Town);
        Assert.Equal(over, problems.Count == 1);
        Assert.All(problems, p => Assert.Equal("A window of Reed barn would lie over the one from 5 to 15 mm on the same wall.", p.Message));
    }

    [Fact]
    public void Windows_of_two_walls_or_above_one_another_do_not_meet()
    {
        Window[] apart = [At(5) with { Wall = WallSide.Back }, At(5) with { Sill = Mm(18) }];
        Assert.All(apart, w => Assert.Empty(new DescribeRoom("reed-barn", Taproom, new Room { Windows = [At(5), w] }, "One more").Problems(Town)));
    }

    [Fact]
    public void A_room_that_is_gone_changes_nothing()
    {
        var after = new DescribeRoom("reed-barn", new RoomAt(2, 0), new Room(), "Late").Apply(Town);
        Assert.Equal(Town, after);
    }

    private static Length Mm(double millimetres) => Length.FromMillimetres(millimetres);

    private static Window At(double left) => new() { FromLeft = Mm(left), Sill = Mm(8), Width = Mm(10), Height = Mm(10) };
}
