using System.Collections.Immutable;
using Duskwright.Harness.Routes;

namespace Duskwright.Harness.Tests.Routes;

public class CrowdingTests
{
    // A direct way of 1 m that takes two pairs, and a way round of 1.4 m: up 0.2, along 1, down 0.2.
    [Fact]
    public void Two_pairs_take_the_direct_way_and_the_third_goes_round()
    {
        var answers = Route(capacity: 2, taken: 0, round: true);
        Assert.Equal([1.0, 1.0, 1.4], answers.Select(a => Math.Round(a.LengthMetres, 9)).Order());
        Assert.All(answers, a => Assert.Null(a.NoRoute));
    }

    [Fact]
    public void A_pair_that_is_laid_takes_its_place_in_the_wireway() =>
        Assert.Equal([1.0, 1.4, 1.4], Route(capacity: 2, taken: 1, round: true).Select(a => Math.Round(a.LengthMetres, 9)).Order());

    [Fact]
    public void Where_there_is_no_other_way_the_pairs_stay_and_can_be_counted() =>
        Assert.Equal(3, Route(capacity: 2, taken: 0, round: false).Count(a => a.Wireways.Contains("direct")));

    private static ImmutableArray<RouteAnswer> Route(int capacity, int taken, bool round)
    {
        var (start, end) = (new PlanePoint(0, 0), new PlanePoint(1, 0));
        ImmutableArray<WirewayLine> ways =
        [
            new("direct", [start, end], 0, capacity, taken),
            .. round ? [new WirewayLine("round", [start, new PlanePoint(0, 0.2), new PlanePoint(1, 0.2), end])] : Array.Empty<WirewayLine>(),
        ];
        return Router.Route(ways, [new("A", end), new("B", end), new("C", end)], start, new RouteRules(0, 1.4));
    }
}
