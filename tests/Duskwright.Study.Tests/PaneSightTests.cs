using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Results;

namespace Duskwright.Study.Tests;

public class PaneSightTests
{
    [Fact]
    public void Every_pane_with_a_lamp_behind_it_has_a_sight() =>
        Assert.Equal(Saltmarrow.Panes.Select(p => (p.Building, p.Storey, p.Room, p.Window)), Saltmarrow.Sights.Select(s => (s.Building, s.Storey, s.Room, s.Window)));

    [Fact]
    public void A_window_in_the_back_wall_is_not_seen_from_the_quay() =>
        Assert.Empty(Saltmarrow.Sights.Single(s => s.Building == "chapel" && s.Room == 0 && s.Window == 3).From);

    [Fact]
    public void A_bare_chip_that_points_at_the_viewer_glares_and_one_that_points_away_does_not()
    {
        Assert.True(Assert.Single(Seen(PaneMaterial.Clear, LampAim.AtPane).Lamps).Glare!.Value > 100);
        Assert.Null(Assert.Single(Seen(PaneMaterial.Clear, LampAim.Away).Lamps).Glare);
    }

    [Fact]
    public void Nobody_sees_the_back_of_a_lamp_through_frosted_sheet()
    {
        var sight = Seen(PaneMaterial.Frosted, LampAim.Away);
        Assert.False(sight.SeenThrough);
        Assert.Empty(sight.Lamps);
        Assert.Null(sight.MetalOverWall);
    }

    [Fact]
    public void Moved_as_advised_the_lamp_is_out_of_sight()
    {
        var move = Assert.Single(Seen(PaneMaterial.Clear, LampAim.Away).Lamps).Move!;
        Assert.Equal("up", move.Way);
        Assert.Empty(Seen(PaneMaterial.Clear, LampAim.Away, aboveFloor: 12 + move.Millimetres).Lamps);
        Assert.NotEmpty(Seen(PaneMaterial.Clear, LampAim.Away, aboveFloor: 12 + move.Millimetres - 1).Lamps);
    }

    [Fact]
    public void In_a_black_room_solder_stands_out_and_in_a_white_one_it_does_not()
    {
        Assert.True(Seen(PaneMaterial.Clear, LampAim.Away).MetalOverWall!.Value < 1);
        Assert.Equal(0.60 / 0.06, Seen(PaneMaterial.Clear, LampAim.Away, InteriorFinish.Black).MetalOverWall!.Value, 1e-12);
    }

    [Fact]
    public void A_house_between_hides_a_window()
    {
        var town = Town(PaneMaterial.Clear, LampAim.Away, InteriorFinish.White, 12);
        Building Wall(double y) => new() { Name = "Long barn", Place = new Placement { At = Point.At(300, y), Width = Length.FromMillimetres(400), Depth = Length.FromMillimetres(40) }, Storeys = [new Storey { Height = Length.FromMillimetres(300), Rooms = [new Room()] }] };
        Assert.NotEmpty(Assert.Single(TownStudy.Of(town with { Buildings = [.. town.Buildings, Wall(500)] }).Sights).From);
        Assert.Empty(Assert.Single(TownStudy.Of(town with { Buildings = [.. town.Buildings, Wall(100)] }).Sights).From);
    }

    [Fact]
    public void A_town_that_names_no_place_to_stand_is_looked_at_from_straight_before_each_window()
    {
        var town = Town(PaneMaterial.Clear, LampAim.Away, InteriorFinish.White, 12);
        Assert.Equal(["straight before it", "straight before it, a child"], Assert.Single(TownStudy.Of(town with { Show = new Show() }).Sights).From);
    }

    [Fact]
    public void Black_costs_light_and_a_room_that_is_black_or_white_already_is_itself_among_the_choices()
    {
        var choices = Saltmarrow.Buildings.SelectMany(b => Saltmarrow.Finishes(b.Building.Key)).ToList();
        Assert.Equal(Saltmarrow.Panes, choices.Select(c => c.Pane));
        Assert.All(choices, c => Assert.InRange(c.Left.Value, 0, 1));
        Assert.All(Saltmarrow.Finishes("cooperage"), c => Assert.Equal(c.Pane.Luminance.Value, c.Black.Value));
        Assert.All(Saltmarrow.Finishes("chapel"), c => Assert.Equal(c.Pane.Luminance.Value, c.White.Value));
    }

    [Fact]
    public void A_building_that_is_not_there_has_no_choices() => Assert.Empty(Saltmarrow.Finishes("nowhere"));

    private static readonly TownStudy Saltmarrow = TownStudy.Of(Demo.Saltmarrow);

    private static PaneSight Seen(PaneMaterial pane, LampAim aim, InteriorFinish finish = InteriorFinish.White, double aboveFloor = 12) =>
        Assert.Single(TownStudy.Of(Town(pane, aim, finish, aboveFloor)).Sights);

    // One house 200 mm behind the board's front edge, its window 5 to 19 mm up; somebody at its height half a metre before it.
    private static Town Town(PaneMaterial pane, LampAim aim, InteriorFinish finish, double aboveFloor) => new()
    {
        Name = "Fenhithe",
        Supplies = [new Supply { Id = "1", Part = "LR6", Series = 3 }],
        SwitchGroups = [new SwitchGroup { Id = "A", Supply = "1" }],
        Show = new Show { ViewingPositions = [new ViewingPosition { Name = "at the dyke", At = Point.At(300, -300), EyeHeight = Length.FromMillimetres(20) }] },
        Buildings =
        [
            new Building
            {
                Name = "Eel house", SwitchGroup = "A", Led = "led-0603-warm-white", Finish = finish,
                Place = new Placement { At = Point.At(300, 220), Width = Length.FromMillimetres(50), Depth = Length.FromMillimetres(40) },
                Storeys =
                [
                    new Storey
                    {
                        Height = Length.FromMillimetres(35),
                        Rooms =
                        [
                            new Room
                            {
                                Lamps = [new Lamp { Aim = aim, FromLeft = Length.FromMillimetres(25), AboveFloor = Length.FromMillimetres(aboveFloor) }],
                                Windows = [new Window { Width = Length.FromMillimetres(14), Height = Length.FromMillimetres(14), Sill = Length.FromMillimetres(5), Pane = new Pane { Material = pane } }],
                            },
                        ],
                    },
                ],
            },
        ],
    };
}
