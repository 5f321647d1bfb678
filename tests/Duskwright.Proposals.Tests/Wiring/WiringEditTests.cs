using Duskwright.Plan;
using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Plan.Format;
using Duskwright.Proposals.Wiring;
using Duskwright.Study;

namespace Duskwright.Proposals.Tests.Wiring;

public class WiringEditTests
{
    private static readonly Lazy<TownStudy> Harbour = new(() => TownStudy.Of(TownJson.Read(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "examples", "saltmarrow.json"))).Town!));

    private static readonly Lazy<WiringWays> Computed = new(() => WiringWays.Of(Harbour.Value).Ways!);

    private static GroupWiring Trunk => Computed.Value.Trunks.Groups.First(g => g.Tree.Pieces.Any(p => p.From != 0));

    private static GroupWiring Chain => Computed.Value.Chains.Groups.First(g => g.Tree.Pieces.Any(p => p.From != 0));

    private static readonly Lazy<Town> WithTrunk = new(() => Computed.Value.Taking(Harbour.Value, Trunk).Edit.Apply(Harbour.Value.Town));

    private static readonly Lazy<WiringWays> Again = new(() => WiringWays.Of(TownStudy.Of(WithTrunk.Value)).Ways!);

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void A_town_wired_one_way_is_sound_cuts_its_wire_and_is_solved_to_the_drops_that_were_shown(int way)
    {
        var groups = Computed.Value.All[way].Groups;
        var town = groups.Aggregate(Harbour.Value.Town, (t, g) => Computed.Value.Taking(Harbour.Value, g).Edit.Apply(t));
        Assert.Empty(TownChecks.Of(town));
        Assert.Equal(town, TownJson.Read(TownJson.Write(town)).Town);
        Assert.Equal(town.Taps.Count, town.Taps.Select(t => t.Id).Distinct().Count());
        var study = TownStudy.Of(town);
        foreach (var group in groups)
        {
            // Lengths of the document are whole millimetres: each pair on the way is out by half of one at most, on both conductors, at no more than the whole current of the switch.
            var there = study.Buildings.Where(b => group.Tree.Ends.Any(e => e.Building == b.Building.Key)).ToList();
            var rounding = 2 * 0.0005 * group.Tree.Pieces.Length * group.WireOf.Max(w => w.PerMetre.Ohms) * there.Sum(b => b.Current!.Value);
            Assert.Equal(group.WorstDropVolts, there.Max(b => b.PairDrop!.Value), rounding);
        }

        var pairs = study.CutList.Where(c => c.For.Contains("pair", StringComparison.Ordinal)).ToList();
        Assert.Equal(groups.Sum(g => g.Tree.Pieces.Length), pairs.Count);
        Assert.Equal(groups.Sum(g => g.WireMetres), pairs.Sum(p => p.Conductors * p.Length.Value), 0.002 * pairs.Count);
        Assert.Equal(study.Buildings.Count(b => b.Lamps.Count > 0), pairs.Count(c => c.For.StartsWith("pair,", StringComparison.Ordinal)));
    }

    [Fact]
    public void Taking_a_way_twice_changes_nothing_the_second_time()
    {
        var first = Computed.Value.Taking(Harbour.Value, Trunk);
        Assert.Contains("by a shared trunk with taps, not by a pair of its own to each house", first.Changes[0], StringComparison.Ordinal);
        var study = TownStudy.Of(WithTrunk.Value);
        var same = Again.Value.Taking(study, Again.Value.Trunks.Groups.First(g => g.SwitchGroup == Trunk.SwitchGroup));
        Assert.Equal(study.Town.Taps.Select(t => t.Id), same.Edit.Apply(study.Town).Taps.Select(t => t.Id));
        Assert.Equal("Nothing changes: the switch is wired so already.", Assert.Single(same.Changes));
    }

    [Fact]
    public void Going_back_to_own_pairs_leaves_no_tap_behind()
    {
        var town = WithTrunk.Value;
        Assert.NotEmpty(town.Taps);
        var back = Again.Value.Taking(TownStudy.Of(town), Again.Value.OwnPairs.Groups.First(g => g.SwitchGroup == Trunk.SwitchGroup)).Edit.Apply(town);
        Assert.Empty(back.Taps);
        Assert.All(back.Routes, r => Assert.Null(r.From));
    }

    [Fact]
    public void A_trunk_that_is_laid_stays_when_its_switch_is_wired_anew()
    {
        var town = WithTrunk.Value;
        var last = town.Routes.First(r => r.From is not null && town.Taps.Any(t => t.Id == r.From));
        town = town with { Routes = town.Routes.Select(r => r == last ? r with { Laid = true } : r).ToItemList() };
        var study = TownStudy.Of(town);
        var ways = WiringWays.Of(study, TestContext.Current.CancellationToken).Ways!;
        var back = ways.Taking(study, ways.OwnPairs.Groups.First(g => g.SwitchGroup == Trunk.SwitchGroup)).Edit.Apply(town);
        Assert.Empty(TownChecks.Of(back));
        Assert.Contains(back.Routes, r => r == last with { Laid = true });
        Assert.Contains(back.Taps, t => t.Id == last.From);
    }

    [Fact]
    public void A_shared_pair_is_laid_and_tested_before_the_first_house_that_hangs_on_it()
    {
        var town = WithTrunk.Value;
        var laying = TownStudy.Of(town).Laying;
        var at = laying.Rows.Select((r, i) => (r.Building, i)).GroupBy(x => x.Building).ToDictionary(g => g.Key, g => g.First().i);
        Assert.All(town.Routes.Where(r => r.From is not null && town.Taps.Any(t => t.Id == r.From) && at.ContainsKey(r.Building)), r => Assert.True(at[r.From!] < at[r.Building]));
        Assert.All(town.Taps.Where(t => t.From is not null), t => Assert.True(at[t.From!] < at[t.Id]));
        Assert.Contains(laying.Notes, n => n.Contains("joints of shared pairs", StringComparison.Ordinal));
    }

    [Fact]
    public void A_house_moved_to_another_switch_leaves_the_trunk()
    {
        var town = WithTrunk.Value;
        var house = town.Buildings.First(b => town.Routes.Any(r => r.Building == b.Key && r.From is not null));
        var other = town.SwitchGroups.First(g => g.Id != house.SwitchGroup);
        var moved = new Plan.Edits.ChangeBuildings([house with { SwitchGroup = other.Id }], "move").Apply(town);
        Assert.Empty(TownChecks.Of(moved));
        Assert.DoesNotContain(moved.Routes, r => r.Building == house.Key);
    }

    [Fact]
    public void A_break_in_a_shared_pair_is_among_the_faults_and_darkens_all_beyond_it()
    {
        var town = Computed.Value.Taking(Harbour.Value, Chain).Edit.Apply(Harbour.Value.Town);
        var study = TownStudy.Of(town);
        var supply = town.SwitchGroups.First(g => g.Id == Chain.SwitchGroup).Supply!;
        var first = town.Buildings.First(b => b.Key == town.Routes.Select(r => r.From).OfType<string>().First(f => town.Routes.Any(r => r.Building == f && r.From is null)));
        var open = study.Faults(supply).Single(f => f.Words.Contains($"a joint of the shared pair to {first.Name} is open"));
        Assert.Equal(Chain.Tree.Ends.Length - Chain.Tree.Ends.Count(e => town.Buildings.First(b => b.Key == e.Building).State == BuildingState.Fixed), open.Dark.Count);
    }
}
