using Duskwright.Plan.Document;

namespace Duskwright.Study.Tests.Results;

/// <summary>By its name a lamp is found in its house: in a test, in the log, on a drawing.</summary>
public class LampNamesTests
{
    [Fact]
    public void Two_lamps_of_one_name_on_two_switches_are_two_lamps()
    {
        var study = TownStudy.Of(Inn(new Lamp { Name = "hall", SwitchGroup = "A" }, new Lamp { Name = "hall" }, new Lamp { Name = "hall", SwitchGroup = "A" }));
        Assert.Equal(["hall", "hall 2", "hall 3"], study.Lamps.Select(l => l.Name));
        Assert.Equal([true, false, true], study.Lamps.Select(l => l.Current is not null));
    }

    [Fact]
    public void A_lamp_without_a_name_never_takes_one_that_the_maker_gave() =>
        Assert.Equal(["L2", "L3", "L4"], TownStudy.Of(Inn(new Lamp { Name = "L2" }, new Lamp(), new Lamp { Name = "L4" })).Lamps.Select(l => l.Name));

    private static Town Inn(params Lamp[] lamps) => new()
    {
        Name = "Umber",
        Supplies = [new Supply { Id = "1", Part = "LR6", Series = 3 }],
        SwitchGroups = [new SwitchGroup { Id = "A", Supply = "1" }],
        Buildings = [new Building { Name = "Inn", Storeys = [new Storey { Rooms = [new Room { Lamps = [.. lamps] }] }] }],
    };
}
