namespace Duskwright.Circuits.Tests.Solving;

/// <summary>Textbook circuits of lamps, packs, wires and resistors. Book, example and page stand in each row of tests/Reference/worked-examples.csv.</summary>
public sealed class TextbookCircuitTests
{
    [Theory]
    [MemberData(nameof(LampsOnResistors))]
    public void A_lamp_behind_a_resistor_takes_the_printed_current(string id, string quantity)
    {
        var e = WorkedExample.Of(id, quantity);
        var volts = quantity switch { "led_current_max" => e["led_vf_min_v"], "led_current_min" => e["led_vf_max_v"], _ => e["led_vf_v"] };
        e.Check(LampAmps(e["supply_v"], volts, e["series_resistance_ohm"]));
    }

    public static TheoryData<string, string> LampsOnResistors() => WorkedExample.Named(e => e.Topic is "led-current-from-resistor" or "led-current-spread");

    [Theory]
    [MemberData(nameof(LampsWithCurrent))]
    public void The_printed_resistor_gives_the_wanted_current_and_the_printed_heat(string id, string quantity)
    {
        var e = WorkedExample.Of(id, quantity);
        var solved = Lamp(e["supply_v"], e["led_vf_v"], (e["supply_v"] - e["led_vf_v"]) / e["led_current_a"]).Solve();
        var acrossResistor = solved.Volts("plus") - e["led_vf_v"];
        e.Check(quantity == "resistor_power" ? acrossResistor * solved.Amps("lamp") : acrossResistor / solved.Amps("lamp"));
    }

    public static TheoryData<string, string> LampsWithCurrent() =>
        WorkedExample.Named(e => e.Topic == "led-series-resistor");

    // 9.1 mA through the next standard value above, and its heat.
    [Theory]
    [InlineData("LED-23", "led_current_with_preferred")]
    [InlineData("LED-23", "resistor_power")]
    public void The_next_standard_resistor_gives_the_printed_current_and_heat(string id, string quantity)
    {
        var e = WorkedExample.Of(id, quantity);
        var amps = LampAmps(e["supply_v"], e["led_vf_v"], 330);
        e.Check(quantity == "resistor_power" ? amps * amps * 330 : amps);
    }

    [Theory]
    [MemberData(nameof(Packs))]
    public void A_pack_under_load_has_the_printed_volts_amperes_and_watts(string id, string quantity)
    {
        var e = WorkedExample.Of(id, quantity);
        var sketch = new CircuitSketch().Pack("pack", "plus", "0", e["emf_v"], e["r_internal_ohm"]);
        var solved = quantity == "short_circuit_current"
            ? sketch.Wire("load", "plus", "0", 1e-6).Solve()
            : (e.Has("r_load_ohm") ? sketch.Wire("load", "plus", "0", e["r_load_ohm"]) : sketch.Draw("load", "plus", "0", e["current_a"])).Solve();
        e.Check(quantity switch
        {
            "terminal_voltage" => solved.Volts("plus"),
            "load_power" => solved.Volts("plus") * solved.Amps("load"),
            "implied_load_resistance" => solved.Volts("plus") / solved.Amps("pack"),
            _ => solved.Amps("pack"),
        });
    }

    public static TheoryData<string, string> Packs() =>
        WorkedExample.Named(e => e.Topic is "battery-internal-resistance" or "battery-voltage-under-load" or "unreasonable-load");

    // Source: J. Bird, Electrical Circuit Theory and Technology, example 13.5, p. 171: the weaker battery is charged.
    [Theory]
    [InlineData("current_source1")]
    [InlineData("current_source2")]
    [InlineData("load_current")]
    public void Of_two_unequal_packs_side_by_side_the_weaker_is_charged(string quantity)
    {
        var e = WorkedExample.Of("BAT-23", quantity);
        var solved = new CircuitSketch()
            .Pack("first", "plus", "0", e["emf1_v"], e["r1_ohm"])
            .Pack("second", "plus", "0", e["emf2_v"], e["r2_ohm"])
            .Wire("load", "plus", "0", e["r_load_ohm"])
            .Solve();
        e.Check(solved.Amps(quantity switch { "current_source1" => "first", "current_source2" => "second", _ => "load" }));
    }

    [Theory]
    [MemberData(nameof(SeriesAndParallel))]
    public void Resistors_in_series_and_parallel_have_the_printed_answer(string id, string quantity)
    {
        var e = WorkedExample.Of(id, quantity);
        var solved = Resistors(e).Solve();
        var (volts, amps) = (e["supply_v"], solved.Amps("supply"));
        e.Check(quantity switch
        {
            "r_total" => volts / amps,
            "current" => amps,
            "power" => volts * amps,
            "drop_wire" => solved.Volts("plus", "node 1"),
            "current_load1" => solved.Amps("load 0"),
            "current_load2" => solved.Amps("load 1"),
            "power_load1" => solved.Amps("load 0") * solved.Volts("node 1"),
            "voltage_9ohm" => solved.Volts("node 1", "node 2"),
            "power_11ohm" => solved.Volts("node 2") * amps,
            "output_voltage" => solved.Volts("node 1"),
            "current_8ohm" => solved.Amps("load 0"),
            _ => throw new NotSupportedException($"No answer is known for {quantity} of {id}."),
        });
    }

    public static TheoryData<string, string> SeriesAndParallel() => WorkedExample.Named(e => e.Id.StartsWith("SP", StringComparison.Ordinal) && e.Has("supply_v"));

    [Theory]
    [InlineData("current")]
    [InlineData("load_voltage")]
    [InlineData("drop_per_conductor")]
    public void Both_conductors_of_a_pair_take_their_share(string quantity)
    {
        var e = WorkedExample.Of("WIRE-04", quantity);
        var solved = new CircuitSketch()
            .Pack("supply", "plus", "0", e["supply_v"], 1e-9)
            .Wire("there", "plus", "load plus", e["r_wire_each_ohm"])
            .Wire("load", "load plus", "load minus", e["r_load_ohm"])
            .Wire("back", "load minus", "0", e["r_wire_each_ohm"])
            .Solve();
        e.Check(quantity switch
        {
            "current" => solved.Amps("load"),
            "load_voltage" => solved.Volts("load plus", "load minus"),
            _ => solved.Volts("plus", "load plus"),
        });
    }

    // Derived, not published: led-circuits-derived.csv was computed by bisection from the published diode cards; tolerance 0.5 % of each current.
    [Theory]
    [MemberData(nameof(SharedResistors))]
    public void Lamps_behind_one_resistor_share_unequally(string id, double supplyVolts, double sharedOhms, string lamps, double nodeVolts, string amperes)
    {
        Assert.NotEmpty(id);
        var models = lamps.Split(';');
        var sketch = new CircuitSketch().Pack("supply", "plus", "0", supplyVolts, 1e-9).Wire("shared", "plus", "node", sharedOhms);
        foreach (var (model, i) in models.Select((m, i) => (m, i)))
        {
            sketch.Lamp($"lamp {i}", "node", "0", UsualLamps.CardOf(model));
        }

        var solved = sketch.Solve();
        Assert.Equal(nodeVolts, solved.Volts("node"), 0.0005);
        Assert.All(amperes.Split(';').Select(double.Parse), (expected, i) => Assert.Equal(expected, solved.Amps($"lamp {i}"), (0.005 * expected) + 5e-7));
    }

    public static TheoryData<string, double, double, string, double, string> SharedResistors()
    {
        var rows = new TheoryData<string, double, double, string, double, string>();
        foreach (var r in ReferenceRows.Of("led-circuits-derived.csv"))
        {
            rows.Add(r["case"], r.Number("supply_v"), r.Number("shared_resistor_ohm"), r["leds_in_parallel"], r.Number("node_voltage_v"), r["led_currents_a"]);
        }

        return rows;
    }

    private static double LampAmps(double supply, double lampVolts, double ohms) => Lamp(supply, lampVolts, ohms).Solve().Amps("lamp");

    private static CircuitSketch Lamp(double supply, double lampVolts, double ohms) =>
        new CircuitSketch().Pack("supply", "plus", "0", supply, 1e-9).Lamp("lamp", "plus", "0", UsualLamps.Fixed(lampVolts), ohms);

    private static CircuitSketch Resistors(WorkedExample e)
    {
        var sketch = new CircuitSketch().Pack("supply", "plus", "0", e["supply_v"], 1e-9);
        switch (e.Topic)
        {
            case "series":
                var chain = e.List("resistances_ohm");
                for (var i = 0; i < chain.Count; i++)
                {
                    sketch.Wire($"load {i}", i == 0 ? "plus" : $"node {i}", i == chain.Count - 1 ? "0" : $"node {i + 1}", chain[i]);
                }

                return sketch;
            case "parallel":
                return e.List("resistances_ohm").Select((ohms, i) => (ohms, i)).Aggregate(sketch, (s, x) => s.Wire($"load {x.i}", "plus", "0", x.ohms));
            case "parallel-loads-behind-wire":
                sketch.Wire("wire", "plus", "node 1", e["r_wire_ohm"]);
                return e.List("loads_ohm").Select((ohms, i) => (ohms, i)).Aggregate(sketch, (s, x) => s.Wire($"load {x.i}", "node 1", "0", x.ohms));
            case "voltage-divider":
                return sketch.Wire("upper", "plus", "node 1", e["r_upper_ohm"]).Wire("lower", "node 1", "0", e["r_lower_ohm"]);
            case "two-rung-ladder":
                sketch.Wire("feed", "plus", "node 1", e["r_feed_ohm"]).Wire("first rung", "node 1", "0", e["shunt1_ohm"]).Wire("rail", "node 1", "node 2", e["r_series_ohm"]);
                return e.List("end_shunts_ohm").Select((ohms, i) => (ohms, i)).Aggregate(sketch, (s, x) => s.Wire($"load {x.i}", "node 2", "0", x.ohms));
            default:
                throw new NotSupportedException($"{e.Topic} is not drawn.");
        }
    }
}
