using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Lists;
using Duskwright.Plan.Quantities;
using Duskwright.Plan.Shapes;

namespace Duskwright.Plan.Tests.Edits;

public sealed class BuildingEditTests
{
    private static readonly Town Town = new()
    {
        Name = "Fenhithe",
        Board = new Board { Width = Length.FromMillimetres(600), Depth = Length.FromMillimetres(400), Bank = new Bank { At = Point.At(500, 20) } },
        Buildings =
        [
            new Building { Name = "Eel house", Leds = 2, Place = new Placement { At = Point.At(100, 100) } },
            new Building { Name = "Reed barn", Leds = 1, State = BuildingState.Fixed, Place = new Placement { At = Point.At(300, 100) } },
        ],
        Routes = [Route("eel-house", false), Route("reed-barn", true)],
        Log = [new LogEntry { Date = new DateOnly(2026, 11, 20), Kind = LogKind.Reading, Building = "eel-house", Lit = 2, Note = "both lit" }],
    };

    [Fact]
    public void A_house_that_moves_loses_the_route_that_led_to_it()
    {
        var moved = new MoveBuilding("eel-house", new Placement { At = Point.At(200, 300) }, "Move").Apply(Town);
        Assert.Equal(Point.At(200, 300), moved.Buildings[0].Place!.At);
        Assert.Equal(["reed-barn"], moved.Routes.Select(r => r.Building));
        Assert.Empty(TownChecks.Of(moved));
    }

    [Fact]
    public void What_is_fixed_or_laid_stays()
    {
        Assert.Same(Town, new MoveBuilding("reed-barn", null, "Move").Apply(Town));
        var laid = Town with { Routes = [Route("eel-house", true)] };
        Assert.Same(laid, new MoveBuilding("eel-house", null, "Move").Apply(laid));
    }

    [Fact]
    public void A_house_that_is_removed_leaves_no_route_behind_and_keeps_its_log()
    {
        var without = new RemoveBuildings([Town.Buildings[0]]).Apply(Town);
        Assert.Empty(TownChecks.Of(without));
        Assert.Equal(["reed-barn"], without.Routes.Select(r => r.Building));
        Assert.Equal("Eel house: both lit", Assert.Single(without.Log).Note);
        var none = new RemoveBuildings(Town.Buildings);
        Assert.Empty(none.Apply(Town).Buildings);
        Assert.Empty(none.Apply(Town).Routes);
        Assert.Equal($"Remove {Town.Buildings.Count} houses together", none.Label);
    }

    [Fact]
    public void A_second_house_of_a_name_is_counted()
    {
        var first = AddBuilding.Named(Town, Town.Buildings[0]);
        Assert.Equal("Eel house 2", first.Added.Name);
        Assert.Equal("Eel house 3", AddBuilding.Named(first.Apply(Town), Town.Buildings[0]).Added.Name);
    }

    [Fact]
    public void A_new_board_has_a_bank_on_it_and_one_that_is_there_keeps_its_own()
    {
        var bare = new SizeBoard(Length.FromMillimetres(900), Length.FromMillimetres(500)).Apply(Town with { Board = null, Routes = [], Buildings = [] });
        Assert.InRange(bare.Board!.Bank!.At.X.Millimetres, 0, 900);
        Assert.Equal(Point.At(500, 20), new SizeBoard(Length.FromMillimetres(900), Length.FromMillimetres(500)).Apply(Town).Board!.Bank!.At);
    }

    [Fact]
    public void Every_starting_shape_makes_a_sound_town()
    {
        Assert.Equal(StartingShape.All.Count, StartingShape.All.Select(s => s.Name).Distinct().Count());
        Assert.All(StartingShape.All, shape =>
        {
            var town = new AddBuilding(shape.Building with { Place = shape.Building.Place! with { At = Point.At(300, 200) } }).Apply(Town);
            Assert.Empty(TownChecks.Of(town));
            Assert.NotEmpty(shape.Building.DescribedLamps());
        });
    }

    [Theory]
    [InlineData("Cottage", 124, 92, 4)]
    [InlineData("Cottage", 31, 40, 1)]
    [InlineData("Hall", 56, 60, 2)]
    [InlineData("Shop", 24, 30, 1)]
    public void A_starting_shape_fits_the_ground_of_a_house_that_stands_already(string name, double width, double depth, int windows)
    {
        var ground = new Placement { At = Point.At(300, 200), Width = Length.FromMillimetres(width), Depth = Length.FromMillimetres(depth), Outline = [] };
        var house = new Building { Name = "Reed house", Leds = 3, Place = ground, SwitchGroup = Town.Buildings[0].SwitchGroup };
        var shaped = StartingShape.All.First(s => s.Name == name).On(house);
        Assert.Equal((house.Name, house.Place, house.SwitchGroup), (shaped.Name, shaped.Place, shaped.SwitchGroup));
        Assert.Equal(3, shaped.DescribedLamps().Count());
        Assert.Null(shaped.Leds);
        var room = shaped.Storeys[0].Rooms[0];
        Assert.Equal(windows, room.Windows.Count);
        Assert.True(room.Width!.Value.Millimetres < width && room.Depth!.Value.Millimetres < depth);
        Assert.True(room.Windows.Sum(w => w.Width.Millimetres) < room.Width.Value.Millimetres);
        Assert.Empty(TownChecks.Of(new AddBuilding(shaped).Apply(Town)));
    }

    // 25.4 mm to the inch by definition.
    [Theory]
    [InlineData("2 1/2 in", 63.5)]
    [InlineData("1/2 in", 12.7)]
    [InlineData("3/4\"", 19.05)]
    [InlineData("12,5", 12.5)]
    public void Lengths_may_be_fractions_of_an_inch(string text, double millimetres) => Assert.Equal(millimetres, LengthText.Read(text, "mm")!.Value.Length.Millimetres, 1e-9);

    [Theory]
    [InlineData("1/0 in")]
    [InlineData("1/ in")]
    [InlineData("1 2 in")]
    public void What_is_no_fraction_is_no_length(string text) => Assert.Null(LengthText.Read(text, "mm"));

    private static Route Route(string building, bool laid) => new() { Building = building, Points = [Point.At(100, 100), Point.At(500, 20)], Length = Length.FromMillimetres(700), Laid = laid };

    [Fact]
    public void A_copy_of_a_house_that_was_renamed_has_a_name_of_its_own()
    {
        var renamed = Town.Buildings[0] with { Id = Town.Buildings[0].Key, Name = "Old mill" };
        var town = Town with { Buildings = [renamed] };
        Assert.Equal("Old mill 2", AddBuilding.Named(town, renamed).Added.Name);
    }

    [Fact]
    public void A_bank_nobody_has_moved_goes_with_the_edge_and_its_pocket_lies_on_the_board()
    {
        Town Sized(Town town, double depth) => new SizeBoard(Length.FromMillimetres(600), Length.FromMillimetres(depth)).Apply(town);
        var bare = Town with { Board = null, Routes = [], Buildings = [] };
        Assert.Equal(Sized(bare, 400), Sized(Sized(bare, 100), 400));
        Assert.True(Sized(bare, 400).Board!.Bank!.At.Y.Millimetres >= 38);
    }
}
