using System.Collections.Immutable;
using Duskwright.Circuits.Lamps;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Supplies;
using Duskwright.Circuits.Tests.Supplies;
using Duskwright.Circuits.Tolerance;

namespace Duskwright.Circuits.Tests.Tolerance;

public sealed class MonteCarloTests
{
    private static readonly Spreads None = new()
    {
        PieceVolts = 0,
        BatchVolts = 0,
        PieceLight = 0,
        Resistor = 0,
        Wire = 0,
        JointOhms = 0,
        SourceVolts = 0,
        SourceOhms = 0,
        Charge = 0,
    };

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    // Propagation of error (ISO/IEC Guide 98-3, equation 10): σ(V) = E·R₁R₂/(R₁ + R₂)²·√2·s for two resistors of relative deviation s.
    [Fact]
    public void A_dividers_voltage_spreads_as_the_law_of_propagation_says()
    {
        var network = new Network(3, [new SourceElement("supply", 1, 0, 10, 1e-6), new ResistorElement("upper", 1, 2, 300), new ResistorElement("lower", 2, 0, 700)]);
        var range = MonteCarlo.Run(network, None with { Wire = 0.02 }, [], [Probe.Volts("tap", 2, 0)], 10_000, 1, Cancel).Probes[0].Value;
        var sigma = 10 * 300.0 * 700 / (1000 * 1000) * Math.Sqrt(2) * 0.02;
        Assert.Equal(7, range.Likely, 0.01 * sigma * 3);
        Assert.Equal(2 * 1.6449 * sigma, range.High - range.Low, 0.03 * 2 * 1.6449 * sigma);
    }

    // Stratified draws take out of the error what is additive: over 20 seeds the middle of 500 draws scatters far less than the
    // 1.25·σ/√500 of plain draws (standard error of a median).
    [Fact]
    public void Stratified_draws_scatter_less_than_plain_ones_would()
    {
        var network = new Network(3, [new SourceElement("supply", 1, 0, 10, 1e-6), new ResistorElement("upper", 1, 2, 500), new ResistorElement("lower", 2, 0, 500)]);
        var middles = Enumerable.Range(0, 20).Select(seed => MonteCarlo.Run(network, None with { SourceVolts = 0.02 }, [], [Probe.Volts("tap", 2, 0)], 500, seed, Cancel).Probes[0].Value.Likely).ToList();
        var scatter = Math.Sqrt(middles.Average(m => (m - middles.Average()) * (m - middles.Average())));
        Assert.True(scatter < 0.2 * 1.25 * (5 * 0.02) / Math.Sqrt(500), $"{scatter}");
    }

    // Two lamps straight across one another without resistors: V₁ + n·V_T·ln I₁ = V₂ + n·V_T·ln I₂, so I₁/I₂ = e^(d/(n·V_T)) with d normal of
    // deviation √2·σ, whose middle of |d| is 0.6745·√2·σ. The greater takes 2r/(1 + r) of the mean.
    [Fact]
    public void Lamps_behind_one_resistor_hog_as_their_curves_say()
    {
        const double Sigma = 0.03;
        var lamp = new LedLaw(2, 1e-3, 2, 0);
        var network = new Network(3, [new SourceElement("supply", 1, 0, 5, 0.01), new ResistorElement("shared", 1, 2, 500), new LampElement("a", 2, 0, lamp, 0), new LampElement("b", 2, 0, lamp, 0)]);
        var spread = MonteCarlo.Run(network, None with { PieceVolts = Sigma }, [new Neighbours("pair", [2, 3])], [], 10_000, 1, Cancel).Neighbours[0];
        var ratio = Math.Exp(0.6745 * Math.Sqrt(2) * Sigma / (2 * LedLaw.BoltzmannOverCharge * LedLaw.RoomKelvin));
        Assert.Equal(2 * ratio / (1 + ratio), spread.GreatestShare.Likely, 0.01);
    }

    [Fact]
    public void A_resistor_for_each_lamp_ends_the_hogging()
    {
        Network Two(double shared, double own) => new(3, [new SourceElement("supply", 1, 0, 4.5, 0.5), new ResistorElement("shared", 1, 2, shared), new LampElement("a", 2, 0, UsualLamps.White, own), new LampElement("b", 2, 0, UsualLamps.White, own)]);
        NeighbourSpread Of(Network network) => MonteCarlo.Run(network, Spreads.Usual, [new Neighbours("pair", [2, 3], 3e-3)], [], 2000, 1, Cancel).Neighbours[0];
        var (shared, own) = (Of(Two(410, 0)), Of(Two(1e-3, 820)));
        Assert.True(shared.GreatestShare.High > 1.5);
        Assert.True(own.GreatestShare.High < 1.12);
        Assert.True(shared.Overloaded > 0.1);
        Assert.Equal(0, own.Overloaded);
        Assert.True(shared.PairDiffers > own.PairDiffers + 0.2);
    }

    // Source: CIE 15: L* 95 is a share of ((95 + 16)/116)³ = 0.8762. Equal currents and light of normal logarithm with deviation s: two lamps
    // differ by more than 5 with probability 2·(1 − Φ(−ln 0.8762/(√2·s))); s = 0.08 gives z = 1.168 and 0.243 (normal table).
    [Fact]
    public void Neighbours_differ_visibly_as_often_as_the_normal_table_says()
    {
        var network = new Network(2, [new SourceElement("supply", 1, 0, 4.5, 0.01), new LampElement("a", 1, 0, UsualLamps.White, 820), new LampElement("b", 1, 0, UsualLamps.White, 820)]);
        var spread = MonteCarlo.Run(network, None with { PieceLight = 0.08 }, [new Neighbours("pair", [1, 2])], [], 20_000, 1, Cancel).Neighbours[0];
        Assert.Equal(0.243, spread.PairDiffers, 0.01);
        Assert.Equal(spread.PairDiffers, spread.AnyDiffers, 1e-12);
    }

    // Source: three LEDs of each of four colours from one string, tests/Reference/led-forward-voltage-measured-spread.csv. With the spread taken as
    // usual, their squared deviations over its variance follow χ² of 8 degrees: 1 to 99 % of it lie between 1.646 and 20.09 (χ² table).
    [Fact]
    public void The_usual_spread_of_volts_agrees_with_a_measured_string()
    {
        var squares = ReferenceRows.Of("led-forward-voltage-measured-spread.csv").Sum(row =>
        {
            double[] volts = [row.Number("vf1_v"), row.Number("vf2_v"), row.Number("vf3_v")];
            return volts.Sum(v => (v - volts.Average()) * (v - volts.Average()));
        });
        Assert.InRange(squares / (Spreads.Usual.PieceVolts * Spreads.Usual.PieceVolts), 1.646, 20.09);
    }

    [Fact]
    public void An_unknown_resistor_shows_as_a_range_between_what_it_may_be()
    {
        var lamp = new LampElement("a", 1, 0, UsualLamps.White, 820);
        var network = new Network(2, [new SourceElement("supply", 1, 0, 4.5, 0.01), lamp]);
        var spreads = None with { Unknowns = [new UnknownPart(1, [lamp with { ResistorOhms = 470 }, lamp, lamp with { ResistorOhms = 1500 }])] };
        var amps = MonteCarlo.Run(network, spreads, [], [], 3000, 1, Cancel).LampAmps[0];
        Assert.Equal(UsualLamps.White.At(4.5, 1500).Amps, amps.Low, 2e-5);
        Assert.Equal(UsualLamps.White.At(4.5, 820).Amps, amps.Likely, 2e-5);
        Assert.Equal(UsualLamps.White.At(4.5, 470).Amps, amps.High, 6e-5);
    }

    [Fact]
    public void The_same_seed_gives_the_same_digits_on_any_number_of_cores()
    {
        var network = new Network(2, [new SourceElement("supply", 1, 0, 4.5, 0.6), .. Enumerable.Range(0, 6).Select(i => new LampElement($"lamp {i}", 1, 0, UsualLamps.White, 820))]);
        var one = MonteCarlo.Run(network, Spreads.Usual, [new Neighbours("all", [1, 2, 3, 4, 5, 6])], [Probe.Amps("pack", 0)], 1100, 7, Cancel);
        var two = MonteCarlo.Run(network, Spreads.Usual, [new Neighbours("all", [1, 2, 3, 4, 5, 6])], [Probe.Amps("pack", 0)], 1100, 7, Cancel);
        Assert.Equal(one.LampAmps, two.LampAmps);
        Assert.Equal(one.Neighbours[0], two.Neighbours[0]);
        Assert.Equal(one.Probes[0], two.Probes[0]);
    }

    // Source: independent tests of five LR6 makes, tests/Reference/battery-capacity-vs-load.csv: at 0.5 A 1.17 to 1.84 Ah, so ±22 % about the middle;
    // nine packs in ten lie within that of the middle run time, give or take the scatter of sixty draws.
    [Fact]
    public void Run_times_spread_about_as_much_as_makes_of_cells()
    {
        var cell = UsualCells.Of("LR6");
        var network = new Network(2, [new SourceElement("pack", 1, 0, 1, 1), .. Enumerable.Range(0, 30).Select(i => new LampElement($"lamp {i}", 1, 0, UsualLamps.White, 820))]);
        ImmutableArray<PackOnNetwork> packs = [new PackOnNetwork("pack", new PackLaw(cell, 3, 1, 0.2), CellState.At(cell, 1))];
        var hours = RunTimeSpread.Run(network, packs, Spreads.Usual, new DischargeSettings(7 * 3600.0, 200 * 3600, null, 0.03), 60, 1, cancel: Cancel);
        Assert.InRange(hours.Likely / 3600, 0.75 * 26, 1.25 * 26);
        Assert.InRange(hours.Low / hours.Likely, 0.65, 0.9);
        Assert.InRange(hours.High / hours.Likely, 1.1, 1.35);
    }

    [Fact]
    public void Parts_that_are_all_alike_last_as_long_as_one_run_says()
    {
        var cell = UsualCells.Of("LR6");
        var network = new Network(2, [new SourceElement("pack", 1, 0, 1, 1), .. Enumerable.Range(0, 20).Select(i => new LampElement($"lamp {i}", 1, 0, UsualLamps.White, 270))]);
        ImmutableArray<PackOnNetwork> packs = [new PackOnNetwork("pack", new PackLaw(cell, 3, 1, 0.2), CellState.At(cell, 1))];
        var settings = new DischargeSettings(7 * 3600.0, 200 * 3600, null, 0.03);
        var hours = RunTimeSpread.Run(network, packs, None, settings, 3, 1, cancel: Cancel);
        var end = EndOfLife.Of(network, packs, Discharge.Run(network, packs, settings))!;
        Assert.Equal(end.LitSeconds, hours.Low, 1e-6 * end.LitSeconds);
        Assert.Equal(end.LitSeconds, hours.High, 1e-6 * end.LitSeconds);
    }

    [Fact]
    public void Groups_probes_and_unknowns_that_are_not_there_are_refused()
    {
        var network = new Network(2, [new SourceElement("supply", 1, 0, 4.5, 0.6), new LampElement("a", 1, 0, UsualLamps.White, 820)]);
        Assert.Throws<ArgumentException>(() => MonteCarlo.Run(network, None, [new Neighbours("one", [1])], [], 1, 1, Cancel));
        Assert.Throws<ArgumentException>(() => MonteCarlo.Run(network, None, [new Neighbours("pack", [0, 1])], [], 1, 1, Cancel));
        Assert.Throws<ArgumentException>(() => MonteCarlo.Run(network, None, [], [Probe.Volts("far", 2, 0)], 1, 1, Cancel));
        Assert.Throws<ArgumentException>(() => MonteCarlo.Run(network, None with { Unknowns = [new UnknownPart(1, [])] }, [], [], 1, 1, Cancel));
    }
}
