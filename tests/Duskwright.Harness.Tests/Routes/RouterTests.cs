using Duskwright.Harness.Routes;

namespace Duskwright.Harness.Tests.Routes;

public class RouterTests
{
    private static readonly RouteRules Plain = new(SlackMetres: 0, DetourFactor: 1);

    [Fact]
    public void A_pair_runs_straight_down_to_the_wireway_along_it_and_up_to_the_bank()
    {
        var way = new WirewayLine("street", [new(0, 0), new(1, 0)]);
        var answer = Router.Route([way], [new RouteDemand("inn", new(0.2, 0.1))], new(0.8, -0.05), Plain).Single();
        Assert.Null(answer.NoRoute);
        Assert.Equal(0.1 + 0.6 + 0.05, answer.LengthMetres, 1e-12);
        Assert.Equal(["street"], answer.Wireways);
    }

    [Fact]
    public void Wireways_that_cross_are_joined_where_they_cross()
    {
        WirewayLine[] ways = [new("east", [new(0, 0), new(1, 0)]), new("north", [new(0.5, -0.5), new(0.5, 0.5)])];
        var answer = Router.Route([.. ways], [new RouteDemand("mill", new(0.5, 0.5))], new(1, 0), Plain).Single();
        Assert.Equal(1, answer.LengthMetres, 1e-12);
        Assert.Equal(["north", "east"], answer.Wireways);
    }

    [Fact]
    public void The_shorter_of_two_ways_is_taken()
    {
        WirewayLine[] ways = [new("straight", [new(0, 0), new(1, 0)]), new("round", [new(0, 0), new(0.5, 0.4), new(1, 0)])];
        Assert.Equal(["straight"], Router.Route([.. ways], [new RouteDemand("inn", new(0, 0))], new(1, 0), Plain).Single().Wireways);
    }

    [Fact]
    public void A_climb_lengthens_the_way()
    {
        var way = new WirewayLine("steps", [new(0, 0), new(1, 0)], ClimbMetres: 0.06);
        Assert.Equal(1.06, Router.Route([way], [new RouteDemand("chapel", new(0, 0))], new(1, 0), Plain).Single().LengthMetres, 1e-12);
    }

    [Fact]
    public void A_house_too_far_from_any_wireway_is_named_with_its_gap()
    {
        var way = new WirewayLine("street", [new(0, 0), new(1, 0)]);
        var answer = Router.Route([way], [new RouteDemand("Lookout", new(0.5, 0.6))], new(1, 0), Plain).Single();
        Assert.Equal("Lookout lies 600 mm from the nearest wireway; at most 250 mm is bridged", answer.NoRoute);
    }

    [Fact]
    public void A_wireway_that_does_not_reach_the_bank_is_said()
    {
        WirewayLine[] ways = [new("quay", [new(0, 0), new(0.4, 0)]), new("yard", [new(0.6, 0), new(1, 0)])];
        var answer = Router.Route([.. ways], [new RouteDemand("Net loft", new(0.1, 0))], new(0.9, 0), Plain).Single();
        Assert.Equal("Net loft reaches a wireway that does not lead to the bank", answer.NoRoute);
    }

    // Common practice, no source: lead = distance × 1.4 + 250 mm where nothing is drawn.
    [Fact]
    public void Without_wireways_the_rule_of_the_trade_gives_the_length() =>
        Assert.Equal(0.74, Router.Route([], [new RouteDemand("cottage", new(0.35, 0))], new(0, 0), new RouteRules(0.25, 1.4)).Single().LengthMetres, 1e-12);

    [Fact]
    public void No_pair_is_shorter_than_the_straight_line() =>
        Gen.Select(Gen.Double[0, 1], Gen.Double[0, 0.2], Gen.Double[0, 1]).Sample((x, y, bank) =>
        {
            WirewayLine[] ways = [new("a", [new(0, 0), new(0.3, 0.1), new(0.7, -0.1), new(1, 0)]), new("b", [new(0, 0.1), new(1, -0.1)])];
            var answer = Router.Route([.. ways], [new RouteDemand("house", new(x, y))], new(bank, 0), Plain).Single();
            return answer.NoRoute is not null || answer.LengthMetres >= new PlanePoint(x, y).DistanceTo(new(bank, 0)) - 1e-12;
        });
}
