using Duskwright.Circuits.Lamps;
using Duskwright.Circuits.Networks;
using Duskwright.Faults.Finding;
using Duskwright.Faults.Signatures;

namespace Duskwright.Faults.Tests.Finding;

/// <summary>A meter at a pair taken off the bank. The hamlet's pair has 0.5 Ω in each wire and its lamps 820 Ω each.</summary>
public sealed class PairMeterTests
{
    private const double Misread = 0.03;
    private static readonly Tagging.TaggedNetwork House = Hamlet.Of(820, 3);

    // Amber: V = 1.75 + 0.05·ln(I/1 mA) + 8 Ω·(I − 1 mA), common practice, no source.
    private static readonly LedLaw Amber = new(1.75, 1e-3, 0.05 / (LedLaw.BoltzmannOverCharge * LedLaw.RoomKelvin), 8);

    // An ohmmeter drives too little to light an LED: common practice, no source.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Sound_leds_show_no_number_of_ohms_either_way(bool reversed) => Assert.Null(PairMeter.Shows(House.Network, 0, PairRange.Ohms, reversed));

    // Ohm's law: two wires of 0.5 Ω and the touch.
    [Fact]
    public void An_ohm_or_so_is_the_wire_of_a_pair_that_touches()
    {
        var finding = PairMeter.Weigh(House, [new PairReading(PairRange.Ohms, false, 1.1)], Misread);
        Assert.Equal((FaultKind.PairShorted, "pair of A"), finding.Faulty.MaxBy(f => f.Value).Key);
        Assert.True(finding.Condemns);
    }

    // Ohm's law: what is left is the lamp's own resistor.
    [Fact]
    public void The_value_of_a_lamps_resistor_is_a_lamp_whose_leads_touch()
    {
        var finding = PairMeter.Weigh(House, [new PairReading(PairRange.Ohms, false, 821)], Misread);
        Assert.Equal(FaultKind.LampShorted, finding.Faulty.MaxBy(f => f.Value).Key.Kind);
        Assert.True(finding.Of(new Fault(FaultKind.PairShorted, "pair of A", 0)) < 0.1 * finding.Of(new Fault(FaultKind.LampShorted, "A1", 0)));
    }

    // An LED conducts one way: common practice, no source. Amber needs 1.6 to 1.9 V at a milliampere or less.
    [Fact]
    public void Amber_shows_its_volts_one_way_and_none_the_other()
    {
        var amber = Lit(Amber, 0);
        Assert.InRange(PairMeter.Shows(amber, 0, PairRange.Diode, false)!.Value, 1.5, 1.9);
        Assert.Null(PairMeter.Shows(amber, 0, PairRange.Diode, true));
    }

    [Fact]
    public void Nothing_read_as_expected_condemns_nothing() =>
        Assert.False(PairMeter.Weigh(House, [new PairReading(PairRange.Ohms, false, null)], Misread).Condemns);

    [Fact]
    public void A_fault_behind_another_pair_agrees_as_sound_parts_do() =>
        Assert.Equal(1, PairMeter.Weigh(House, [new PairReading(PairRange.Ohms, false, 1.1)], Misread).Of(new Fault(FaultKind.PairShorted, "pair of Z", 9)));

    // Ohm's law: 0.5 Ω there and 0.5 Ω back where the wires touch at the far end; an ohmmeter drives too little to light an LED (common practice, no source).
    [Fact]
    public void A_pair_to_be_read_is_told_with_what_touching_wires_and_open_joints_would_show()
    {
        var pair = PairToRead.Of("pair of A", House);
        Assert.Null(pair.Sound);
        Assert.Equal(1.0, pair.Shows(new Fault(FaultKind.PairShorted, "pair of A", 0))!.Value, 0.05);
        Assert.Null(pair.Shows(new Fault(FaultKind.PairOpen, "pair of A", 0)));
        Assert.Null(pair.Shows(new Fault(FaultKind.PairShorted, "pair of Z", 9)));
    }

    // By hand: three lamps behind 820 Ω on three fresh cells take (4.8 − 2.76) V ÷ 820 Ω = 2.5 mA each, 7.5 mA together; an open pair takes nothing.
    [Theory]
    [InlineData(7.4e-3, false)]
    [InlineData(0.0, true)]
    public void The_current_with_one_switch_on_tells_an_open_pair_behind_it_from_sound_parts(double amps, bool open)
    {
        var finding = GroupMeter.Weigh(SignatureTable.Of(House), new AmpsReading(amps - 0.5e-3, amps + 0.5e-3), FaultPriors.Usual);
        var ratio = finding.Of(new Fault(FaultKind.PairOpen, "pair of A", 0));
        Assert.True(open ? ratio > 10 : ratio < 0.1, $"{ratio}");
        Assert.Equal(1, finding.Of(new Fault(FaultKind.PairOpen, "pair of Z", 9)));
    }

    private static Network Lit(LedLaw law, double ohms) => new(House.Network.NodeCount, [.. House.Network.Elements.Select(e => e is LampElement lamp ? lamp with { Law = law, ResistorOhms = ohms } : e)]);
}
