using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Mending;

namespace Duskwright.Study.Tests.Bench;

/// <summary>Tests that the maker adds. How many of how many lamps light: counted by hand.</summary>
public class OwnTestTests
{
    [Theory]
    [InlineData(1, 1, true)]
    [InlineData(1, 0, false)]
    [InlineData(1, 2, false)]
    [InlineData(0, 0, true)]
    [InlineData(0, 1, false)]
    [InlineData(null, 3, true)]
    [InlineData(null, 2, false)]
    public void A_test_of_the_makers_own_is_passed_when_as_many_lamps_light_as_must(int? must, int lit, bool passed) =>
        Assert.Equal(passed, Study(must).Judge("tavern", "own-sign-test", new TestOutcome(new Dictionary<string, Seen>(), lit))!.Passed);

    [Fact]
    public void Lamps_are_looked_at_one_by_one_unless_only_some_must_light()
    {
        int Looked(int? must) => Study(must).Buildings[0].Tests.Single(t => t.IsOwn).Lamps.Count;
        Assert.Equal((3, 3, 3, 0), (Looked(null), Looked(3), Looked(0), Looked(2)));
    }

    [Fact]
    public void A_lamp_that_is_dark_in_the_makers_own_test_has_causes()
    {
        var looks = new Dictionary<string, Seen> { ["L1"] = Seen.Lit, ["L2"] = Seen.Dark, ["L3"] = Seen.Lit };
        var verdict = Study(null).Judge("tavern", "own-sign-test", new TestOutcome(looks))!;
        Assert.Equal("L2 is dark.", verdict.Words);
        Assert.Contains("L2", verdict.Causes[0].Words[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Where_nothing_should_light_the_maker_is_told_to_look_for_what_feeds_it()
    {
        var verdict = Study(0).Judge("tavern", "own-sign-test", new TestOutcome(new Dictionary<string, Seen> { ["L1"] = Seen.Lit }))!;
        Assert.Equal("L1 lights though nothing should.", verdict.Words);
        Assert.StartsWith("Look for what still feeds them", verdict.LookFirst, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1, "Begin where")]
    [InlineData(3, "Look for what still feeds them")]
    public void Too_few_and_too_many_lamps_are_looked_for_in_different_places(int lit, string first) =>
        Assert.StartsWith(first, Study(2).Judge("tavern", "own-sign-test", new TestOutcome(new Dictionary<string, Seen>(), lit))!.LookFirst, StringComparison.Ordinal);

    [Fact]
    public void The_roof_waits_for_the_makers_own_test_until_it_is_passed()
    {
        var failed = new LogEntry { Date = new DateOnly(2026, 3, 1), Kind = LogKind.Test, Building = "tavern", Test = "own-sign-test", Passed = false };
        Assert.Contains("own-sign-test", Study(1, failed).Work("tavern")!.TestsInTheWay("close"));
        Assert.DoesNotContain("own-sign-test", Study(1, failed with { Passed = true }).Work("tavern")!.TestsInTheWay("close"));
    }

    private static TownStudy Study(int? must, params LogEntry[] log) => TownStudy.Of(new Town
    {
        Name = "Nowhere",
        Supplies = [new Supply { Id = "pack", Part = "LR6", Series = 3 }],
        SwitchGroups = [new SwitchGroup { Id = "s", Supply = "pack" }],
        Buildings =
        [
            new Building
            {
                Name = "Tavern",
                Leds = 3,
                SwitchGroup = "s",
                PairLength = Length.FromMetres(1),
                Way = new BuildWay { Added = [new OwnStep { Key = "own-sign", Words = "hang the sign", Minutes = 5, After = "fit", Before = "close", Test = new OwnTest { Words = "pair to the test pack", Lit = must, BeforeSeal = true } }] },
            },
        ],
        Log = log.ToItemList(),
    });
}
