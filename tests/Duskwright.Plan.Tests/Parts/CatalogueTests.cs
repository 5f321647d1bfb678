using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Tests.Parts;

public class CatalogueTests
{
    private static readonly Town Bare = new() { Name = "Bare" };

    [Theory]
    [MemberData(nameof(Gauges))]
    public void A_gauge_wire_has_the_diameter_and_resistance_of_the_printed_table(string gauge, double diameterMillimetres, double ohmsPer1000Feet)
    {
        // Source: American wire table, ohm per 1000 ft at 20 °C as printed (4 digits) by HyperPhysics, "American Wire Gages"; diameter by the law of ASTM B258.
        var wire = Catalogue.FindWire(Bare, $"awg-{gauge}")!;
        Assert.Equal(diameterMillimetres, wire.CopperDiameter.Millimetres, 4);

        // The foot is 0.3048 m by definition. The header of the table says that its rows keep to the law within 0.3 %.
        var printed = ohmsPer1000Feet / 304.8;
        Assert.InRange(wire.PerMetre.Ohms / printed, 0.997, 1.003);
    }

    public static TheoryData<string, double, double> Gauges()
    {
        var rows = new TheoryData<string, double, double>();
        foreach (var row in ReferenceRows.Of("awg-copper-wire.csv").Where(r => r.Number("awg") <= 38))
        {
            rows.Add(row["awg"], row.Number("diameter_law_mm"), row.Number("resistance_read_ohm_per_1000ft"));
        }

        return rows;
    }

    [Fact]
    public void Every_gauge_from_20_to_38_is_there() =>
        Assert.All(Enumerable.Range(20, 19), gauge => Assert.NotNull(Catalogue.FindWire(Bare, $"awg-{gauge}")));

    [Fact]
    public void Each_gauge_is_thinner_than_the_last_by_the_39th_root_of_92()
    {
        // Source: ASTM B258, diameters in geometric progression, ratio the 39th root of 92.
        for (var gauge = 20; gauge < 38; gauge++)
        {
            var thick = Catalogue.FindWire(Bare, $"awg-{gauge}")!.CopperDiameter.Millimetres;
            var thin = Catalogue.FindWire(Bare, $"awg-{gauge + 1}")!.CopperDiameter.Millimetres;

            // The catalogue keeps five digits of each diameter, so a ratio is sure to one in ten thousand.
            Assert.Equal(Math.Pow(92, 1.0 / 39), thick / thin, 0.00012);
        }
    }

    [Theory]
    [InlineData("cu-0.10", 2.20)]
    [InlineData("cu-0.15", 0.98)]
    [InlineData("cu-0.20", 0.55)]
    [InlineData("cu-0.25", 0.35)]
    public void Enamelled_wire_has_the_resistance_that_makers_reckon_with(string id, double ohmsPerMetre)
    {
        // Common practice, no source: two-digit figures of the hobby, copper at 20 °C. The tolerance is half a unit of the last digit.
        Assert.Equal(ohmsPerMetre, Catalogue.FindWire(Bare, id)!.PerMetre.Ohms, 0.005);
    }

    [Theory]
    [InlineData("cu-0.10")]
    [InlineData("cu-0.20")]
    [InlineData("cu-0.30")]
    [InlineData("cu-0.50")]
    public void Enamelled_wire_is_annealed_copper_over_its_section(string id)
    {
        // Source: IACS (IEC 60028), 0.017241 Ω·mm²/m at 20 °C, row copper_resistivity_iacs_20c.
        var resistivity = ReferenceRows.Of("material-constants.csv").First(r => r["name"] == "copper_resistivity_iacs_20c").Number("value");
        var wire = Catalogue.FindWire(Bare, id)!;
        var sectionSquareMillimetres = Math.PI / 4 * Math.Pow(wire.CopperDiameter.Millimetres, 2);
        Assert.Equal(1, wire.PerMetre.Ohms * sectionSquareMillimetres / resistivity, 4);
    }

    [Theory]
    [InlineData("0.05")]
    [InlineData("0.11")]
    [InlineData("0.14")]
    [InlineData("0.25")]
    [InlineData("0.5")]
    public void Fine_stranded_wire_has_the_printed_greatest_resistance(string area)
    {
        // Source: IEC 60228 / DIN VDE 0295 class 5, plain conductor at 20 °C, as printed on a cable page.
        var printed = ReferenceRows.Of("flexible-conductor-resistance.csv").Single(r => r["nominal_area_mm2"] == area);
        Assert.Equal(printed.Number("class5_plain_max_resistance_ohm_per_km") / 1000, Catalogue.FindWire(Bare, $"strand-{area}")!.PerMetre.Ohms, 6);
    }

    [Fact]
    public void Resettable_fuses_hold_trip_and_resist_as_printed()
    {
        // Source: electrical table of a radial-lead resettable fuse; the rows of the 60 V class are from memory, as the table's header says.
        var printed = ReferenceRows.Of("ptc-resettable-fuse.csv");
        foreach (var fuse in Catalogue.Parts.Fuses.Where(f => f.Resettable))
        {
            var row = printed.Single(r => r.Number("hold_current_a") == fuse.Hold.Amperes);
            Assert.Equal(row.Number("trip_current_a"), fuse.Trip.Amperes, 6);
            Assert.Equal(row.Number("resistance_min_ohm"), fuse.LeastResistance.Ohms, 6);
            Assert.Equal(row.Number("resistance_max_after_trip_ohm"), fuse.MostResistance.Ohms, 6);
            Assert.Equal(row.Number("max_voltage_v"), fuse.MostVoltage!.Value.Volts, 6);
        }
    }

    [Theory]
    [InlineData("led-0603-warm-white", 4.5, 820, 2.1)]
    [InlineData("led-0603-warm-white", 4.5, 1000, 1.8)]
    [InlineData("led-0603-white", 5, 1000, 2.2)]
    public void A_white_LED_behind_a_usual_resistor_takes_the_usual_current(string id, double packVolts, double ohms, double milliamperes)
    {
        // Common practice, no source: the resistor table and first worked answer of the trade, currents to the nearest 0.1 mA.
        // They reckon with 2.8 V flat over 1 to 5 mA, while the curve bends, so 6 % are allowed.
        Assert.InRange(CurrentMilliamperes(Catalogue.FindLamp(Bare, id)!, packVolts, ohms) / milliamperes, 0.94, 1.06);
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(1)]
    [InlineData(5)]
    [InlineData(20)]
    public void A_white_LED_keeps_to_the_curve_of_the_trade(double milliamperes)
    {
        // Common practice, no source: V = 2.70 + 0.055 ln(I/1 mA) + 12 Ω (I − 1 mA). The catalogue holds n, so the slope passes through kT/q at 20 °C.
        var expected = 2.70 + (0.055 * Math.Log(milliamperes)) + (0.012 * (milliamperes - 1));
        Assert.Equal(expected, Volts(Catalogue.FindLamp(Bare, "led-0603-white")!, milliamperes), 0.001);
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(2)]
    [InlineData(10)]
    public void An_amber_LED_keeps_to_the_curve_of_the_trade(double milliamperes)
    {
        // Common practice, no source: V = 1.75 + 0.05 ln(I/1 mA) + 8 Ω (I − 1 mA).
        var expected = 1.75 + (0.05 * Math.Log(milliamperes)) + (0.008 * (milliamperes - 1));
        Assert.Equal(expected, Volts(Catalogue.FindLamp(Bare, "led-0603-amber")!, milliamperes), 0.001);
    }

    [Fact]
    public void A_flickering_LED_has_the_figures_of_the_trade()
    {
        // Common practice, no source: tests/Reference/flickering-led.csv, column typical.
        var usual = ReferenceRows.Of("flickering-led.csv").ToDictionary(r => r["quantity"], r => r.Number("typical"));
        var lamp = Catalogue.FindLamp(Bare, "flicker-3mm-yellow")!;
        Assert.Equal(usual["supply_least_v"], lamp.LeastVoltage!.Value.Volts);
        Assert.Equal(usual["current_off_at_3v"], lamp.OffCurrent!.Value.Milliamperes);
        Assert.Equal(usual["duty_mean"], lamp.OnShare!.Value);
        Assert.Equal(3.0, Volts(lamp, usual["current_on_at_3v"]), 0.001);
    }

    [Fact]
    public void Every_part_says_where_its_figures_come_from_and_what_it_costs()
    {
        var parts = Catalogue.Parts;
        Assert.All(parts.Lamps, p => Assert.True(p.Source.Length > 10 && p.Price is { Units: > 0 } && p.SoldBy > 0, p.Id));
        Assert.All(parts.Supplies, p => Assert.True(p.Source.Length > 10 && p.Price is { Units: > 0 }, p.Id));
        Assert.All(parts.Wires, p => Assert.True(p.Source.Length > 10 && p.PricePerMetre is { Units: > 0 } && p.SoldByMetres > 0, p.Id));
        Assert.All(parts.Fuses, p => Assert.True(p.Source.Length > 10 && p.Price is { Units: > 0 }, p.Id));
        Assert.All(parts.Sundries, p => Assert.True(p.Source.Length > 10 && p.Price is { Units: > 0 } && p.SoldBy > 0, p.Id));
    }

    [Fact]
    public void No_part_of_typical_figures_is_called_catalogue()
    {
        var parts = Catalogue.Parts;
        var sources = parts.Lamps.Select(p => (p.Id, p.Source, p.Certainty))
            .Concat(parts.Supplies.Select(p => (p.Id, p.Source, p.Certainty)))
            .Concat(parts.Fuses.Select(p => (p.Id, p.Source, p.Certainty)));
        Assert.All(sources.Where(s => s.Certainty == Certainty.Catalogue), s => Assert.DoesNotContain("typical, from memory", s.Source, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("LR6", 14.5, 50.5)]
    [InlineData("LR03", 10.5, 44.5)]
    [InlineData("LR14", 26.2, 50.0)]
    [InlineData("LR20", 34.2, 61.5)]
    public void Round_cells_have_the_size_of_their_designation(string id, double diameterMillimetres, double lengthMillimetres)
    {
        // Source: IEC 60086-2, greatest dimensions of the designations (from memory).
        var cell = Catalogue.FindSupply(Bare, id)!;
        Assert.InRange(cell.Width!.Value.Millimetres, diameterMillimetres - 1.0, diameterMillimetres);
        Assert.InRange(cell.Length!.Value.Millimetres, lengthMillimetres - 2.0, lengthMillimetres);
    }

    [Theory]
    [InlineData("LR6", "150 to 300 milliohm")]
    [InlineData("CR2032", "10 to 20 ohm, rising to 50 ohm and more near the end")]
    public void A_fresh_cell_resists_as_published(string id, string published)
    {
        // Source: tests/Reference/battery-internal-resistance.csv; LR6 read second-hand from a maker's application manual, CR2032 from memory.
        var row = ReferenceRows.Of("battery-internal-resistance.csv").Single(r => r["cell_iec"] == id && r["published_text"] == published);
        Assert.InRange(Catalogue.FindSupply(Bare, id)!.Curve[0].Inside.Ohms, row.Number("r_low_ohm"), row.Number("r_high_ohm"));
    }

    [Fact]
    public void An_LR6_drawn_slowly_gives_the_published_charge()
    {
        // Source: a maker's typical figures at 50 and 100 mA, a few hours a day (tests/Reference/battery-capacity-vs-load.csv): 2.9 and 2.7 Ah.
        var slow = ReferenceRows.Of("battery-capacity-vs-load.csv")
            .Where(r => r["cell_iec"] == "LR6" && r["mode"].EndsWith("a few hours a day", StringComparison.Ordinal) && r.Number("load_value") <= 0.1)
            .Select(r => r.Number("result_value")).ToList();
        Assert.Equal(2, slow.Count);
        Assert.InRange(Catalogue.FindSupply(Bare, "LR6")!.Charge!.Value.AmpereHours, slow.Min(), slow.Max());
    }

    [Fact]
    public void A_USB_port_gives_what_the_standard_allows()
    {
        // Source: USB 2.0, voltage at a high-power port and greatest load (tests/Reference/usb-supply.csv).
        var usb = ReferenceRows.Of("usb-supply.csv").Where(r => r["unit"] is "V" or "A").ToDictionary(r => r["name"], r => r.Number("value"));
        var port = Catalogue.FindSupply(Bare, "usb-5v")!;
        Assert.InRange(port.NominalVoltage.Volts, usb["bus_voltage_min_high_power_port"], usb["bus_voltage_max"]);
        Assert.Equal(usb["max_load_usb2"], port.CurrentLimit!.Value.Amperes);
        Assert.True(port.NominalVoltage.Volts - (port.CurrentLimit.Value.Amperes * port.SourceResistance!.Value.Ohms) >= usb["bus_voltage_min_high_power_port"]);
    }

    [Fact]
    public void Every_table_that_a_source_names_is_among_the_references()
    {
        var text = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "catalogue.json"));
        var named = System.Text.RegularExpressions.Regex.Matches(text, @"tests/Reference/([a-z0-9*.-]+\.csv)").Select(m => m.Groups[1].Value).Distinct().ToList();
        Assert.True(named.Count >= 4);
        Assert.All(named, file => Assert.NotEmpty(Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "Reference"), file)));
    }

    [Fact]
    public void A_cell_curve_runs_from_full_to_empty_and_never_rises() =>
        Assert.All(Catalogue.Parts.Supplies.Where(s => s.Curve.Count > 0), cell =>
        {
            Assert.Equal(1, cell.Curve[0].Left);
            Assert.Equal(0, cell.Curve[^1].Left);
            Assert.All(cell.Curve.Zip(cell.Curve.Skip(1)), p =>
            {
                Assert.True(p.First.Left > p.Second.Left, cell.Id);
                Assert.True(p.First.Open.Volts > p.Second.Open.Volts, cell.Id);
                Assert.True(p.First.Inside.Ohms <= p.Second.Inside.Ohms, cell.Id);
            });
        });

    [Fact]
    public void The_makers_own_part_stands_before_the_built_in_one_of_that_name()
    {
        var measured = Catalogue.FindLamp(Bare, "led-3mm-red")! with { ReferenceVoltage = Voltage.FromVolts(1.82) };
        var town = Bare with { OwnParts = new PartList { Lamps = [measured] } };
        Assert.Equal(1.82, Catalogue.FindLamp(town, "led-3mm-red")!.ReferenceVoltage.Volts);
    }

    [Fact]
    public void A_part_that_nobody_knows_is_not_found()
    {
        Assert.Null(Catalogue.FindLamp(Bare, "led-9mm-plaid"));
        Assert.Null(Catalogue.FindSupply(Bare, "LR99"));
        Assert.Null(Catalogue.FindWire(Bare, "awg-99"));
        Assert.Null(Catalogue.FindFuse(Bare, "ptc-9"));
    }

    // kT/q at 20 °C with k and q of the SI (2019), exact.
    private const double ThermalVolts = 1.380649e-23 / 1.602176634e-19 * 293.15;

    private static double Volts(LampPart lamp, double milliamperes) =>
        lamp.ReferenceVoltage.Volts
        + (lamp.Ideality * ThermalVolts * Math.Log(milliamperes / lamp.ReferenceCurrent.Milliamperes))
        + (lamp.SeriesResistance.Ohms * (milliamperes - lamp.ReferenceCurrent.Milliamperes) / 1000);

    private static double CurrentMilliamperes(LampPart lamp, double packVolts, double ohms)
    {
        var (low, high) = (1e-6, 1000 * packVolts / ohms);
        for (var i = 0; i < 100; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = Volts(lamp, middle) + (middle * ohms / 1000) > packVolts ? (low, middle) : (middle, high);
        }

        return low;
    }
}
