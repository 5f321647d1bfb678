using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;

namespace Duskwright.Plan.Tests.Checks;

/// <summary>Tests that the maker sets behind a step.</summary>
public class OwnTestChecksTests
{
    [Theory]
    [InlineData(null, true)]
    [InlineData(0, true)]
    [InlineData(2, true)]
    [InlineData(3, false)]
    [InlineData(-1, false)]
    public void No_more_lamps_must_light_than_the_house_has(int? lit, bool allowed) =>
        Assert.Equal(allowed, Problems(new OwnTest { Words = "pair to the test pack", Lit = lit }).Count == 0);

    [Fact]
    public void A_test_says_what_to_touch_to_what() =>
        Assert.Equal("buildings[0].way.added[0].test.words", Assert.Single(Problems(new OwnTest { Words = " " })).Path);

    private static ItemList<Problem> Problems(OwnTest test) => TownChecks.Of(new Town
    {
        Name = "Nowhere",
        Buildings = [new Building { Name = "Tavern", Leds = 2, Way = new BuildWay { Added = [new OwnStep { Key = "own-sign", Words = "hang the sign", Minutes = 5, Test = test }] } }],
    }).ToItemList();
}
