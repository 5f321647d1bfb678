using Duskwright.Plan.Document;

namespace Duskwright.Plan.Tests.Examples;

public class TavernTests
{
    [Fact]
    public void The_tavern_is_two_flickering_lamps_straight_on_two_cells()
    {
        var town = Example.Town("tavern.json");
        var tavern = Assert.Single(town.Buildings);
        Assert.Equal(["downstairs", "upstairs"], tavern.DescribedLamps().Select(l => l.Storey.Name));
        Assert.Equal("flicker-3mm-yellow", tavern.Led);
        Assert.True(tavern.Resistor!.IsNone);
        Assert.Equal(new Supply { Id = "1", Name = "the pack", Part = "LR6", Series = 2 }, Assert.Single(town.Supplies));
    }
}
