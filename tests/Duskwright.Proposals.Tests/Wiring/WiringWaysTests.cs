using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Format;
using Duskwright.Plan.Quantities;
using Duskwright.Proposals.Wiring;
using Duskwright.Study;
using Duskwright.Study.Results;

namespace Duskwright.Proposals.Tests.Wiring;

public class WiringWaysTests
{
    private static readonly Lazy<TownStudy> Harbour = new(() => TownStudy.Of(TownJson.Read(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "examples", "saltmarrow.json"))).Town!));

    private static WiringWays Ways => Computed.Value;

    private static readonly Lazy<WiringWays> Computed = new(() => WiringWays.Of(Harbour.Value).Ways!);

    [Fact]
    public void Sharing_copper_saves_wire_and_puts_more_lamps_on_one_joint()
    {
        Assert.True(Ways.Trunks.WireMetres < Ways.OwnPairs.WireMetres);
        Assert.True(Ways.Chains.WireMetres < Ways.OwnPairs.WireMetres);
        Assert.True(Ways.OwnPairs.WorstBreak!.Darkened < Ways.Trunks.WorstBreak!.Darkened);
        Assert.True(Ways.OwnPairs.WorstBreak!.Darkened < Ways.Chains.WorstBreak!.Darkened);
    }

    [Fact]
    public void Every_way_lights_every_lamp_and_cuts_what_its_sizes_add_up_to() => Assert.All(Ways.All, way =>
    {
        Assert.Equal(Harbour.Value.Lamps.Count(l => l.Supply is not null), way.Groups.Sum(g => g.Lamps));
        Assert.Equal(way.WireMetres, way.BySize.Sum(s => s.Metres), 9);
        Assert.All(way.Groups, g => Assert.InRange(g.Gap, -1e-9, 1));
    });

    // An electrician's rule: equal loads at equal steps along a line lose i·r·(n + (n−1) + … + 1), n(n+1)/2 steps of one load. Kirchhoff; common practice, no source.
    [Fact]
    public void Equal_houses_at_equal_steps_on_one_pair_lose_what_the_rule_for_a_tapped_line_says()
    {
        var town = Row(4);
        var study = TownStudy.Of(town);
        var ohms = 2 * 0.5488 * 1.0;
        var chain = new SwitchFeed("A", Enumerable.Range(0, 4).Select(i => new FeedPair(i, i + 1, 1.0, "cu-0.20")).ToItemList(), Enumerable.Range(1, 4).Select(i => new FeedHouse($"h{i}", i)).ToItemList());
        var fed = study.FedBy([chain]);
        var amps = study.Buildings.Average(b => b.Current!.Value);

        // Lamps behind 1 kΩ take the same current to within two in a hundred over so small a drop.
        Assert.Equal(amps * ohms * 10, fed[3].DropVolts, amps * ohms * 10 * 0.02);
        Assert.Equal(fed.Select(f => f.DropVolts).Order(), fed.Select(f => f.DropVolts));
    }

    [Fact]
    public void A_pair_to_each_house_loses_what_the_study_says_of_it()
    {
        var study = TownStudy.Of(Row(4));
        var own = new SwitchFeed(
            "A",
            study.Buildings.Select((b, i) => new FeedPair(0, i + 1, b.PairLength.Value, b.Wire.Id)).ToItemList(),
            study.Buildings.Select((b, i) => new FeedHouse(b.Building.Key, i + 1)).ToItemList());
        Assert.All(study.FedBy([own]).Zip(study.Buildings), x => Assert.Equal(x.Second.PairDrop!.Value, x.First.DropVolts, 6));
    }

    [Fact]
    public void A_pair_that_is_laid_is_the_same_in_every_way()
    {
        var town = Harbour.Value.Town;
        var laid = RouteProposal.Of(town).Edit.Routes.First(r => town.Buildings.Any(b => b.Key == r.Building && b.State != BuildingState.Fixed)) with { Laid = true, Length = Length.FromMillimetres(1234) };
        var ways = WiringWays.Of(TownStudy.Of(town with { Routes = [laid] }), TestContext.Current.CancellationToken).Ways!;
        Assert.All(ways.All, way =>
        {
            var tree = way.Groups.Single(g => g.Tree.Ends.Any(e => e.Building == laid.Building)).Tree;
            var piece = tree.Pieces.Single(p => p.To == tree.Ends.Single(e => e.Building == laid.Building).Junction);
            Assert.Equal(0, piece.From);
            Assert.Equal(1.234, piece.Metres, 9);
        });
    }

    [Fact]
    public void Who_minds_broken_joints_is_given_no_less_wire_and_fewer_lamps_on_one_joint()
    {
        Assert.True(Ways.Advised(0).Sum(a => a.Wiring.WireMetres) <= Ways.Advised(1).Sum(a => a.Wiring.WireMetres) + 1e-9);
        Assert.True(Ways.Advised(1).Sum(a => a.Wiring.Darkened) < Ways.Advised(0).Sum(a => a.Wiring.Darkened));
        Assert.All(Ways.Advised(0.5), a => Assert.Contains("joints are out of reach", a.Reason, StringComparison.Ordinal));
    }

    [Fact]
    public void A_town_without_a_board_says_what_is_missing() =>
        Assert.StartsWith("The town has no board", WiringWays.Of(TownStudy.Of(Row(2)), TestContext.Current.CancellationToken).Why, StringComparison.Ordinal);

    // By hand for six pairs of 0.23 mm: twelve wires fill half a hole of √(2 × 12) × 0.23 = 1.13 mm; half a millimetre to slide and the next half up is 2 mm. A joint of 2.2 mm wants 3.2, so 3.5.
    [Fact]
    public void Six_thin_pairs_go_through_a_hole_of_two_millimetres_and_a_joint_wants_more()
    {
        var wire = Plan.Parts.Catalogue.Parts.Wires.Single(w => w.Id == "cu-0.20");
        Assert.Equal(2, HoleDrill.Millimetres(Enumerable.Repeat(wire, 6)));
        Assert.Equal(3.5, HoleDrill.Millimetres(Enumerable.Repeat(wire, 6), 2.2));
        Assert.Equal(0, HoleDrill.Millimetres([]));
    }

    private static Town Row(int houses) => new()
    {
        Name = "Row",
        Buildings = Enumerable.Range(1, houses).Select(i => new Building { Name = $"H{i}", Leds = 1, SwitchGroup = "A", Resistor = ResistorChoice.Of(Resistance.FromOhms(1000)), Distance = Length.FromMillimetres(300 * i) }).ToItemList(),
        Supplies = [new Supply { Id = "1", Part = "LR6", Series = 3 }],
        SwitchGroups = [new SwitchGroup { Id = "A", Supply = "1" }],
    };
}
