namespace Duskwright.Study.Tests;

public class UnlikeColoursTests
{
    private static readonly TownStudy Saltmarrow = TownStudy.Of(Demo.Saltmarrow);

    [Fact]
    public void Houses_lit_by_one_kind_of_lamp_through_one_kind_of_pane_are_not_told_of()
    {
        var alike = Saltmarrow.Buildings
            .Where(b => b.Lamps.Select(l => l.Part).Distinct().Count() == 1)
            .Where(b => b.Building.Storeys.SelectMany(s => s.Rooms).SelectMany(r => r.Windows).Select(w => w.Pane?.Tint).Distinct().Count() <= 1)
            .Select(b => b.Building.Key)
            .ToHashSet();
        Assert.NotEmpty(alike);
        Assert.DoesNotContain(Saltmarrow.UnlikeColours, c => alike.Contains(c.One.Building));
    }

    [Fact]
    public void A_house_with_a_fire_beside_white_lamps_is_told_of_the_most_unlike_first()
    {
        Assert.NotEmpty(Saltmarrow.UnlikeColours);
        Assert.All(Saltmarrow.UnlikeColours, c => Assert.Equal(c.One.Building, c.Other.Building));
        Assert.Equal(Saltmarrow.UnlikeColours.Select(c => c.Difference.Value).OrderDescending(), Saltmarrow.UnlikeColours.Select(c => c.Difference.Value));
    }
}
