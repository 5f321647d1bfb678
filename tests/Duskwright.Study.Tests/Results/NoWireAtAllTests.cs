using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;

namespace Duskwright.Study.Tests.Results;

/// <summary>A house that stands on the bank, its joints said to have no resistance.</summary>
public class NoWireAtAllTests
{
    [Fact]
    public void A_pair_without_any_resistance_loses_nothing() =>
        Assert.Equal(AtTheBank(1e-6).Lamps[0].Current!.Value, AtTheBank(0).Lamps[0].Current!.Value, 1e-9);

    private static TownStudy AtTheBank(double jointOhms) => TownStudy.Of(new Town
    {
        Name = "Umber",
        Board = new Board { Width = Length.FromMillimetres(300), Depth = Length.FromMillimetres(200), Bank = new Bank { At = Point.At(100, 100) } },
        Supplies = [new Supply { Id = "1", Part = "LR6", Series = 3 }],
        SwitchGroups = [new SwitchGroup { Id = "A", Supply = "1" }],
        Wiring = new WiringChoices { JointResistance = Resistance.FromOhms(jointOhms), Slack = default(Length) },
        Buildings = [new Building { Name = "Inn", Leds = 2, SwitchGroup = "A", Place = new Placement { At = Point.At(100, 100) } }],
    });
}
