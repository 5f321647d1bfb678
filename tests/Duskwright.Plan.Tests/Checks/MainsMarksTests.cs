using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Tests.Checks;

public class MainsMarksTests
{
    [Theory]
    [InlineData("Mains lead")]
    [InlineData("lamp 240VAC")]
    [InlineData("230V~")]
    [InlineData("230 V")]
    [InlineData("230 volt")]
    [InlineData("110 volts")]
    [InlineData("115 V")]
    [InlineData("127 V")]
    [InlineData("220-240V bulb")]
    [InlineData("12 V AC")]
    [InlineData("a.c. brick")]
    [InlineData("12VAC")]
    public void A_part_marked_as_mains_or_alternating_current_is_referred_to_licensed_practice(string name)
    {
        // Source: standard supply voltages 100, 120, 230 V and the older 110, 115, 127, 220, 240 V (IEC 60038 and common practice, from memory).
        var problem = Assert.Single(TownChecks.Of(With(name, 5)));
        Assert.Equal("mains", problem.Rule);
        Assert.Equal("own_parts.supplies[0]", problem.Path);
        Assert.Contains("licensed electrician", problem.Remedy, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Macaroni box")]
    [InlineData("5 V adaptor")]
    [InlineData("pack 1230")]
    [InlineData("2.40 V cell pair")]
    [InlineData("120 mA adaptor")]
    [InlineData("120")]
    [InlineData("vacuum lamp")]
    [InlineData("230 mAh pack")]
    [InlineData("remains of the old pack")]
    public void A_part_that_only_looks_a_little_like_mains_is_welcome(string name) =>
        Assert.Empty(TownChecks.Of(With(name, 5)));

    [Theory]
    [InlineData(-0.1, true)]
    [InlineData(0, true)]
    [InlineData(0.1, false)]
    public void A_supply_may_give_what_may_be_touched_without_insulation_and_no_more(double aboveVolts, bool welcome)
    {
        // Source: IEC 61140 as told by a transformer glossary, 60 V d.c., row touchable_without_insulation_dc of tests/Reference/safety-limits.csv.
        var limit = ReferenceRows.Of("safety-limits.csv").Single(r => r["name"] == "touchable_without_insulation_dc").Number("value");
        Assert.Equal(welcome, TownChecks.Of(With("adaptor", limit + aboveVolts)).Count == 0);
    }

    [Theory]
    [InlineData("fuse")]
    [InlineData("wire")]
    [InlineData("sundry")]
    public void No_kind_of_own_part_may_be_marked_mains(string kind)
    {
        var parts = kind switch
        {
            "fuse" => new PartList { Fuses = [Catalogue.Parts.Fuses[0] with { Id = "mine", Name = "mains fuse" }] },
            "wire" => new PartList { Wires = [Catalogue.Parts.Wires[0] with { Id = "mine", Name = "mains cable" }] },
            _ => new PartList { Sundries = [Catalogue.Parts.Sundries[0] with { Id = "mine", Name = "230 V switch" }] },
        };
        var problem = Assert.Single(TownChecks.Of(new Town { Name = "X", OwnParts = parts }));
        Assert.Equal("mains", problem.Rule);
    }

    private static Town With(string name, double volts) => new()
    {
        Name = "X",
        OwnParts = new PartList
        {
            Supplies =
            [
                new SupplyPart
                {
                    Id = "mine", Name = name, Kind = SupplyKind.Regulated, NominalVoltage = Voltage.FromVolts(volts),
                    SourceResistance = Resistance.FromOhms(0.1), Source = "its label",
                },
            ],
        },
    };
}
