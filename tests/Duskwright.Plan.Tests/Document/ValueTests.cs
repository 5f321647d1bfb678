using Duskwright.Plan.Document;

namespace Duskwright.Plan.Tests.Document;

public class ValueTests
{
    [Theory]
    [InlineData("The Drowned Bell", "the-drowned-bell")]
    [InlineData("Pilot's house", "pilots-house")]
    [InlineData("Sexton’s", "sextons")]
    [InlineData("Möwe & Söhne, No. 7", "möwe-söhne-no-7")]
    [InlineData("  Écluse  ", "écluse")]
    [InlineData("北 house", "北-house")]
    [InlineData("…", "")]
    public void A_name_has_a_plain_form(string name, string plain) => Assert.Equal(plain, Slug.Of(name));

    [Fact]
    public void A_plain_form_is_its_own_plain_form() =>
        Gen.String.Sample(name => Assert.Equal(Slug.Of(name), Slug.Of(Slug.Of(name))));

    [Fact]
    public void Lists_are_equal_when_their_items_are()
    {
        ItemList<string> one = ["a", "b"];
        ItemList<string> same = ["a", "b"];
        ItemList<string> turned = ["b", "a"];
        Assert.True(one.Equals(same));
        Assert.Equal(one.GetHashCode(), same.GetHashCode());
        Assert.False(one.Equals(turned));
        Assert.False(one.Equals(null));
    }

    [Fact]
    public void A_list_grown_leaves_the_old_one_as_it_was()
    {
        ItemList<int> one = [1];
        var two = one.Add(2);
        Assert.Single(one);
        Assert.Equal([1, 2], two);
    }

    [Fact]
    public void Towns_said_alike_are_equal() =>
        RandomTowns.Sound.Sample(
            town =>
            {
                var again = town with { Buildings = town.Buildings.Select(b => b with { }).ToItemList() };
                Assert.Equal(town, again);
                Assert.Equal(town.GetHashCode(), again.GetHashCode());
            },
            iter: 50);
}
