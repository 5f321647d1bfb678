using Duskwright.Harness.Routes;

namespace Duskwright.Harness.Tests.Routes;

/// <summary>Pairs that are to go along a wireway of the maker's choice.</summary>
public class WayAlongTests
{
    // Two ways round a square of 1 m from its near left to its far right corner, and a short cut of 0.3 m that leads nowhere.
    private static readonly WirewayLine[] Square =
    [
        new("low", [new(0, 0), new(1, 0), new(1, 1)]),
        new("high", [new(0, 0), new(0, 1.2), new(1, 1.2), new(1, 1)]),
        new("blind", [new(0.5, 0), new(0.5, 0.3)]),
    ];

    // By hand: 1 + 1 m by the low way, 1.2 + 1 + 0.2 m by the high one.
    [Fact]
    public void A_pair_goes_the_longer_way_where_the_maker_says_so()
    {
        var answers = Router.Route([.. Square], [new("free", new(1, 1)), new("sent", new(1, 1), Along: "high")], new(0, 0), new RouteRules(0.1, 1.4));
        Assert.Equal((2.1, 2.5), (Math.Round(answers[0].LengthMetres, 9), Math.Round(answers[1].LengthMetres, 9)));
        Assert.Equal("low", Assert.Single(answers[0].Wireways));
        Assert.Equal("high", Assert.Single(answers[1].Wireways));
    }

    [Fact]
    public void A_wireway_on_the_shortest_way_already_changes_nothing()
    {
        var answers = Router.Route([.. Square], [new("free", new(1, 1)), new("sent", new(1, 1), Along: "low")], new(0, 0), new RouteRules(0.1, 1.4));
        Assert.Equal(answers[0].LengthMetres, answers[1].LengthMetres, 9);
        Assert.Equal(answers[0].Points.AsEnumerable(), answers[1].Points);
    }

    [Fact]
    public void A_pair_is_not_sent_up_a_blind_wireway_only_to_come_back() =>
        Assert.Equal(
            "sent is to go along wireway blind, and no way from it leads there and on to the bank",
            Router.Route([.. Square], [new("sent", new(1, 1), Along: "blind")], new(0, 0), new RouteRules(0.1, 1.4))[0].NoRoute);

    // Laws: going along a wireway is never shorter than going as one likes, and the wireway is on the way.
    [Fact]
    public void A_way_of_the_makers_choice_is_never_shorter_and_holds_the_wireway_chosen() => Gen.Select(Gen.Double[0, 1], Gen.Double[0, 1]).Sample((x, y) =>
    {
        var answers = Router.Route([.. Square], [new("free", new(1, y)), new("sent", new(1, y), Along: "high")], new(x, 0), new RouteRules(0, 1.4, 1));
        Assert.True(answers[1].NoRoute is not null || (answers[1].LengthMetres >= answers[0].LengthMetres - 1e-9 && answers[1].Wireways.Contains("high")));
        Assert.Null(answers[0].NoRoute);
    }, iter: 100, threads: 1);
}
