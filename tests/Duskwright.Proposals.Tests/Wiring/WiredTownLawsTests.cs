using Duskwright.Harness.Laying;
using Duskwright.Plan;
using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;
using Duskwright.Proposals.Wiring;
using Duskwright.Study;

namespace Duskwright.Proposals.Tests.Wiring;

/// <summary>What must hold of any town, whichever way it is wired: own pairs, trunks with taps, or chains.</summary>
public class WiredTownLawsTests
{
    private const double SlackMetres = 0.12;
    private const double ClimbMetres = 0.1;

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void A_town_at_random_is_lit_and_cut_and_laid_as_it_is_drawn(int way) => Gen.Int[0, 1_000_000].Sample(seed =>
    {
        var bare = TownStudy.Of(AtRandom(new Random(seed)));
        var ways = WiringWays.Of(bare, TestContext.Current.CancellationToken).Ways!;
        var town = ways.All[way].Groups.Aggregate(bare.Town, (t, g) => ways.Taking(bare, g).Edit.Apply(t));
        Assert.Empty(TownChecks.Of(town));
        var study = TownStudy.Of(town);
        EachLampIsFedOnce(town, study);
        WhatIsCutIsWhatIsDrawnAndSlack(town, study);
        WayKeepsToWireways(town);
        NoPairIsPulledUnderAHouseThatStands(town, study);
        HolesAreWideEnoughOrSaidToBeTight(ways.All[way], town);
    }, iter: 6, threads: 1);

    // Open ground with a batten and a pond between bank and houses: tried every millimetre of every drawn pair, clear of an edge by half of one.
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void No_pair_of_any_way_runs_through_an_obstacle(int way) => Gen.Int[0, 1_000_000].Sample(seed =>
    {
        var town = AtRandom(new Random(seed));
        var barred = TownStudy.Of(town with
        {
            Board = town.Board! with
            {
                Wireways = [],
                FeedHoles = [],
                Scenery = [Block(150, 110, 560, 150), Block(330, 330, 380, 400)],
            },
            Buildings = town.Buildings.Select(b => b with { FeedHole = null }).ToItemList(),
        });
        var ways = WiringWays.Of(barred, TestContext.Current.CancellationToken).Ways!;
        var wired = ways.All[way].Groups.Aggregate(barred.Town, (t, g) => ways.Taking(barred, g).Edit.Apply(t));
        Assert.Equal(wired.Buildings.Count, wired.Routes.Count);
        Assert.All(wired.Routes.Select(r => r.Points).Concat(wired.Taps.Select(t => t.Points)), points => Assert.DoesNotContain(EveryMillimetre(points), p => barred.Town.Board!.Scenery.Any(s => IsInside(s, p))));
    }, iter: 6, threads: 1);

    private static Scenery Block(double left, double front, double right, double back) => new() { Kind = SceneryKind.Obstacle, Points = [Point.At(left, front), Point.At(right, front), Point.At(right, back), Point.At(left, back)] };

    private static bool IsInside(Scenery block, (double X, double Y) at) =>
        at.X > block.Points[0].X.Millimetres + 0.5 && at.X < block.Points[2].X.Millimetres - 0.5 && at.Y > block.Points[0].Y.Millimetres + 0.5 && at.Y < block.Points[2].Y.Millimetres - 0.5;

    private static IEnumerable<(double X, double Y)> EveryMillimetre(ItemList<Point> points) => points.Zip(points.Skip(1)).SelectMany(p =>
    {
        var (x, y) = (p.Second.X.Millimetres - p.First.X.Millimetres, p.Second.Y.Millimetres - p.First.Y.Millimetres);
        var steps = (int)Math.Ceiling(Math.Sqrt((x * x) + (y * y))) + 1;
        return Enumerable.Range(0, steps + 1).Select(i => (p.First.X.Millimetres + (x * i / steps), p.First.Y.Millimetres + (y * i / steps)));
    });

    // Every house is reached from the bank over its own pair and the shared ones it hangs on, once each; every pair leads to a lamp.
    private static void EachLampIsFedOnce(Town town, TownStudy study)
    {
        var starts = SharedRuns.Starts(town);
        var leadsOn = new HashSet<string>(StringComparer.Ordinal);
        foreach (var house in town.Buildings)
        {
            var way = new List<string>();
            for (var run = house.Key; run is not null; run = starts.GetValueOrDefault(run))
            {
                Assert.DoesNotContain(run, way);
                way.Add(run);
            }

            leadsOn.UnionWith(way);
        }

        Assert.All(town.Taps, t => Assert.Contains(t.Id, leadsOn));
        Assert.Equal(town.Buildings.Count, town.Routes.Select(r => r.Building).Distinct().Count());
        Assert.All(study.Lamps, l => Assert.True(l.Current!.Value > 0));
        Assert.Equal(study.Lamps.Count, study.At(0).Lamps.Count);
    }

    // The total of the cut list is the drawn ways with their climbs and the maker's slack for each pair, and tails.
    private static void WhatIsCutIsWhatIsDrawnAndSlack(Town town, TownStudy study)
    {
        var pairs = study.CutList.Where(c => c.For.Contains("pair", StringComparison.Ordinal)).ToList();
        Assert.Equal(town.Routes.Count + town.Taps.Count, pairs.Count);
        Assert.All(pairs, p => Assert.Equal(SlackMetres, p.SlackMetres!.Value, 0.002));
        var drawn = town.Routes.Select(r => (r.Points, r.Wireways)).Concat(town.Taps.Select(t => (t.Points, t.Wireways))).Sum(x => Drawn(town, x.Points));
        Assert.Equal(2 * (drawn + (SlackMetres * pairs.Count)), pairs.Sum(p => p.Conductors * p.CutMillimetres / 1000.0), 0.004 * pairs.Count);
    }

    // The one climbing wireway stands upright in the drawing: what of a way lies on it climbs with it.
    private static double Drawn(Town town, ItemList<Point> points)
    {
        var climbing = town.Board!.Wireways.Single(w => w.Climb is not null);
        var (x, from, to) = (climbing.Points[0].X.Metres, climbing.Points[0].Y.Metres, climbing.Points[1].Y.Metres);
        return points.Zip(points.Skip(1)).Sum(p =>
        {
            var straight = Distance(p.First, p.Second);
            var on = Math.Abs(p.First.X.Metres - x) < 1e-4 && Math.Abs(p.Second.X.Metres - x) < 1e-4 && new[] { p.First, p.Second }.All(q => q.Y.Metres >= from - 1e-4 && q.Y.Metres <= to + 1e-4);
            return straight * (on ? 1 + (ClimbMetres / (to - from)) : 1);
        });
    }

    private static void WayKeepsToWireways(Town town)
    {
        var known = town.Board!.Wireways.Select(w => w.Id).ToHashSet(StringComparer.Ordinal);
        Assert.All(town.Routes.SelectMany(r => r.Wireways).Concat(town.Taps.SelectMany(t => t.Wireways)), w => Assert.Contains(w, known));
    }

    // The order has no round in it: each house is set down once, after every pair that it stands over; each shared pair lies before what hangs on it.
    private static void NoPairIsPulledUnderAHouseThatStands(Town town, TownStudy study)
    {
        var rows = study.Laying.Rows;
        Assert.Equal(town.Buildings.Count, rows.Count(r => r.Act == LayingAct.SetDown));
        Assert.Equal(town.Taps.Count, rows.Count(r => r.Act == LayingAct.LayShared));
        var starts = SharedRuns.Starts(town);
        for (var i = 0; i < rows.Count; i++)
        {
            var (standing, pulled) = study.Laying.After(i);
            var lies = rows[i].Act is LayingAct.SetDown or LayingAct.PullFirst && !pulled.Contains(rows[i].Building) ? rows[i].Building : null;
            if (lies is null)
            {
                continue;
            }

            Assert.All(Chain(starts, lies).Where(r => town.Taps.Any(t => t.Id == r)), tap => Assert.Contains(tap, pulled));
            var house = town.Buildings.Single(b => b.Key == lies);
            Assert.DoesNotContain(town.Buildings.Where(b => b.Key != lies && standing.Contains(b.Key)), b => StandsOver(town, b, house));
        }
    }

    private static void HolesAreWideEnoughOrSaidToBeTight(WiringWay way, Town town) => Assert.All(way.Holes, h =>
    {
        var bore = town.Board!.FeedHoles.Single(x => x.Id == h.Hole).Bore!.Value.Millimetres;
        Assert.Equal(bore < h.DrillMillimetres, h.TooTight);

        // Round wires beside one another never fill more than the hole: the sum of their sections is less than its own. Geometry.
        Assert.True(h.Pairs == 0 || 2 * h.Pairs * 0.23 * 0.23 < h.DrillMillimetres * h.DrillMillimetres);
    });

    private static IEnumerable<string> Chain(IReadOnlyDictionary<string, string> starts, string run)
    {
        for (var at = starts.GetValueOrDefault(run); at is not null; at = starts.GetValueOrDefault(at))
        {
            yield return at;
        }
    }

    // A square house of 60 mm over the line from another house to its hole, tried point by point, clear of its edge by 0.1 mm.
    private static bool StandsOver(Town town, Building over, Building house)
    {
        var hole = town.Board!.FeedHoles.Single(h => h.Id == house.FeedHole).At;
        return Enumerable.Range(0, 201).Any(i =>
        {
            var (x, y) = (house.Place!.At.X.Metres + (i / 200.0 * (hole.X.Metres - house.Place.At.X.Metres)), house.Place.At.Y.Metres + (i / 200.0 * (hole.Y.Metres - house.Place.At.Y.Metres)));
            return Math.Abs(x - over.Place!.At.X.Metres) < 0.0299 && Math.Abs(y - over.Place.At.Y.Metres) < 0.0299;
        });
    }

    private static double Distance(Point a, Point b) => Math.Sqrt(Math.Pow(a.X.Metres - b.X.Metres, 2) + Math.Pow(a.Y.Metres - b.Y.Metres, 2));

    // Up to ten houses on two switches on a board with a spine, a climbing rib and a second rib; holes lie beside the houses, often beneath a neighbour, never on the climbing rib itself: what leads up through one could not be told from what climbs along it.
    private static Town AtRandom(Random random)
    {
        var spots = Enumerable.Range(0, 10).Select(i => Point.At(150 + (90 * (i % 5)) + random.Next(0, 25), 220 + (200 * (i / 5)) + random.Next(0, 30))).OrderBy(_ => random.Next()).Take(random.Next(4, 11)).ToList();
        return new Town
        {
            Name = "Random Hythe",
            Supplies = [new Supply { Id = "1", Part = "LR6", Series = 3 }],
            SwitchGroups = [new SwitchGroup { Id = "A", Supply = "1" }, new SwitchGroup { Id = "B", Supply = "1" }],
            Wiring = new WiringChoices { Slack = Length.FromMetres(SlackMetres) },
            Board = new Board
            {
                Width = Length.FromMillimetres(700),
                Depth = Length.FromMillimetres(600),
                Bank = new Bank { At = Point.At(60, 60) },
                Wireways =
                [
                    new Wireway { Id = "spine", Points = [Point.At(60, 60), Point.At(640, 60)], CapacityPairs = 40 },
                    new Wireway { Id = "rib", Points = [Point.At(250, 60), Point.At(250, 520)], CapacityPairs = 40, Climb = Length.FromMetres(ClimbMetres) },
                    new Wireway { Id = "second", Points = [Point.At(500, 60), Point.At(500, 520)], CapacityPairs = 40 },
                ],
                FeedHoles = spots.Select((s, i) => new FeedHole { Id = $"h{i}", At = Point.At(Beside(s.X.Millimetres + random.Next(-45, 46)), s.Y.Millimetres + random.Next(-45, 46)), Bore = Length.FromMillimetres(random.Next(1, 4)) }).ToItemList(),
            },
            Buildings = spots.Select((s, i) => new Building
            {
                Name = $"House {i + 1}",
                Leds = random.Next(1, 4),
                SwitchGroup = random.Next(2) == 0 ? "A" : "B",
                FeedHole = $"h{i}",
                Place = new Placement { At = s, Width = Length.FromMillimetres(60), Depth = Length.FromMillimetres(60) },
            }).ToItemList(),
        };
    }

    private static double Beside(double x) => Math.Abs(x - 250) < 0.5 ? x + 1 : x;
}
