using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;

namespace Duskwright.Plan.Tests.Checks;

public class OwnPartTests
{
    private static readonly LampPart Lamp = Catalogue.Parts.Lamps[0] with { Id = "mine", Name = "my lamp" };
    private static readonly SupplyPart Cell = Catalogue.Parts.Supplies.First(s => s.Id == "LR6") with { Id = "mine", Name = "my cell" };
    private static readonly WirePart Wire = Catalogue.Parts.Wires[0] with { Id = "mine", Name = "my wire" };
    private static readonly FusePart Fuse = Catalogue.Parts.Fuses[0] with { Id = "mine", Name = "my fuse" };

    [Fact]
    public void Parts_of_the_catalogue_pass_as_a_makers_own() =>
        Assert.Empty(Problems(Catalogue.Parts));

    [Fact]
    public void A_lamp_has_a_reference_current() =>
        Refused(new PartList { Lamps = [Lamp with { ReferenceCurrent = default }] }, "own_parts.lamps[0].reference_current_ma", "my lamp: reference_current_ma is 0; more than 0 is allowed.");

    [Fact]
    public void A_flickering_lamp_is_not_lit_more_than_always() =>
        Refused(new PartList { Lamps = [Lamp with { OnShare = 1.1 }] }, "own_parts.lamps[0].on_share", "my lamp is lit 1.1 of the time; more than 0 and at most 1 is allowed.");

    [Fact]
    public void A_cell_needs_a_curve() =>
        Refused(new PartList { Supplies = [Cell with { Curve = [] }] }, "own_parts.supplies[0]", "my cell is a cell and lacks a charge, wells or a curve of at least two points from full to empty.");

    [Fact]
    public void A_cell_curve_runs_from_full_to_empty() =>
        Refused(new PartList { Supplies = [Cell with { Curve = Cell.Curve.Reverse().ToItemList() }] }, "own_parts.supplies[0]", "my cell is a cell and lacks a charge, wells or a curve of at least two points from full to empty.");

    [Fact]
    public void A_wire_has_a_resistance() =>
        Refused(new PartList { Wires = [Wire with { PerMetre = default }] }, "own_parts.wires[0]", "my wire: its resistance or diameter is 0; more than 0 is allowed.");

    [Fact]
    public void A_fuse_trips_above_what_it_holds() =>
        Refused(new PartList { Fuses = [Fuse with { Trip = Fuse.Hold }] }, "own_parts.fuses[0]", "my fuse must hold more than 0 mA, trip above that, and have more than 0 Ω.");

    [Fact]
    public void Two_parts_of_one_kind_differ_in_their_ids() =>
        Refused(new PartList { Wires = [Wire, Wire] }, "own_parts.wires[1]", "There is another wire called \"mine\".");

    private static void Refused(PartList parts, string path, string message)
    {
        var problem = Assert.Single(Problems(parts));
        Assert.Equal((path, message), (problem.Path, problem.Message));
    }

    private static ItemList<Problem> Problems(PartList parts) => TownChecks.Of(new Town { Name = "T", OwnParts = parts });
}
