using Duskwright.Plan;
using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;
using Duskwright.Proposals.Growth;
using Duskwright.Study;
using Duskwright.Study.Findings;

namespace Duskwright.Proposals.Tests.Growth;

// A board of 1000 mm by 400 mm with one wireway along its front edge, the bank at its left end; slack is 100 mm.
public class GrowthProposalTests
{
    private static readonly Building Mill = House("Mill", 700, 50, null, 2);

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    // By hand: from the bank 700 along and 50 up and 100 of slack, twice; on from the inn at 400 mm 20 down, 300 along, 50 up and the slack, twice.
    [Fact]
    public void The_wire_of_each_place_is_what_a_ruler_says()
    {
        var proposal = GrowthProposal.Of(TownStudy.Of(Street()), Mill, Cancel);
        Assert.Equal(2 * 0.47, proposal.Options.Single(o => o.Words == "On from Inn, switch A").WireMetres, 1e-9);
        Assert.Equal(2 * 0.85, proposal.Options.Single(o => o.Words == "A pair of its own from the bank, switch A").WireMetres, 1e-9);
        Assert.Equal("On from Inn, switch A", proposal.Best!.Option.Words);
        Assert.Null(proposal.Why);
    }

    [Fact]
    public void The_first_house_of_a_town_that_has_only_packs_gets_a_pair_of_its_own()
    {
        var proposal = GrowthProposal.Of(TownStudy.Of(Street() with { Buildings = [], Routes = [], Wiring = new WiringChoices() }), Mill, Cancel);
        Assert.Equal(TieInKind.Bank, proposal.Best!.Option.Kind);
    }

    [Fact]
    public void What_one_house_has_for_a_wire_is_not_what_the_town_usually_has()
    {
        ItemList<HoleRoom> Holes(string? usual)
        {
            var town = Street();
            return SpareRoom.Of(TownStudy.Of(town with
            {
                Board = town.Board! with { FeedHoles = [new FeedHole { Id = "h1", At = Point.At(500, 10), Bore = Length.FromMillimetres(3) }] },
                Buildings = [town.Buildings[0] with { Wire = "cu-0.50" }],
                Wiring = town.Wiring with { Wire = usual },
            }), Cancel).Holes;
        }

        Assert.Equal(Holes("cu-0.20"), Holes(null));
    }

    // Kirchhoff's laws: the pair to the inn and its joint at the bank carry both houses, the new pair and the joints at its ends one; both conductors count. Common practice, no source.
    [Fact]
    public void What_is_lost_on_the_way_to_a_house_that_hangs_on_another_is_the_sum_over_both_pairs()
    {
        var town = Street();
        var best = GrowthProposal.Of(TownStudy.Of(town), Mill, Cancel).Best!;
        var study = TownStudy.Of(best.Option.Edit.Apply(town));
        var (inn, mill) = (study.Buildings.Single(b => b.Building.Name == "Inn"), study.Buildings.Single(b => b.Building.Name == "Mill"));
        double Pair(double metres) => 2 * ((metres * mill.Wire.PerMetre.Ohms) + 0.02);
        var expected = ((inn.Current!.Value + mill.Current!.Value) * Pair(0.52)) + (mill.Current.Value * (Pair(0.47) + (2 * 0.02)));
        Assert.Equal(expected, best.DropVolts, expected * 0.02);
    }

    [Fact]
    public void What_everybody_loses_is_what_the_currents_before_and_after_say()
    {
        var town = Street();
        var before = TownStudy.Of(town);
        var best = GrowthProposal.Of(before, House("Mill", 700, 50, null, 12), Cancel).Best!;
        var after = TownStudy.Of(best.Option.Edit.Apply(town));
        Assert.Equal(before.Lamps.Count, best.Lamps.Count);
        Assert.All(best.Lamps, change =>
        {
            // Light follows the current of a small LED to within its droop: a tenth of the change.
            var ratio = after.Lamps.Single(l => l.Building == change.Building && l.Name == change.Lamp).Current!.Value / before.Lamps.Single(l => l.Building == change.Building && l.Name == change.Lamp).Current!.Value;
            Assert.InRange(ratio, 0.5, 0.9999);
            Assert.Equal(ratio, change.LightShare, 0.1 * (1 - ratio));
            Assert.True(change.Step < 0);
        });
        var pack = Assert.Single(best.Packs);
        Assert.Equal(after.Packs[0].Load!.Value, pack.AmpsAfter, 1e-12);
        Assert.True(pack.HoursAfter < pack.HoursBefore);
    }

    [Theory]
    [InlineData(2, true)]
    [InlineData(40, false)]
    public void No_other_place_that_holds_takes_less_wire_than_the_one_proposed_and_a_pack_with_no_room_is_passed_over(int lamps, bool hasRoom)
    {
        var town = TwoStreets();
        var added = House("Mill", 700, 50, null, lamps);
        var study = TownStudy.Of(town);
        var proposal = GrowthProposal.Of(study, added, Cancel);
        var cheapest = proposal.Options
            .Where(o => o.Kind != TieInKind.NewPack && o.Against.Count == 0 && StaysSound(study, o))
            .Select(o => (double?)o.WireMetres)
            .Min();
        Assert.Equal(cheapest!.Value, proposal.Best!.Option.WireMetres, 1e-9);
        Assert.Equal(hasRoom, proposal.Best.Option.Supply == "1");
    }

    // By hand: 650 mm of trunk of which 100 are slack, cut at 500 of its 550 mm; the branch is 50 mm and its slack.
    [Fact]
    public void A_trunk_is_tapped_where_the_new_house_stands_over_it_and_both_pieces_keep_their_slack()
    {
        var town = Trunk(laid: false);
        var option = GrowthProposal.Of(TownStudy.Of(town), House("Mill", 500, 50, null, 2), Cancel).Options.Single(o => o.Kind == TieInKind.NewTap);
        Assert.Equal(2 * (0.15 + 0.1), option.WireMetres, 1e-9);
        var after = option.Edit.Apply(town);
        Assert.Empty(TownChecks.Of(after));
        Assert.Equal([("TA2", "TA1", 150.0), ("TA1", null, 600.0)], after.Taps.Select(t => (t.From == "TA2" ? "TA2" : "TA1", t.From == "TA2" ? "TA1" : null, Math.Round(t.Length.Millimetres, 3))).OrderBy(t => t.Item3));
        Assert.Equal(4, TownStudy.Of(after).Lamps.Count(l => l.Current is not null));
    }

    [Fact]
    public void A_tap_that_is_laid_is_reached_through_a_hatch_and_not_without()
    {
        var town = Trunk(laid: true);
        TieInOption Tap(Town t) => GrowthProposal.Of(TownStudy.Of(t), House("Mill", 500, 50, null, 2), Cancel).Options.Single(o => o.Kind == TieInKind.Tap);
        Assert.Equal("Tap TA1 is laid and no hatch opens over it.", Assert.Single(Tap(town).Against));
        var hatch = new Scenery { Kind = SceneryKind.Hatch, Points = [Point.At(520, 0), Point.At(600, 0), Point.At(600, 60), Point.At(520, 60)] };
        Assert.Empty(Tap(town with { Board = town.Board! with { Scenery = [hatch] } }).Against);
        Assert.DoesNotContain(GrowthProposal.Of(TownStudy.Of(town), Mill, Cancel).Options, o => o.Kind == TieInKind.NewTap);
    }

    [Fact]
    public void Nothing_goes_on_from_a_house_that_is_glued_down_for_good()
    {
        var town = Street();
        var glued = town with { Buildings = town.Buildings.Select(b => b with { State = BuildingState.Fixed }).ToItemList() };
        var option = GrowthProposal.Of(TownStudy.Of(glued), Mill, Cancel).Options.Single(o => o.Kind == TieInKind.House);
        Assert.StartsWith("Inn is glued down", Assert.Single(option.Against), StringComparison.Ordinal);
        Assert.Equal(TieInKind.Bank, GrowthProposal.Of(TownStudy.Of(glued), Mill, Cancel).Best!.Option.Kind);
        var lifting = glued with { Buildings = glued.Buildings.Select(b => b with { Roof = new Roof { LiftsOff = true } }).ToItemList() };
        Assert.Equal(TieInKind.House, GrowthProposal.Of(TownStudy.Of(lifting), Mill, Cancel).Best!.Option.Kind);
    }

    [Fact]
    public void A_house_too_far_from_every_wireway_is_told_with_its_gap() =>
        Assert.Equal("Mill lies 350 mm from the nearest wireway; at most 250 mm is bridged.", GrowthProposal.Of(TownStudy.Of(Street()), House("Mill", 700, 350, null, 2), Cancel).Why);

    // By hand: wires of 0.23 mm fill half a hole of 0.46·√pairs mm; with half a millimetre to slide, 29 pairs are the most in 3 mm (0.46·√29 = 2.48).
    [Fact]
    public void A_hole_of_three_millimetres_takes_twenty_nine_pairs_and_one_of_them_is_there()
    {
        var town = Street();
        var holed = town with
        {
            Board = town.Board! with { FeedHoles = [new FeedHole { Id = "h", At = Point.At(400, 20), Bore = Length.FromMillimetres(3) }] },
            Buildings = town.Buildings.Select(b => b with { FeedHole = "h" }).ToItemList(),
        };
        var hole = Assert.Single(SpareRoom.Of(TownStudy.Of(holed), Cancel).Holes);
        Assert.Equal((1, 28), (hole.Pairs, hole.More));
        string Against(FeedHole other) => Assert.Single(GrowthProposal.Of(TownStudy.Of(holed with { Board = holed.Board! with { FeedHoles = [other] } }), Mill, Cancel).Options.Single(o => o.Kind == TieInKind.House).Against);
        Assert.Equal("Hole h is shut.", Against(holed.Board!.FeedHoles[0] with { Shut = true }));

        // Two pairs need 0.46·√2 + 0.5 = 1.15, so 1.5 mm.
        Assert.Equal("Hole h is drilled 1 mm; one pair more needs 1.5 mm.", Against(holed.Board!.FeedHoles[0] with { Bore = Length.FromMillimetres(1) }));
    }

    [Fact]
    public void A_pack_takes_as_many_more_as_it_carries_to_the_end_and_one_more_is_told_to_fade()
    {
        var study = TownStudy.Of(Street());
        var room = Assert.Single(SpareRoom.Of(study, Cancel).Packs);
        Assert.Equal(study.Packs[0].Carrying!.DimByEnd.Value - 1 - 2, room.More);
        var way = Assert.Single(SpareRoom.Of(TownStudy.Of(Street(capacity: 4)), Cancel).Wireways);
        Assert.Equal((1, 3), (way.Pairs, way.More));
    }

    // Five metres of thin trunk dim what hangs on it, so a house of a hundred lamps cannot be hung there and one of a single lamp can.
    [Fact]
    public void A_tap_takes_lamps_until_somebody_is_seen_to_be_fainter()
    {
        var town = Trunk(laid: false);
        var near = House("Lodge", 20, 20, "A", 1);
        var stretched = town with
        {
            Buildings = town.Buildings.Append(near).ToItemList(),
            Taps = town.Taps.Select(t => t with { Length = Length.FromMillimetres(5000), Wire = "cu-0.20" }).ToItemList(),
        };
        var room = Assert.Single(SpareRoom.Of(TownStudy.Of(stretched), Cancel).Taps);
        Assert.InRange(room.More, 1, 100);
        double Faintest(int lamps)
        {
            var house = House("Guest", 560, 20, "A", lamps);
            var pair = new Route { Building = house.Key, From = "TA1", Points = [], Length = Length.FromMillimetres(100) };
            return TownStudy.Of(stretched with { Buildings = stretched.Buildings.Append(house).ToItemList(), Routes = stretched.Routes.Append(pair).ToItemList() }).Lamps.Min(l => l.Evenness!.Value);
        }

        Assert.True(Faintest(room.More) >= 95);
        Assert.True(Faintest(room.More + 1) < 95);
    }

    [Fact]
    public void A_town_without_a_board_is_told_the_pack_and_no_lamps_need_no_pair()
    {
        var bare = new Town
        {
            Name = "Bare",
            Buildings = [new Building { Name = "Inn", Leds = 2, SwitchGroup = "A", Distance = Length.FromMillimetres(400) }],
            Supplies = [new Supply { Id = "1", Part = "LR6", Series = 3 }],
            SwitchGroups = [new SwitchGroup { Id = "A", Supply = "1" }],
        };
        var added = new Building { Name = "Mill", Leds = 3, Distance = Length.FromMillimetres(500) };
        var best = GrowthProposal.Of(TownStudy.Of(bare), added, Cancel).Best!;

        // By the rule of thumb: 500 mm with the usual detour of 1.4 and a quarter of a metre of slack, both conductors; common practice, no source.
        Assert.Equal(2 * ((0.5 * 1.4) + 0.25), best.Option.WireMetres, 1e-9);
        Assert.Empty(TownChecks.Of(best.Option.Edit.Apply(bare)));
        Assert.StartsWith("Mill has no lamp", GrowthProposal.Of(TownStudy.Of(bare), added with { Leds = 0 }, Cancel).Why, StringComparison.Ordinal);
        Assert.StartsWith("No switch takes", GrowthProposal.Of(TownStudy.Of(bare with { SwitchGroups = [], Buildings = [] }), added, Cancel).Why, StringComparison.Ordinal);
    }

    // Judged by the rules of the results alone: no pack fades early, is overloaded or outgrows its fuse, and nobody is newly seen to be fainter than its like.
    private static bool StaysSound(TownStudy before, TieInOption option)
    {
        string[] rules = ["pack-fades", "supply-overloaded", "fuse-too-small"];
        var after = before.After(option.Edit.Apply(before.Town));
        bool Faint(TownStudy study, string house) => study.Buildings.Any(b => b.Building.Key == house && b.Lamps.Any(l => l.Evenness < 95));
        return !after.Findings.Any(f => rules.Contains(f.Rule) && f.Subject == Subject.Supply(option.Supply))
            && !after.Buildings.Any(b => Faint(after, b.Building.Key) && !Faint(before, b.Building.Key));
    }

    private static Building House(string name, double x, double y, string? group, int leds) => new()
    {
        Name = name,
        Leds = leds,
        SwitchGroup = group,
        Resistor = ResistorChoice.Of(Resistance.FromOhms(470)),
        Place = new Placement { At = Point.At(x, y), Width = Length.FromMillimetres(30), Depth = Length.FromMillimetres(20) },
    };

    private static Town Street(int? capacity = null) => new()
    {
        Name = "Street",
        Board = new Board
        {
            Width = Length.FromMillimetres(1000),
            Depth = Length.FromMillimetres(400),
            Wireways = [new Wireway { Id = "front", Points = [Point.At(0, 0), Point.At(1000, 0)], CapacityPairs = capacity }],
            Bank = new Bank { At = Point.At(0, 0) },
        },
        Buildings = [House("Inn", 400, 20, "A", 2)],
        Supplies = [new Supply { Id = "1", Part = "LR6", Series = 3 }],
        SwitchGroups = [new SwitchGroup { Id = "A", Supply = "1" }],
        Wiring = new WiringChoices { Wire = "cu-0.20", Slack = Length.FromMillimetres(100), JointResistance = Resistance.FromOhms(0.02) },
        Routes = [new Route { Building = "inn", Points = [Point.At(400, 20), Point.At(400, 0), Point.At(0, 0)], Length = Length.FromMillimetres(520), Wireways = ["front"] }],
    };

    // The inn's pack is nearly full; the forge farther off hangs on another.
    private static Town TwoStreets()
    {
        var town = Street();
        return town with
        {
            Buildings = [House("Inn", 400, 20, "A", 40), House("Forge", 200, 40, "B", 4), House("Gate", 250, 60, "A", 1)],
            Supplies = [new Supply { Id = "1", Part = "LR6", Series = 3 }, new Supply { Id = "2", Part = "LR6", Series = 3 }],
            SwitchGroups = [new SwitchGroup { Id = "A", Supply = "1" }, new SwitchGroup { Id = "B", Supply = "2" }],
            Routes =
            [
                .. town.Routes,
                new Route { Building = "forge", Points = [Point.At(200, 40), Point.At(200, 0), Point.At(0, 0)], Length = Length.FromMillimetres(340), Wireways = ["front"] },
                new Route { Building = "gate", Points = [Point.At(250, 60), Point.At(250, 0), Point.At(0, 0)], Length = Length.FromMillimetres(410), Wireways = ["front"] },
            ],
        };
    }

    private static Town Trunk(bool laid)
    {
        var town = Street();
        return town with
        {
            Buildings = [House("Inn", 550, 20, "A", 2)],
            Taps = [new Tap { Id = "TA1", SwitchGroup = "A", Points = [Point.At(0, 0), Point.At(550, 0)], Length = Length.FromMillimetres(650), Wireways = ["front"], Laid = laid }],
            Routes = [new Route { Building = "inn", From = "TA1", Points = [Point.At(550, 20), Point.At(550, 0)], Length = Length.FromMillimetres(120) }],
        };
    }
}
