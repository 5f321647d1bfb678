using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Tests.Quantities;

/// <summary>Operators exist only where physics has a law; each law has its test.</summary>
public class LawTests
{
    [Fact]
    public void Ohms_law_gives_the_voltage_across_a_resistor() =>
        Assert.Equal(1.722, (Current.FromMilliamperes(2.1) * Resistance.FromOhms(820)).Volts, 9);

    [Fact]
    public void Ohms_law_gives_the_current_through_a_resistor()
    {
        // Common practice, no source: (4.5 V − 2.8 V) over 820 Ω is 2.1 mA to the nearest 0.1.
        Assert.Equal(2.1, ((Voltage.FromVolts(4.5) - Voltage.FromVolts(2.8)) / Resistance.FromOhms(820)).Milliamperes, 1);
    }

    [Fact]
    public void Ohms_law_gives_the_resistor_for_a_current()
    {
        // Common practice, no source: (4.5 V − 2.8 V) at 2 mA asks for 850 Ω.
        Assert.Equal(850, ((Voltage.FromVolts(4.5) - Voltage.FromVolts(2.8)) / Current.FromMilliamperes(2)).Ohms, 9);
    }

    [Fact]
    public void Power_is_voltage_times_current()
    {
        // Common practice, no source: 1.7 V at 2.1 mA in the resistor is about 4 mW.
        Assert.Equal(0.004, (Voltage.FromVolts(1.7) * Current.FromMilliamperes(2.1)).Watts, 3);
    }

    [Fact]
    public void A_charge_is_a_current_for_a_time() =>
        Assert.Equal(0.4, (Current.FromMilliamperes(50) * Duration.FromHours(8)).AmpereHours, 9);

    [Fact]
    public void A_charge_lasts_as_long_as_a_current_takes_to_move_it() =>
        Assert.Equal(40, (Charge.FromAmpereHours(2) / Current.FromMilliamperes(50)).Hours, 9);

    [Fact]
    public void An_ampere_hour_is_3600_coulombs() => Assert.Equal(3600, Charge.FromAmpereHours(1).Coulombs);

    [Fact]
    public void Half_a_turn_is_pi() => Assert.Equal(Math.PI, Angle.FromDegrees(180).Radians, 12);

    [Fact]
    public void Ninety_minutes_are_an_hour_and_a_half() =>
        Assert.Equal(Duration.FromHours(1.5), Duration.FromMinutes(90));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void A_quantity_is_a_finite_number(double value)
    {
        var thrown = Assert.Throws<ArgumentOutOfRangeException>(() => Voltage.FromVolts(value));
        Assert.Contains("A value in V must be a finite number.", thrown.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_quantity_goes_out_and_comes_back_to_the_last_digit() =>
        Gen.Double[-1e9, 1e9].Sample(value => Assert.Equal(value, Length.FromExchange(Length.FromMillimetres(value).Exchange).Millimetres));

    [Fact]
    public void A_resistor_of_nothing_is_said_to_be_none() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Duskwright.Plan.Document.ResistorChoice.Of(default));
}
