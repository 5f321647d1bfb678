using System.Diagnostics;
using System.Globalization;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Format;
using Duskwright.Plan.Quantities;
using Duskwright.Proposals;
using Duskwright.Proposals.Growth;
using Duskwright.Proposals.Wiring;
using Duskwright.Study;
using Duskwright.Study.Sums;
using Spectre.Console;

namespace Duskwright.Benchmarks.Harness;

/// <summary>What a maker waits for: routes, sharing and the order of laying of the demo town and of a town of 500 houses.</summary>
internal static class TownGoals
{
    private const double DemoSeconds = 2;
    private const double LargeSeconds = 20;
    private const double FullEnough = 0.9;
    private const double RouteGap = 0.01;

    internal static bool Run()
    {
        var table = new Table().AddColumns("claim", "goal", "measured", "holds");
        var holds = true;
        var demo = TownJson.Read(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "examples", "saltmarrow.json"))).Town!;
        Row("Saltmarrow: routes, sharing and laying order", $"< {DemoSeconds} s", Timed(() => Proposed(demo)), t => t < DemoSeconds, "s");
        var large = Large();
        SharingProposal sharing = null!;
        Row("500 houses, 1 500 lamps: routes and sharing", $"< {LargeSeconds} s", Timed(() => sharing = Proposed(large)), t => t < LargeSeconds, "s");
        Row("its packs", "proven least", sharing.PacksUsed, _ => sharing.Proven, $"packs, at least {sharing.PacksAtLeast}");
        var shared = sharing.Edit!.Apply(large);
        var given = PackCapacity.Amperes(large, Usual) * sharing.PacksUsed;
        Row("its packs are full", $"> {FullEnough:0%}", PackCapacity.Loads(shared).Sum(b => b.Amperes) / given, f => f > FullEnough, "of what they may give");
        var (ways, _) = WiringWays.Of(TownStudy.Of(shared));
        double Gap(WiringWay way) => 1 - (2 * way.Groups.Sum(g => g.Tree.AtLeastMetres) / way.WireMetres);
        Row("wire of its own pairs above its bound", $"≤ {RouteGap:0%}", Gap(ways!.OwnPairs), g => g <= RouteGap, "share");
        Row("wire of its trunks above its bound", "stated", Gap(ways.Trunks), g => g >= -1e-9, "share");
        var study = TownStudy.Of(shared);
        _ = study.Packs;
        GrowthProposal grown = null!;
        var house = new Building { Name = "One more", Leds = 3, Place = PlaceBeside.Of(shared, shared.Buildings[240]) };
        Row("500 houses: one more tied in, the town computed with it", $"< {LargeSeconds} s", Timed(() => grown = GrowthProposal.Of(study, house)), t => t < LargeSeconds, "s");
        Row("its wire", "of the cheapest place that holds", grown.Best?.Option.WireMetres ?? double.NaN, m => m > 0, "m");
        AnsiConsole.Write(table);
        return holds;

        void Row(string claim, string goal, double measured, Func<double, bool> reached, string unit)
        {
            holds &= reached(measured);
            table.AddRow(claim, goal, string.Create(CultureInfo.InvariantCulture, $"{measured:0.####} {unit}"), reached(measured) ? "yes" : "NO");
        }
    }

    private static Supply Usual => new() { Id = "1", Part = "LR6", Series = 3 };

    private static SharingProposal Proposed(Town town)
    {
        _ = RouteProposal.Of(town);
        _ = TownStudy.Of(town).Laying;
        return SharingProposal.Of(town, Usual, 0);
    }

    private static double Timed(Action work)
    {
        var start = Stopwatch.GetTimestamp();
        work();
        return Stopwatch.GetElapsedTime(start).TotalSeconds;
    }

    // Twenty streets of twenty-five houses; wireways along each street and one across them all; one to five lamps a house.
    private static Town Large()
    {
        var random = new Random(7);
        var lamps = Enumerable.Range(0, 500).Select(i => (i % 5) + 1).OrderBy(_ => random.Next()).ToList();
        return new Town
        {
            Name = "Twenty streets",
            Board = new Board
            {
                Width = Length.FromMillimetres(3000),
                Depth = Length.FromMillimetres(2000),
                Bank = new Bank { At = Point.At(1500, 10) },
                Wireways =
                [
                    new Wireway { Id = "across", Points = [Point.At(1500, 10), Point.At(1500, 1990)] },
                    .. Enumerable.Range(0, 20).Select(s => new Wireway { Id = $"street-{s}", Points = [Point.At(40, 50 + (100 * s)), Point.At(2960, 50 + (100 * s))] }),
                ],
            },
            Buildings = lamps.Select((n, i) => new Building
            {
                Name = $"House {i + 1}",
                Leds = n,
                Place = new Placement { At = Point.At(60 + (120 * (i % 25)), 80 + (100 * (i / 25))), Width = Length.FromMillimetres(50), Depth = Length.FromMillimetres(40) },
            }).ToItemList(),
        };
    }
}
