using Duskwright.Plan.Parts;
using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Tests;

/// <summary>Sound parts of a maker's own at random, with every field said, or none at all.</summary>
internal static class RandomParts
{
    internal static readonly Gen<PartList> Own =
        from d in Gen.Double[0.5, 20].Array[12]
        from sure in Gen.Enum<Certainty>()
        from lampKind in Gen.Enum<LampKind>()
        from use in Gen.Enum<SundryUse>()
        from resets in Gen.Bool
        from pieces in Gen.Int[1, 100]
        from none in Gen.Bool
        select none
            ? new PartList()
            : new PartList
            {
                Lamps =
                [
                    new LampPart
                    {
                        Id = "own-lamp", Name = "mine", Kind = lampKind, Colour = "amber", Body = "3 mm", CardHole = Length.FromMillimetres(d[0]),
                        ReferenceVoltage = Voltage.FromVolts(d[1]), ReferenceCurrent = Current.FromMilliamperes(d[2]), Ideality = d[3], SeriesResistance = Resistance.FromOhms(d[4]),
                        VoltageSpread = Voltage.FromVolts(d[5]), MostCurrent = Current.FromMilliamperes(d[6]), Intensity = LuminousIntensity.FromMillicandelas(d[7]),
                        IntensityCurrent = Current.FromMilliamperes(d[8]), ViewingAngle = Angle.FromDegrees(d[9]), LeastVoltage = Voltage.FromVolts(d[10]),
                        OffCurrent = Current.FromMilliamperes(d[11]), OnShare = d[0] / 20, Price = Price.FromUnits(d[1]), SoldBy = pieces, Source = "measured", Certainty = sure,
                    },
                ],
                Supplies =
                [
                    new SupplyPart
                    {
                        Id = "own-cell", Name = "mine", Kind = SupplyKind.Alkaline, NominalVoltage = Voltage.FromVolts(1.5), Charge = Charge.FromAmpereHours(d[2]), AvailableShare = d[3] / 21,
                        FollowRatePerHour = d[4], EndVoltage = Voltage.FromVolts(0.9), Width = Length.FromMillimetres(d[5]), Length = Length.FromMillimetres(d[6]),
                        Curve = [Cell(1, d[7]), Cell(0.5, d[8]), Cell(0, d[9])], Price = Price.FromUnits(d[10]), Source = "measured", Certainty = sure,
                    },
                    new SupplyPart
                    {
                        Id = "own-bank", Name = "mine", Kind = SupplyKind.PowerBank, NominalVoltage = Voltage.FromVolts(5), SourceResistance = Resistance.FromOhms(d[2]),
                        CurrentLimit = Current.FromMilliamperes(d[3]), LeastLoad = Current.FromMilliamperes(d[4]), Source = "measured", Certainty = sure,
                    },
                ],
                Wires =
                [
                    new WirePart
                    {
                        Id = "own-wire", Name = "mine", CopperDiameter = Length.FromMillimetres(d[0]), PerMetre = Resistance.FromOhms(d[1]), OuterDiameter = Length.FromMillimetres(d[2]),
                        PricePerMetre = Price.FromUnits(d[3]), SoldByMetres = d[4], Source = "measured", Certainty = sure,
                    },
                ],
                Fuses =
                [
                    new FusePart
                    {
                        Id = "own-fuse", Name = "mine", Resettable = resets, Hold = Current.FromMilliamperes(d[0]), Trip = Current.FromMilliamperes(d[0] * 2), LeastResistance = Resistance.FromOhms(d[1]),
                        MostResistance = Resistance.FromOhms(d[2]), MostVoltage = Voltage.FromVolts(d[3]), Price = Price.FromUnits(d[4]), Source = "measured", Certainty = sure,
                    },
                ],
                Sundries =
                [
                    new SundryPart
                    {
                        Id = "own-plug", Name = "mine", Use = use, ContactResistance = Resistance.FromOhms(d[0]), Rating = Power.FromWatts(d[1]), Price = Price.FromUnits(d[2]),
                        SoldBy = pieces, Source = "measured", Certainty = sure,
                    },
                ],
            };

    private static CellPoint Cell(double left, double ohms) => new() { Left = left, Open = Voltage.FromVolts(0.9 + left), Inside = Resistance.FromOhms(ohms) };
}
