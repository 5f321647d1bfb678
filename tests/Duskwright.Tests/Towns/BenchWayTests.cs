using Duskwright.Plan.Document;
using Duskwright.Study.Bench;
using Duskwright.Towns;

namespace Duskwright.Tests.Towns;

public sealed class BenchWayTests
{
    private static readonly Town Street = new() { Name = "Nowhere", Buildings = [new Building { Name = "Tavern", Leds = 2 }, new Building { Name = "Forge", Leds = 1 }] };

    [Fact]
    public void A_step_is_added_kept_under_a_name_and_done_in_another_house()
    {
        var town = Do(Street, ("what", "add"), ("words", "lay the thatch"), ("minutes", "40"), ("dry", "12,5"), ("after", "cover"), ("before", "glue-in"));
        town = Do(town, ("what", "keep"), ("name", "thatched"));
        town = Do(town, ("what", "like"), ("name", "thatched"), ("building", "forge"));
        var step = BuildSteps.All(town, town.Buildings[1]).Single(s => s.IsOwn);
        Assert.Equal(("lay the thatch", 40, 750), (step.Words, step.Minutes, step.DryMinutes));
    }

    [Fact]
    public void An_own_step_carries_a_test_with_lamps_to_count()
    {
        (string, string)[] step = [("what", "add"), ("words", "hang the sign"), ("minutes", "5"), ("after", "fit"), ("before", "close"), ("test", "pair to the test pack"), ("before-seal", "yes")];
        Assert.Equal(new OwnTest { Words = "pair to the test pack", Lit = 1, BeforeSeal = true }, Do(Street, [.. step, ("lit", "1")]).Buildings[0].Way!.Added[0].Test);
        Assert.Null(Do(Street, [.. step, ("lit", " ")]).Buildings[0].Way!.Added[0].Test!.Lit);
        Assert.Contains("is not a number of lamps", Read(Street, [.. step, ("lit", "few")]).Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_usual_step_is_said_in_other_words_and_is_usual_again()
    {
        var town = Do(Street, ("what", "change"), ("step", "paint"), ("words", "limewash the walls"), ("minutes", "25"), ("dry", "24"));
        Assert.Equal("limewash the walls", BuildSteps.All(town, town.Buildings[0]).Single(s => s.Key == "paint").Words);
        Assert.Equal(Street, Do(town, ("what", "usual")));
    }

    [Fact]
    public void A_step_is_not_moved_before_one_that_it_waits_for() =>
        Assert.Contains("cannot come before it", Read(Street, ("what", "earlier"), ("step", "tag")).Why, StringComparison.Ordinal);

    [Fact]
    public void A_seal_is_not_left_out_and_another_step_is_and_comes_back()
    {
        Assert.Contains("is not left out", Read(Street, ("what", "leave-out"), ("step", "glue-in")).Why, StringComparison.Ordinal);
        var town = Do(Street, ("what", "leave-out"), ("step", "torch"));
        Assert.DoesNotContain(BuildSteps.All(town, town.Buildings[0]), s => s.Key == "torch");
        Assert.Contains(BuildSteps.All(Do(town, ("what", "put-back"), ("step", "torch")), town.Buildings[0] with { Way = new BuildWay() }), s => s.Key == "torch");
    }

    [Theory]
    [InlineData("add", "minutes", "soon")]
    [InlineData("add", "dry", "-1")]
    [InlineData("keep", "name", " ")]
    [InlineData("dance", "step", "cut")]
    public void What_cannot_be_read_is_refused_in_a_sentence(string what, string field, string value) =>
        Assert.EndsWith(".", Read(Street, ("what", what), ("words", "lay the thatch"), ("minutes", "40"), (field, value)).Why!, StringComparison.Ordinal);

    private static Town Do(Town town, params (string Name, string Value)[] fields)
    {
        var (edit, why) = Read(town, fields);
        Assert.Null(why);
        return edit!.Apply(town);
    }

    private static (Plan.Edits.TownEdit? Edit, string? Why) Read(Town town, params (string Name, string Value)[] fields)
    {
        var all = new Dictionary<string, string> { ["building"] = "tavern" };
        foreach (var (name, value) in fields)
        {
            all[name] = value;
        }

        return BenchWay.Read(all, town);
    }
}
