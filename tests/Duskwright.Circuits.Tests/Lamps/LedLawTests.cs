using Duskwright.Circuits.Lamps;

namespace Duskwright.Circuits.Tests.Lamps;

public sealed class LedLawTests
{
    private static readonly Gen<LedLaw> Laws =
        from volts in Gen.Double[1.5, 3.5]
        from amps in Gen.Double[1e-4, 2e-2]
        from ideality in Gen.Double[1, 7.5]
        from ohms in Gen.Double[0, 60]
        select new LedLaw(volts, amps, ideality, ohms);

    // Source: public diode cards for LEDs, tests/Reference/led-spice-models.csv; the voltages in led-operating-points-derived.csv were
    // computed from those cards independently of this code (derived, no measurement), printed to 0.1 mV, tolerance 0.5 mV.
    [Theory]
    [MemberData(nameof(DerivedPoints))]
    public void A_diode_card_has_the_voltage_of_the_diode_law(string model, double amps, double volts) =>
        Assert.Equal(volts, UsualLamps.CardOf(model).VoltsAt(amps), 0.0005);

    [Theory]
    [MemberData(nameof(DerivedPoints))]
    public void A_diode_card_has_the_current_of_the_diode_law(string model, double amps, double volts)
    {
        // Half a millivolt in the printed voltage is at most 1.1 % in the current at n·V_T = 0.0465 V.
        var point = UsualLamps.CardOf(model).At(volts, 0);
        Assert.Equal(amps, point.Amps, 0.011 * amps);
    }

    public static TheoryData<string, double, double> DerivedPoints()
    {
        var rows = new TheoryData<string, double, double>();
        foreach (var row in ReferenceRows.Of("led-operating-points-derived.csv"))
        {
            rows.Add(row["model"], row.Number("current_a"), row.Number("forward_voltage_v"));
        }

        return rows;
    }

    // Source: D. A. Neamen, Electronic Circuit Analysis and Design, example 1.5, p. 17: I_S = 1e-14 A, V_T = 0.026 V, 0.7 V; printed 4.93 mA.
    [Fact]
    public void A_diode_at_seven_tenths_of_a_volt_carries_the_textbook_current()
    {
        var diode = UsualLamps.Card(1e-14, 1, 0, 0.026 / LedLaw.BoltzmannOverCharge);
        Assert.Equal(4.93e-3, diode.At(0.7, 0).Amps, 5e-6);
    }

    // Source: D. A. Neamen, example 1.7, p. 28: threshold 0.6 V, 10 Ω, behind 2 kΩ on 5 V; printed 2.19 mA and 0.62 V.
    [Fact]
    public void A_straight_line_diode_behind_a_resistor_carries_the_textbook_current()
    {
        var point = UsualLamps.Fixed(0.6, seriesOhms: 10).At(5, 2000);
        Assert.Equal(2.19e-3, point.Amps, 5e-6);
        Assert.Equal(0.62, point.LampVolts, 0.005);
    }

    // Source: Kakani and Bhandari, Electronic Devices and Circuits, example 3.19, p. 193: 40 mcd per mA; 1000 mcd needs 25 mA.
    [Fact]
    public void Light_follows_the_current()
    {
        var law = new LedLaw(2.7, 1e-3, 2.18, 12);
        Assert.Equal(1000.0 / 40, law.At(law.VoltsAt(25e-3), 0).Light, 0.01);
    }

    [Fact]
    public void The_voltage_across_lamp_and_resistor_is_the_branchs_voltage() =>
        Gen.Select(Laws, Gen.Double[1.5, 100], Gen.Double[1, 10_000]).Sample((law, volts, ohms) =>
        {
            var point = law.At(volts, ohms);
            var lampVolts = law.VoltsAt(point.LitAmps);
            return Math.Abs(lampVolts + (point.LitAmps * ohms) - volts) < 1e-9 && Math.Abs(lampVolts - point.LampVolts) < 1e-9;
        });

    [Fact]
    public void More_volts_give_more_current_from_minus_50_to_100_volts() =>
        Gen.Select(Laws, Gen.Double[-50, 100], Gen.Double[1e-6, 1], Gen.Double[0, 10_000]).Sample((law, volts, more, ohms) =>
        {
            var (low, high) = (law.At(volts, ohms), law.At(volts + more, ohms));
            return high.Amps > low.Amps && low.Siemens > 0 && double.IsFinite(high.Amps) && double.IsFinite(high.Siemens);
        });

    [Fact]
    public void The_slope_is_the_change_of_current_with_voltage() =>
        Gen.Select(Laws, Gen.Double[1, 6], Gen.Double[10, 2000]).Sample((law, volts, ohms) =>
        {
            const double Step = 1e-5;
            var measured = (law.At(volts + Step, ohms).Amps - law.At(volts - Step, ohms).Amps) / (2 * Step);
            var slope = law.At(volts, ohms).Siemens;
            return Math.Abs(measured - slope) <= (1e-5 * slope) + 1e-15;
        });

    [Fact]
    public void Reversed_it_passes_less_than_a_nanoampere()
    {
        var point = UsualLamps.White.At(-12, 1000);
        Assert.InRange(point.Amps, -1e-9, 0);
        Assert.Equal(0, point.Light, 1e-9);
    }

    // Source: common practice, no source: white on 4.5 V takes 2.1 mA behind 820 Ω, 1.8 mA behind 1 kΩ, on brand-new cells (4.8 V) 2.5 mA.
    [Theory]
    [InlineData(4.5, 820, 2.1)]
    [InlineData(4.5, 1000, 1.8)]
    [InlineData(4.8, 820, 2.5)]
    public void A_white_lamp_takes_the_usual_current(double volts, double ohms, double milliamperes) =>
        Assert.Equal(milliamperes, UsualLamps.White.At(volts, ohms).Amps * 1e3, 0.1);
}
