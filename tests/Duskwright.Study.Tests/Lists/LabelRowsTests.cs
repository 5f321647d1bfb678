using Duskwright.Plan.Document;

namespace Duskwright.Study.Tests.Lists;

/// <summary>A pair gets its label before anybody has counted what hangs on it.</summary>
public sealed class LabelRowsTests
{
    private static readonly Town Quay = new()
    {
        Name = "Quay",
        Supplies = [new Supply { Id = "1", Part = "LR6", Series = 3 }],
        SwitchGroups = [new SwitchGroup { Id = "A", Supply = "1" }],
        Buildings =
        [
            new Building { Name = "Eel house", Leds = 4, SwitchGroup = "A" },
            new Building { Name = "Lookout", SwitchGroup = "A" },
            new Building { Name = "Rope store", Leds = 2, SwitchGroup = "A" },
            new Building { Name = "Ruin", Leds = 0, SwitchGroup = "A" },
            new Building { Name = "Salt pan" },
        ],
    };

    [Fact]
    public void A_house_nobody_has_counted_gets_a_label_with_a_line_to_write_the_number_on()
    {
        var labels = TownStudy.Of(Quay).Labels;
        Assert.Equal(["Eel house", "Lookout", "Rope store", "Salt pan"], labels.Select(l => l.Name));
        Assert.Equal(["A1", "A2", "A3", ""], labels.Select(l => l.Terminal));
        Assert.All(labels.Where(l => l.Name is "Lookout" or "Salt pan"), l => Assert.Matches("^\\? LEDs: _{6,}$", l.Detail));
    }

    [Fact]
    public void Once_it_is_counted_no_label_printed_before_is_wrong()
    {
        var counted = Quay with { Buildings = [.. Quay.Buildings.Select(b => b.Name == "Lookout" ? b with { Leds = 1 } : b)] };
        Assert.Equal(TownStudy.Of(Quay).Labels.Select(l => (l.Code, l.Terminal, l.Name)), TownStudy.Of(counted).Labels.Select(l => (l.Code, l.Terminal, l.Name)));
    }
}
