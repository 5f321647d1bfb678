using Duskwright.Plan.Document;

namespace Duskwright.Plan.Tests.Examples;

public class SaltmarrowTests
{
    private static readonly Town Saltmarrow = Example.Town("saltmarrow.json");

    [Fact]
    public void Saltmarrow_has_a_harbour_of_houses_and_a_hundred_lamps()
    {
        Assert.Equal((1200, 800), (Saltmarrow.Board!.Width.Millimetres, Saltmarrow.Board.Depth.Millimetres));
        Assert.Equal(2, Saltmarrow.Board.Levels.Count);
        Assert.Equal(5, Saltmarrow.Supplies.Count);
        Assert.True(Saltmarrow.Buildings.Count(b => b.Kind == BuildingKind.House) >= 31);
        Assert.True(Saltmarrow.Buildings.Sum(Lamps) >= 100);
        Assert.True(Saltmarrow.Buildings.Count(b => b.Storeys.Count > 0) >= 12);
        Assert.Equal(Enum.GetValues<BuildingState>(), Saltmarrow.Buildings.Select(b => b.State).Distinct().Order());
    }

    [Fact]
    public void Pack_3_feeds_25_lamps_through_270_ohm_from_three_AAA()
    {
        var groups = Saltmarrow.SwitchGroups.Where(g => g.Supply == "3").Select(g => g.Id).ToHashSet();
        var fed = Saltmarrow.Buildings.Where(b => groups.Contains(b.SwitchGroup!)).ToList();
        Assert.Equal(25, fed.Sum(Lamps));
        Assert.All(fed, b => Assert.Equal(270, b.Resistor!.Value!.Value.Ohms));
        var pack = Saltmarrow.Supplies.Single(s => s.Id == "3");
        Assert.Equal(("LR03", 3), (pack.Part, pack.Series));
    }

    [Fact]
    public void The_chandlery_has_a_bare_lamp_close_behind_a_clear_pane()
    {
        var chandlery = Saltmarrow.Buildings.Single(b => b.Name == "Chandlery");
        Assert.Equal((98, 62), (chandlery.Place!.Width!.Value.Millimetres, chandlery.Place.Depth!.Value.Millimetres));
        var room = chandlery.Storeys[0].Rooms[0];
        Assert.Contains(room.Lamps, l => l is { Aim: LampAim.AtPane, BehindPane.Millimetres: 9 });
        Assert.Contains(room.Windows, w => w.Pane is { Material: PaneMaterial.Clear });
        Assert.Equal([2, 1, 1, 0], chandlery.Storeys.SelectMany(s => s.Rooms).Select(r => r.Lamps.Count));
    }

    [Fact]
    public void Several_kinds_of_lamp_are_in_use_and_some_are_not_known()
    {
        var ids = Saltmarrow.Buildings.SelectMany(b => b.DescribedLamps().Select(l => l.Lamp.Led).Append(b.Led)).Append(Saltmarrow.Wiring.Led).OfType<string>().ToHashSet();
        Assert.Superset(new HashSet<string> { "led-0603-warm-white", "led-0603-amber", "led-3mm-warm-white", "led-0603-red", "flicker-3mm-yellow", "ready-5v-warm-white", PartId.Unknown }, ids);
        Assert.Contains(Saltmarrow.Buildings, b => b.Wire == PartId.Unknown);
        Assert.Contains(Saltmarrow.Buildings, b => b.Resistor is { IsUnknown: true });
    }

    [Fact]
    public void No_two_houses_stand_on_the_same_ground()
    {
        var footprints = Saltmarrow.Buildings.Where(b => b.Place!.Width is not null).Select(b => (b.Name, Corners: Ground.Corners(b.Place!))).ToList();
        Assert.True(footprints.Count > 30);
        for (var i = 0; i < footprints.Count; i++)
        {
            for (var j = i + 1; j < footprints.Count; j++)
            {
                Assert.False(Ground.Overlap(footprints[i].Corners, footprints[j].Corners), $"{footprints[i].Name} and {footprints[j].Name}");
            }
        }
    }

    [Fact]
    public void No_tree_grows_into_a_house()
    {
        var houses = Saltmarrow.Buildings.Where(b => b.Kind == BuildingKind.House).Select(b => (b.Name, Corners: Ground.Corners(b.Place!))).ToList();
        foreach (var tree in Saltmarrow.Board!.Scenery.Where(s => s.Kind == SceneryKind.Tree))
        {
            var at = tree.Points[0];
            Assert.All(houses, h => Assert.True(
                !Ground.Inside(h.Corners, (at.X.Millimetres, at.Y.Millimetres))
                && h.Corners.Zip(h.Corners.Skip(1).Append(h.Corners[0])).Min(s => Ground.Distance(at, Point.At(s.First.X, s.First.Y), Point.At(s.Second.X, s.Second.Y))) >= tree.Size!.Value.Millimetres / 2,
                $"the tree at {at} and {h.Name}"));
        }
    }

    [Fact]
    public void Only_boats_and_the_jetty_lamp_are_on_the_water()
    {
        var water = Saltmarrow.Board!.Scenery.Single(s => s.Kind == SceneryKind.Water).Points.Select(p => (p.X.Millimetres, p.Y.Millimetres)).ToArray();
        foreach (var building in Saltmarrow.Buildings)
        {
            var wet = Ground.Corners(building.Place!).Any(c => Ground.Inside(water, c));
            Assert.Equal(building.Kind == BuildingKind.Boat || building.Name == "Jetty lamp", wet);
        }
    }

    [Fact]
    public void Each_house_stands_whole_on_its_own_level()
    {
        var upper = Saltmarrow.Board!.Levels.Single(l => l.Id == "upper").Outline.Select(p => (p.X.Millimetres, p.Y.Millimetres)).ToArray();
        Assert.All(Saltmarrow.Buildings, b => Assert.All(Ground.Corners(b.Place!), c => Assert.True(Ground.Inside(upper, c) == (b.Place!.Level == "upper"), $"{b.Name} at {c}")));
    }

    [Fact]
    public void Each_feed_hole_lies_on_a_wireway_or_within_60_mm_of_one()
    {
        var ways = Saltmarrow.Board!.Wireways.SelectMany(w => w.Points.Zip(w.Points.Skip(1))).ToList();
        Assert.All(Saltmarrow.Board.FeedHoles, h => Assert.True(ways.Min(w => Ground.Distance(h.At, w.First, w.Second)) <= 60, h.Id));
    }

    [Fact]
    public void All_wireways_hang_together_with_the_bank()
    {
        var ways = Saltmarrow.Board!.Wireways;
        var reached = new HashSet<Point> { ways.SelectMany(w => w.Points).MinBy(p => Ground.Distance(Saltmarrow.Board.Bank!.At, p, p))! };
        bool grew;
        do
        {
            grew = false;
            foreach (var way in ways.Where(w => w.Points.Any(reached.Contains)))
            {
                foreach (var point in way.Points)
                {
                    grew |= reached.Add(point);
                }
            }
        }
        while (grew);
        Assert.All(ways, w => Assert.True(w.Points.Any(reached.Contains), w.Id));
    }

    private static int Lamps(Building building) => building.Leds ?? building.DescribedLamps().Count();
}
