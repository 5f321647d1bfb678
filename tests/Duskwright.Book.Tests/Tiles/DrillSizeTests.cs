using Duskwright.Book.Tiles;
using Duskwright.Plan.Document;
using Duskwright.Study;

namespace Duskwright.Book.Tests.Tiles;

public class DrillSizeTests
{
    // By hand, √(2 × wires) × outer diameter + 0.5 mm, up to the next half millimetre (common practice, no source): two wires of 1.1 mm fill half of
    // 2.2 mm and want 2.7 mm, a 3 mm drill; four fill half of 3.11 mm and want 3.61 mm, a 4 mm drill.
    [Theory]
    [InlineData("a", "a", 3)]
    [InlineData("a", "b", 4)]
    public void A_house_without_a_hole_of_its_own_gets_the_drill_that_passes_its_pairs(string one, string other, double millimetres)
    {
        var study = TownStudy.Of(new Town
        {
            Name = "Nowhere",
            Wiring = new WiringChoices { Wire = "strand-0.14" },
            Supplies = [new Supply { Id = "1", Part = "LR6", Series = 3 }],
            SwitchGroups = [new SwitchGroup { Id = "a", Supply = "1" }, new SwitchGroup { Id = "b", Supply = "1" }],
            Buildings = [new Building { Name = "House", Storeys = [new Storey { Rooms = [new Room { Lamps = [new Lamp { SwitchGroup = one }, new Lamp { SwitchGroup = other }] }] }] }],
        });
        Assert.Equal(millimetres, DrillSize.Of(study, study.Buildings[0]));
    }

    [Fact]
    public void A_house_without_lamps_needs_no_drill()
    {
        var study = TownStudy.Of(new Town { Name = "Nowhere", Buildings = [new Building { Name = "House", Leds = 0 }] });
        Assert.Null(DrillSize.Of(study, study.Buildings[0]));
    }
}
