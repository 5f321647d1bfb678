using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Lists;

namespace Duskwright.Study.Tests.Lists;

/// <summary>Leads to cut, the reels they come from, their joints and their ends.</summary>
public class LeadsTests
{
    private static readonly Lazy<TownStudy> Saltmarrow = new(() => TownStudy.Of(Demo.Saltmarrow));

    [Fact]
    public void Both_conductors_of_every_lead_still_to_be_cut_come_from_a_reel_once()
    {
        var study = Saltmarrow.Value;
        var cuts = study.ReelCuts.SelectMany(w => w.Reels).SelectMany(r => r.Cuts).ToList();
        var due = study.CutList.Where(c => !c.Laid).ToList();
        Assert.NotEmpty(due);
        Assert.All(due, row =>
        {
            var of = cuts.Where(c => ReferenceEquals(c.Row, row) || c.Row == row).Select(c => c.Conductors).Order().ToList();
            Assert.True(of is [CutConductors.Both] or [CutConductors.Plus, CutConductors.Minus], row.Label);
        });
        Assert.DoesNotContain(cuts, c => c.Row.Laid);
        Assert.All(study.ReelCuts.SelectMany(w => w.Reels), r => Assert.True(r.LeftMillimetres >= 0));
        Assert.All(study.ReelCuts, w => Assert.Equal(
            w.Reels.Sum(r => r.Millimetres - r.LeftMillimetres), due.Where(c => c.WireId == w.Wire.Id).Sum(c => c.Conductors * c.CutMillimetres)));
    }

    // By hand: pairs of 0.5 m for three houses of two lamps are 3 m of the usual wire; the reels of 1.2 m and 2.0 m on hand hold two and four conductors, so nothing is bought and 3.2 m are begun.
    [Fact]
    public void Leads_are_cut_from_the_reels_on_hand_before_a_new_one_is_bought()
    {
        var study = TownStudy.Of(Street() with { Reels = [Reel(1200), Reel(2000), Reel(5000)] });
        var pairs = Assert.Single(study.ReelCuts, w => w.Wire.Id == "cu-0.20");
        Assert.Equal([1200, 2000], pairs.Reels.Select(r => r.Millimetres).Order());
        Assert.Equal("The reels on hand are enough; of those on hand 3.2 m are begun, and no less will do; 0.2 m is left over.", pairs.Words);
        Assert.Contains("One new reel of 25 m, and no fewer will do", Assert.Single(TownStudy.Of(Street()).ReelCuts, w => w.Wire.Id == "cu-0.20").Words, StringComparison.Ordinal);
    }

    // By hand: both conductors of 0.5 m come from one reel wherever a reel holds a whole metre.
    [Fact]
    public void Plus_and_minus_come_from_one_reel_where_that_takes_no_more() =>
        Assert.All(TownStudy.Of(Street() with { Reels = [Reel(1200), Reel(2000)] }).ReelCuts.SelectMany(w => w.Reels).SelectMany(r => r.Cuts), c => Assert.Equal(CutConductors.Both, c.Conductors));

    // By hand, mm: 30 from the house to its hole and 0.8 to the rib are level; 250 along a rib that climbs 100 in 460 are 304.35; with a slack of 120 the pair is 455.15.
    [Fact]
    public void What_leads_beside_a_climbing_wireway_does_not_climb_with_it()
    {
        var town = Street();
        var house = town.Buildings[0] with { PairLength = null, FeedHole = "h", Place = new Placement { At = Point.At(250.8, 340), Width = Length.FromMillimetres(60), Depth = Length.FromMillimetres(60) } };
        var study = TownStudy.Of(town with
        {
            Board = new Board
            {
                Width = Length.FromMillimetres(700),
                Depth = Length.FromMillimetres(600),
                Bank = new Bank { At = Point.At(250, 60) },
                Wireways = [new Wireway { Id = "rib", Points = [Point.At(250, 60), Point.At(250, 520)], Climb = Length.FromMillimetres(100) }],
                FeedHoles = [new FeedHole { Id = "h", At = Point.At(250.8, 310) }],
            },
            Buildings = [house, .. town.Buildings.Skip(1)],
            Routes = [new Route { Building = house.Key, Points = [Point.At(250.8, 340), Point.At(250.8, 310), Point.At(250, 310), Point.At(250, 60)], Wireways = ["rib"], Length = Length.FromMillimetres(455.15) }],
        });
        Assert.Equal(0.120, Assert.Single(study.CutList, c => c.To == house.Name && c.For.StartsWith("pair", StringComparison.Ordinal)).SlackMetres!.Value, 0.0001);
    }

    [Fact]
    public void A_lead_longer_than_a_reel_is_told_with_what_to_do()
    {
        var town = Street();
        var far = town with { Buildings = town.Buildings.Select((b, i) => i == 0 ? b with { PairLength = Length.FromMillimetres(26_000) } : b).ToItemList() };
        var said = Assert.Single(Assert.Single(TownStudy.Of(far).ReelCuts, w => w.Wire.Id == "cu-0.20").TooLong);
        Assert.Contains("26 m in one piece is more than any reel holds: buy it by the metre", said, StringComparison.Ordinal);
    }

    // By hand: in each house the pair meets two lamps on plus and minus (2 joints of 3 wires), and each lamp has one joint before it, at its resistor, and one after.
    [Fact]
    public void Joints_are_counted_where_a_pair_arrives_and_at_every_lamp()
    {
        var study = TownStudy.Of(Street());
        Assert.Equal(3 * (2 + 4), study.Joints.Sum(j => j.Joints));
        Assert.Equal([(2, 3), (4, 2)], study.Joints.Where(j => j.Place == "House 1").Select(j => (j.Joints, j.Wires)));
        Assert.All(study.Joints, j => Assert.True(j.OutOfReach));
    }

    // By hand: a fitted house whose pair is still to come has its two joints there left, a glued one none.
    [Theory]
    [InlineData(BuildingState.Fitted, 2)]
    [InlineData(BuildingState.Fixed, 0)]
    public void What_is_joined_already_is_not_joined_again(BuildingState state, int left)
    {
        var town = Street();
        var study = TownStudy.Of(town with { Buildings = town.Buildings.Select((b, i) => i == 0 ? b with { State = state } : b).ToItemList() });
        Assert.Equal(left, study.Joints.Where(j => j.Place == "House 1").Sum(j => j.Joints));
    }

    // By hand: where two pairs go on from a tap, three conductors meet in each of its two joints.
    [Fact]
    public void A_tap_is_two_joints_of_as_many_wires_as_meet_there()
    {
        var town = Street();
        var tapped = town with
        {
            Taps = [new Tap { Id = "TA1", SwitchGroup = "A", Length = Length.FromMillimetres(400) }],
            Routes = town.Buildings.Take(2).Select(b => new Route { Building = b.Key, From = "TA1", Points = [Point.At(0, 0), Point.At(1, 0)], Length = Length.FromMillimetres(200) }).ToItemList(),
        };
        var tap = Assert.Single(TownStudy.Of(tapped).Joints, j => j.Place == "tap TA1");
        Assert.Equal((2, 3, true), (tap.Joints, tap.Wires, tap.OutOfReach));
        Assert.Contains(TownStudy.Of(tapped).CutList, c => c.From == "tap TA1" && c.To == "House 1");
    }

    [Fact]
    public void Every_conductor_has_two_ends_to_bare_and_those_at_the_bank_go_under_a_screw()
    {
        var study = Saltmarrow.Value;
        var due = study.CutList.Where(c => !c.Laid).ToList();
        Assert.Equal(2 * due.Sum(c => c.Conductors), study.Ends.Sum(e => e.Ends));
        Assert.Equal(due.Where(c => c.For.StartsWith("pair", StringComparison.Ordinal) && c.For.EndsWith("to the bank", StringComparison.Ordinal)).Sum(c => c.Conductors), study.Ends.Where(e => e.At == "under a screw at the bank").Sum(e => e.Ends));
    }

    // Fine wire for the tails is enamelled, stranded wire is not: common practice, no source.
    [Theory]
    [InlineData("cu-0.20", "enamel", "fold it back on itself")]
    [InlineData("strand-0.14", "strands", "a tinned end creeps under a screw")]
    public void Enamel_is_burnt_off_and_strands_are_not_tinned_under_a_screw(string wire, string inJoint, string underScrew)
    {
        var ends = TownStudy.Of(Street() with { Wiring = new WiringChoices { Wire = wire } }).Ends.Where(e => e.Wire == Plan.Parts.Catalogue.FindWire(Street(), wire)!.Name).ToList();
        Assert.Contains(inJoint, ends.Single(e => e.At == "in a joint").Then, StringComparison.Ordinal);
        Assert.Contains(underScrew, ends.Single(e => e.At == "under a screw at the bank").Then, StringComparison.Ordinal);
    }

    private static Reel Reel(int millimetres) => new() { Wire = "cu-0.20", Left = Length.FromMillimetres(millimetres) };

    private static Town Street() => new()
    {
        Name = "Street",
        Supplies = [new Supply { Id = "1", Part = "LR6", Series = 3 }],
        SwitchGroups = [new SwitchGroup { Id = "A", Supply = "1" }],
        Buildings = Enumerable.Range(1, 3).Select(i => new Building { Name = $"House {i}", Leds = 2, SwitchGroup = "A", PairLength = Length.FromMillimetres(500) }).ToItemList(),
    };
}
