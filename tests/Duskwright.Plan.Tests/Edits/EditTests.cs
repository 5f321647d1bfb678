using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Tests.Edits;

public class EditTests
{
    private static readonly Town Quay = new()
    {
        Name = "Quay",
        Buildings = [new Building { Name = "Chandlery", Leds = 4, SwitchGroup = "A" }, new Building { Name = "Lookout", Leds = 1, SwitchGroup = "A" }],
        Supplies = [new Supply { Id = "1", Part = "LR03", Series = 3 }, new Supply { Id = "2", Part = "LR6", Series = 3 }],
        SwitchGroups = [new SwitchGroup { Id = "A", Supply = "1" }],
        Routes = [Way("chandlery", 500, laid: true), Way("lookout", 800)],
    };

    [Fact]
    public void A_route_that_is_laid_stays_as_it_is()
    {
        var after = new AcceptRoutes([Way("chandlery", 450), Way("lookout", 700)]).Apply(Quay);
        Assert.Equal([500, 700], after.Routes.Select(r => r.Length.Millimetres));
        Assert.True(after.Routes[0].Laid);
    }

    [Fact]
    public void A_sharing_moves_only_the_buildings_it_names()
    {
        var after = new AcceptSharing(Quay.Supplies, [new SwitchGroup { Id = "A", Supply = "1" }, new SwitchGroup { Id = "B", Supply = "2" }], [new BuildingOnGroup("lookout", "B")]).Apply(Quay);
        Assert.Equal(["A", "B"], after.Buildings.Select(b => b.SwitchGroup));
        Assert.Equal(2, after.SwitchGroups.Count);
    }

    [Fact]
    public void Another_pack_takes_the_place_of_the_one_of_its_id()
    {
        var after = new ReplaceSupply(new Supply { Id = "1", Part = "LR6", Series = 3 }, "Fit three AA in its place").Apply(Quay);
        Assert.Equal(["LR6", "LR6"], after.Supplies.Select(s => s.Part));
        Assert.Equal(["1", "2"], after.Supplies.Select(s => s.Id));
    }

    [Fact]
    public void A_building_said_anew_replaces_the_one_of_its_name()
    {
        var after = new ChangeBuildings([Quay.Buildings[0] with { Resistor = ResistorChoice.Of(Resistance.FromOhms(820)) }], "Fit 820 Ω").Apply(Quay);
        Assert.Equal(820, after.Buildings[0].Resistor!.Value!.Value.Ohms);
        Assert.Null(after.Buildings[1].Resistor);
    }

    [Fact]
    public void An_edit_leaves_the_town_before_it_as_it_was()
    {
        var before = Quay with { };
        new ReplaceSupply(new Supply { Id = "1", Part = "LR6" }, "Fit another").Apply(Quay);
        Assert.Equal(before, Quay);
        Assert.Equal("LR03", Quay.Supplies[0].Part);
    }

    private static Route Way(string building, double millimetres, bool laid = false) =>
        new() { Building = building, Points = [], Length = Length.FromMillimetres(millimetres), Laid = laid };
}
