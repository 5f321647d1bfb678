using System.Collections.Immutable;
using Duskwright.Harness.Growth;
using Duskwright.Harness.Routes;

namespace Duskwright.Harness.Tests.Growth;

public class TieInGroundTests
{
    private static readonly RouteRules Rules = new(0.1, 1.4);
    private static readonly TiePoint Bank = new("bank", new PlanePoint(0, 0));

    // A street along the front edge, 1 m; the new house stands 50 mm behind it at 0.7 m.
    private static readonly ImmutableArray<WirewayLine> Street = [new("street", [new PlanePoint(0, 0), new PlanePoint(1, 0)])];
    private static readonly RouteDemand House = new("new", new PlanePoint(0.7, 0.05));

    [Fact]
    public void A_pair_is_as_long_as_its_way_by_hand_from_the_bank_from_a_house_and_from_the_middle_of_a_trunk()
    {
        var runs = TieInGround.Runs(Street, House, [Bank, new("inn", new PlanePoint(0.4, 0.02))], [new("TA1", [new PlanePoint(0, 0), new PlanePoint(0.9, 0)])], Rules);
        Assert.Equal(["TA1", "inn", "bank"], runs.Select(r => r.Id));

        // By hand: 0.05 + 0.1; 0.02 + 0.3 + 0.05 + 0.1; 0.7 + 0.05 + 0.1.
        Assert.Equal(0.15, runs[0].Metres, 1e-9);
        Assert.Equal(7.0 / 9, runs[0].CutShare!.Value, 1e-9);
        Assert.Equal(0.47, runs[1].Metres, 1e-9);
        Assert.Equal(0.85, runs[2].Metres, 1e-9);
    }

    [Fact]
    public void A_full_wireway_is_kept_out_of_and_one_beside_it_taken()
    {
        ImmutableArray<WirewayLine> ways =
        [
            new("near", [new PlanePoint(0, 0.1), new PlanePoint(1, 0.1)], 0, 2, 2),
            new("far", [new PlanePoint(0, 0), new PlanePoint(1, 0)], 0, 2, 1),
        ];
        var run = Assert.Single(TieInGround.Runs(ways, new RouteDemand("new", new PlanePoint(0.5, 0.12)), [Bank], [], Rules));
        Assert.Equal(["far"], run.Wireways);
        Assert.Equal(0.12 + 0.5 + 0.1, run.Metres, 1e-9);
    }

    [Fact]
    public void On_open_ground_the_straight_way_counts_with_its_detour()
    {
        var runs = TieInGround.Runs([], House, [Bank], [new("TA1", [new PlanePoint(0.6, 0), new PlanePoint(0.6, 1)])], Rules);
        Assert.Equal((0.1 * 1.4) + 0.1, runs[0].Metres, 1e-9);
        Assert.Equal(0.05, runs[0].CutShare!.Value, 1e-9);
        Assert.Equal((Math.Sqrt(0.49 + 0.0025) * 1.4) + 0.1, runs[1].Metres, 1e-9);
    }

    [Fact]
    public void Nothing_is_tied_in_that_lies_too_far_from_every_wireway()
    {
        Assert.Empty(TieInGround.Runs(Street, new RouteDemand("new", new PlanePoint(0.5, 0.3)), [Bank], [], Rules));
        Assert.Single(TieInGround.Runs(Street, new RouteDemand("new", new PlanePoint(0.5, 0.25)), [Bank], [], Rules));
    }

    [Fact]
    public void No_place_along_a_trunk_is_nearer_than_the_one_that_is_found()
    {
        var random = new Random(11);
        for (var scene = 0; scene < 60; scene++)
        {
            PlanePoint At() => new(random.Next(0, 11) / 10.0, random.Next(0, 11) / 10.0);
            ImmutableArray<WirewayLine> ways = [.. Enumerable.Range(0, 5).Select(i => new WirewayLine($"w{i}", [At(), At(), At()]))];
            var trunk = ways[0].Points;
            var house = new RouteDemand("new", At());
            var found = TieInGround.Runs(ways, house, [new("begin", trunk[0]), new("end", trunk[^1])], [new("T", trunk)], Rules).Select(r => r.Metres).DefaultIfEmpty(double.PositiveInfinity).Min();

            // The same by brute force: a place every 10 mm of the trunk, each reached by the plain router as if the bank were there.
            foreach (var (a, b) in trunk.Zip(trunk.Skip(1)).Where(s => s.First != s.Second))
            {
                for (var share = 0.01; share < 1; share += 0.01)
                {
                    var place = new PlanePoint(a.X + (share * (b.X - a.X)), a.Y + (share * (b.Y - a.Y)));
                    if (Router.Route(ways, [house], place, Rules)[0] is { NoRoute: null } answer)
                    {
                        Assert.True(found <= answer.LengthMetres + 0.0015, $"scene {scene}: {found} m found, {answer.LengthMetres} m from {place}");
                    }
                }
            }
        }
    }
}
