using Duskwright.Plan.Format;

namespace Duskwright.Plan.Tests.Format;

public class UpgradeLosesNothingTests
{
    [Fact]
    public void Hours_told_in_the_old_place_and_in_the_new_are_both_named_and_neither_is_dropped()
    {
        var problem = Assert.Single(Read("\"hours\": 6, \"show\": { \"hours_per_day_h\": 7 }").Problems);
        Assert.Equal(("hours", "unknown-field"), (problem.Path, problem.Rule));
    }

    [Fact]
    public void A_show_of_the_wrong_kind_is_named_and_not_replaced() =>
        Assert.Contains(Read("\"hours\": 6, \"show\": []").Problems, p => (p.Path, p.Rule) == ("show", "wrong-value"));

    [Fact]
    public void Hours_join_what_the_show_already_says()
    {
        var show = Read("\"hours\": 6, \"show\": { \"days\": 3 }").Town!.Show;
        Assert.Equal((6.0, 3), (show.HoursPerDay.Hours, show.Days));
    }

    private static TownReadResult Read(string fields) =>
        TownJson.Read("{ \"format\": \"duskwright-town\", \"version\": 0, \"name\": \"X\", " + fields + " }");
}
