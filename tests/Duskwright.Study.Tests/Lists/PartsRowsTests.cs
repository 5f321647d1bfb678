using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Lists;

namespace Duskwright.Study.Tests.Lists;

/// <summary>What is to be bought, beside what is there already.</summary>
public class PartsRowsTests
{
    [Fact]
    public void A_bank_that_is_not_built_yet_takes_a_holder_a_pack_a_switch_a_group_and_two_ways_a_pair()
    {
        var town = Street(BuildingState.Idea, BuildingState.Idea, BuildingState.Idea);
        Assert.Equal((2, 3, 6, 3), (Needed(town, SundryUse.Holder), Needed(town, SundryUse.Switch), Needed(town, SundryUse.Terminal), Needed(town, SundryUse.Label)));
    }

    [Fact]
    public void A_pack_and_a_switch_that_a_fixed_house_hangs_on_are_not_bought_again()
    {
        // The first house stands on switch A of pack 1: switches B and C, pack 2 and two pairs are left.
        var town = Street(BuildingState.Fixed, BuildingState.Idea, BuildingState.Fitted);
        Assert.Equal((1, 2, 4, 2), (Needed(town, SundryUse.Holder), Needed(town, SundryUse.Switch), Needed(town, SundryUse.Terminal), Needed(town, SundryUse.Label)));
    }

    [Fact]
    public void A_pack_that_the_log_speaks_of_is_not_bought_again()
    {
        var town = Street(BuildingState.Idea, BuildingState.Idea, BuildingState.Idea) with
        {
            Log = [new LogEntry { Date = new DateOnly(2026, 10, 3), Kind = LogKind.CellsChanged, Supply = "2" }],
        };
        Assert.Equal((1, 3), (Needed(town, SundryUse.Holder), Needed(town, SundryUse.Switch)));
    }

    [Fact]
    public void A_town_that_is_fixed_takes_fresh_cells_and_fuses_it_has_not_and_nothing_else()
    {
        var town = Street(BuildingState.Fixed, BuildingState.Fixed, BuildingState.Fixed);
        var rows = TownStudy.Of(town).PartsList;
        Assert.Equal([("LR6", 6.0), ("ptc-500ma", 1.0)], rows.Select(r => (IdOf(r), r.Needed)));
    }

    [Fact]
    public void Wire_is_bought_for_what_the_cut_list_says_to_cut()
    {
        var study = TownStudy.Of(Demo.Saltmarrow);
        var cut = study.CutList.Where(c => !c.Laid).GroupBy(c => c.Wire).ToDictionary(g => g.Key, g => g.Sum(c => c.Conductors * c.Length.Value), StringComparer.Ordinal);
        Assert.NotEmpty(cut);
        Assert.All(cut, c => Assert.Equal(c.Value, Assert.Single(study.PartsList, p => p.Part == c.Key).Needed, 0.051));
    }

    // Pack 1 has a fuse and switches A and B, pack 2 has none and switch C; a house on each switch.
    private static Town Street(params BuildingState[] states) => new()
    {
        Name = "Street",
        Supplies = [new Supply { Id = "1", Part = "LR6", Series = 3, Fuse = "ptc-500ma" }, new Supply { Id = "2", Part = "LR6", Series = 3 }],
        SwitchGroups = [new SwitchGroup { Id = "A", Supply = "1" }, new SwitchGroup { Id = "B", Supply = "1" }, new SwitchGroup { Id = "C", Supply = "2" }],
        Buildings = states.Select((state, i) => new Building { Name = $"House {i + 1}", Leds = 2, State = state, SwitchGroup = "ABC"[i].ToString(), PairLength = Length.FromMillimetres(500) }).ToItemList(),
    };

    private static int Needed(Town town, SundryUse use)
    {
        var name = Catalogue.Parts.Sundries.First(s => s.Use == use).Name;
        return (int)TownStudy.Of(town).PartsList.Where(r => r.Part == name).Sum(r => r.Needed);
    }

    private static string IdOf(PartsRow row) =>
        Catalogue.Parts.Supplies.FirstOrDefault(s => s.Name == row.Part)?.Id ?? Catalogue.Parts.Fuses.FirstOrDefault(f => f.Name == row.Part)?.Id ?? row.Part;
}
