using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Tests.Checks;

/// <summary>Mains is the one thing that is refused.</summary>
public class MainsTests
{
    // Source: IEC 61140, direct voltage that may be touched without insulation (tests/Reference/safety-limits.csv).
    private static readonly double TouchableVolts = ReferenceRows.Of("safety-limits.csv").First(r => r["name"] == "touchable_without_insulation_dc").Number("value");

    [Fact]
    public void A_supply_of_just_the_touchable_voltage_is_computed() =>
        Assert.Empty(TownChecks.Of(Fed(Adaptor("bench supply", TouchableVolts))));

    [Fact]
    public void A_supply_above_the_touchable_voltage_is_refused_and_referred_to_licensed_practice()
    {
        var problems = TownChecks.Of(Fed(Adaptor("bench supply", TouchableVolts + 0.5)));
        Assert.All(problems, p => Assert.Equal("mains", p.Rule));
        Assert.Equal(["supplies[0]", "own_parts.supplies[0]"], problems.Select(p => p.Path));
        Assert.Equal("Supply 1 gives 60.5 V; at most 60 V direct current is computed here, and mains never.", problems[0].Message);
        Assert.Equal("Use cells or a sealed, certified low-voltage adaptor; mains wiring belongs to a licensed electrician and the local code.", problems[0].Remedy);
    }

    [Fact]
    public void Blocks_in_a_row_are_refused_once_they_pass_the_touchable_voltage()
    {
        // Six 9 V blocks make 54 V, seven make 63 V.
        Assert.Empty(TownChecks.Of(Blocks(6)));
        Assert.Equal("mains", Assert.Single(TownChecks.Of(Blocks(7))).Rule);
    }

    [Theory]
    [InlineData("mains lead")]
    [InlineData("Mains")]
    [InlineData("wall socket 230 V")]
    [InlineData("socket 230V")]
    [InlineData("lead 110 V")]
    [InlineData("lead 120V")]
    [InlineData("lead 240 V")]
    [InlineData("AC output 12 V")]
    [InlineData("a.c. transformer")]
    public void A_part_that_is_called_mains_is_refused_whatever_its_figures(string name) =>
        Assert.Equal("mains", Assert.Single(TownChecks.Of(Owning(Adaptor(name, 12)))).Rule);

    [Theory]
    [InlineData("adaptor 12 V")]
    [InlineData("remains of a torch")]
    [InlineData("accumulator")]
    [InlineData("5 V, 2300 mAh")]
    public void A_harmless_name_is_not_taken_for_mains(string name) =>
        Assert.Empty(TownChecks.Of(Owning(Adaptor(name, 12))));

    [Fact]
    public void A_lamp_for_mains_is_refused()
    {
        var lamp = Catalogue.Parts.Lamps[0] with { Id = "wall-lamp", Name = "wall lamp", ReferenceVoltage = Voltage.FromVolts(230) };
        var problem = Assert.Single(TownChecks.Of(new Town { Name = "T", OwnParts = new PartList { Lamps = [lamp] } }));
        Assert.Equal(("own_parts.lamps[0]", "mains"), (problem.Path, problem.Rule));
    }

    private static SupplyPart Adaptor(string name, double volts) => new()
    {
        Id = "own-adaptor",
        Name = name,
        Kind = SupplyKind.Regulated,
        NominalVoltage = Voltage.FromVolts(volts),
        SourceResistance = Resistance.FromOhms(0.2),
        Source = "printed on it",
    };

    private static Town Owning(SupplyPart part) => new() { Name = "T", OwnParts = new PartList { Supplies = [part] } };

    private static Town Fed(SupplyPart part) => Owning(part) with { Supplies = [new Supply { Id = "1", Part = part.Id }] };

    private static Town Blocks(int count) => new() { Name = "T", Supplies = [new Supply { Id = "1", Part = "6LR61", Series = count }] };
}
