using Duskwright.Book.Houses;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Quantities;
using Duskwright.Plan.Shapes;
using Duskwright.Study;
using Duskwright.Study.Results;
using Duskwright.Towns;

namespace Duskwright.Tests.Towns;

/// <summary>A house drawn by hand: what a drag over its walls or floors makes of it.</summary>
public sealed class HouseHandTests
{
    private static readonly Town Cottage = new AddBuilding(StartingShape.All.First(s => s.Name == "Cottage").Building with { Place = null }).Apply(new Town { Name = "Fenhithe" });

    private static readonly HousePiece FirstWindow = new(PieceKind.Window, new RoomAt(0, 0), 0);

    private static readonly HousePiece FirstLamp = new(PieceKind.Lamp, new RoomAt(0, 0), 0);

    [Fact]
    public void A_window_that_is_dragged_goes_as_far_as_the_hand_and_the_other_stays()
    {
        var house = House(Cottage);
        var before = HouseLayout.Windows(house, WallSide.Front);
        var after = HouseLayout.Windows(House(new HouseHand(house).Move(FirstWindow, 3, 5, onFloor: false)!.Apply(Cottage)), WallSide.Front);
        Assert.Equal(before[0].LeftMillimetres + 3, after[0].LeftMillimetres, 0.25);
        Assert.Equal(before[0].SillMillimetres + 5, after[0].SillMillimetres, 0.25);
        Assert.Equal(before[1].LeftMillimetres, after[1].LeftMillimetres, 0.1);
    }

    [Fact]
    public void A_window_never_leaves_its_wall_or_its_storey()
    {
        var after = HouseLayout.Windows(House(new HouseHand(House(Cottage)).Move(FirstWindow, -500, 500, onFloor: false)!.Apply(Cottage)), WallSide.Front)[0];
        // The room is 58 of the house's 60 mm: a wall of 1 mm stands on either side.
        Assert.Equal(1, after.LeftMillimetres);
        Assert.Equal(after.CeilingMillimetres, after.SillMillimetres + after.Window.Height.Millimetres);
    }

    [Theory]
    [InlineData(62, 2)]
    [InlineData(68, 5)]
    [InlineData(70, 0)]
    public void A_room_a_wall_narrower_than_its_house_stands_in_the_middle_of_the_front(double house, double left)
    {
        var placed = Cottage with { Board = new Board { Width = Length.FromMillimetres(600), Depth = Length.FromMillimetres(400) }, Buildings = [Cottage.Buildings[0] with { Place = new Placement { At = Point.At(200, 200), Width = Length.FromMillimetres(house), Depth = Length.FromMillimetres(46) } }] };
        var (from, to, _) = HouseLayout.Share(House(placed), 0, 0, WallSide.Front);
        Assert.Equal((left, left + 58), (from, to));
    }

    [Fact]
    public void A_window_is_sized_by_its_corner_and_keeps_a_pane_worth_cutting()
    {
        var hand = new HouseHand(House(Cottage));
        Assert.Equal((14, 10), Size(hand.Size(FirstWindow, 2, -2)!));
        Assert.Equal((2, 2), Size(hand.Size(FirstWindow, -100, -100)!));
    }

    [Fact]
    public void One_more_window_stands_clear_of_the_others_until_the_wall_is_full()
    {
        var (town, added) = (Cottage, 0);
        while (new HouseHand(House(town)).AddWindow(FirstWindow.At, null, WallSide.Front).Edit is { } edit)
        {
            Assert.Empty(edit.Problems(town));
            town = edit.Apply(town);
            Assert.True(++added < 10);
        }

        Assert.True(added > 0);
        Assert.Contains("no room on this wall", new HouseHand(House(town)).AddWindow(FirstWindow.At, null, WallSide.Front).Why, StringComparison.Ordinal);

        // The usual window is 10 mm wide: 10/25.4 = 0.394 in.
        Assert.Contains("window 0.394 in wide", new HouseHand(House(town)) { Lengths = LengthRule.All[2] }.AddWindow(FirstWindow.At, null, WallSide.Front).Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_lamp_moved_up_the_wall_is_moved_above_the_floor_and_on_the_floor_behind_its_pane()
    {
        var house = House(Cottage);
        var spot = HouseLayout.Lamps(house)[0];
        var up = Lamp(new HouseHand(house).Move(FirstLamp, 0, 4, onFloor: false)!);
        Assert.Equal(spot.AboveFloorMillimetres + 4, up.AboveFloor!.Value.Millimetres, 0.25);
        Assert.Null(up.BehindPane);
        Assert.Equal(spot.FromFrontMillimetres + 4, Lamp(new HouseHand(house).Move(FirstLamp, 0, 4, onFloor: true)!).BehindPane!.Value.Millimetres, 0.25);
    }

    [Fact]
    public void Behind_a_pane_in_the_back_wall_a_lamp_moved_to_the_front_is_moved_away_from_it()
    {
        var house = Cottage.Buildings[0];
        var room = house.Storeys[0].Rooms[0];
        var town = new DescribeRoom(house.Key, FirstLamp.At, room with { Windows = [room.Windows[0] with { Wall = WallSide.Back }] }, "Turn").Apply(Cottage);
        var moved = new HouseHand(House(town)).Move(FirstLamp, 0, -5, onFloor: true)!.Apply(town).Buildings[0].Storeys[0].Rooms[0].Lamps[0];
        Assert.Equal(25, moved.BehindPane!.Value.Millimetres, 0.25);
    }

    [Fact]
    public void A_storey_is_halved_by_one_room_more()
    {
        var rooms = new HouseHand(House(Cottage)).AddRoom(0).Apply(Cottage).Buildings[0].Storeys[0].Rooms;
        Assert.Equal(2, rooms.Count);
        Assert.Equal(rooms[0].Width, rooms[1].Width);
        Assert.Equal(58, rooms[0].Width!.Value.Millimetres + rooms[1].Width!.Value.Millimetres, 0.2);
    }

    [Theory]
    [InlineData("window:0/0/1")]
    [InlineData("lamp:1/0/0")]
    [InlineData("room:2/1")]
    public void A_piece_is_found_by_the_key_it_is_drawn_with(string key) => Assert.Equal(key, HousePiece.Of(key)!.Key);

    [Theory]
    [InlineData(null)]
    [InlineData("pack:1")]
    [InlineData("window:0/0")]
    [InlineData("window:0/-1/0")]
    public void Other_keys_name_no_piece(string? key) => Assert.Null(HousePiece.Of(key));

    private static BuildingResult House(Town town) => TownStudy.Of(town).Buildings[0];

    private static (double Width, double Height) Size(TownEdit edit)
    {
        var window = edit.Apply(Cottage).Buildings[0].Storeys[0].Rooms[0].Windows[0];
        return (window.Width.Millimetres, window.Height.Millimetres);
    }

    private static Lamp Lamp(TownEdit edit) => edit.Apply(Cottage).Buildings[0].Storeys[0].Rooms[0].Lamps[0];
}
