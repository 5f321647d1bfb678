using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;

namespace Duskwright.Plan.Tests.Edits;

/// <summary>Packs, switches and scenes set out by hand.</summary>
public class ArrangeBankTests
{
    private static readonly Town Quay = new()
    {
        Name = "Quay",
        Supplies = [new Supply { Id = "1", Part = "LR6", Series = 3 }],
        SwitchGroups = [new SwitchGroup { Id = "A", Supply = "1" }, new SwitchGroup { Id = "B", Supply = "1" }],
        Scenes = [new Scene { Name = "evening", On = ["A", "B"] }],
        Buildings = [new Building { Name = "Mill", Leds = 2, SwitchGroup = "A" }],
    };

    [Fact]
    public void A_switch_on_which_nothing_hangs_goes_and_leaves_its_scenes()
    {
        var edit = new ArrangeBank(Quay.Supplies, [Quay.SwitchGroups[0]], [new Scene { Name = "evening", On = ["A"] }], "A switch less: B");
        Assert.Empty(edit.Problems(Quay));
        Assert.Empty(TownChecks.Of(edit.Apply(Quay)));
    }

    [Fact]
    public void A_switch_on_which_a_house_hangs_stays_and_the_house_is_named()
    {
        var problem = Assert.Single(new ArrangeBank(Quay.Supplies, [Quay.SwitchGroups[1]], [], "A switch less: A").Problems(Quay));
        Assert.Equal(("Mill hangs on switch A.", "Hang them on another switch first."), (problem.Message, problem.Remedy));
    }

    [Fact]
    public void A_switch_whose_pack_is_gone_takes_from_none_or_is_refused()
    {
        var bare = new ArrangeBank([], Quay.SwitchGroups.Select(g => g with { Supply = null }).ToItemList(), Quay.Scenes, "A pack less: 1");
        Assert.Empty(TownChecks.Of(bare.Apply(Quay)));
        Assert.NotEmpty(TownChecks.Of(new ArrangeBank([], Quay.SwitchGroups, Quay.Scenes, "A pack less: 1").Apply(Quay)));
    }

    // Nothing is refused but mains: the same pack may feed a house from another switch, and a scene may light one switch.
    [Fact]
    public void A_second_pack_takes_over_a_switch_and_a_scene_of_its_own_is_sound()
    {
        var edited = new ArrangeBank(
            Quay.Supplies.Add(new Supply { Id = "2", Part = "LR6", Series = 3 }),
            [Quay.SwitchGroups[0] with { Supply = "2", Name = "mill" }, Quay.SwitchGroups[1]],
            Quay.Scenes.Add(new Scene { Name = "late", On = ["A"] }),
            "Set out").Apply(Quay);
        Assert.Empty(TownChecks.Of(edited));
        Assert.Equal("2", edited.SwitchGroups[0].Supply);
    }
}
