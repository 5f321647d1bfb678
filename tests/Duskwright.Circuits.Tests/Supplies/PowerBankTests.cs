using Duskwright.Circuits.Supplies;

namespace Duskwright.Circuits.Tests.Supplies;

/// <summary>
/// Source: common practice, no source: a 10 Ah bank (6.3 Ah at 5 V) with 18 lamps of 40 mA in all falls asleep; 82 Ω adds 61 mA and 0.3 W, wants
/// a 1 W part, and the bank lasts about 63 h instead of 157 h. Awake for sure is twice the usual 50 mA.
/// </summary>
public sealed class PowerBankTests
{
    private static readonly PowerBank Bank = new(5, 0.1, 6.3 * 3600);

    [Fact]
    public void Eighteen_lamps_let_the_bank_fall_asleep_and_82_ohms_keep_it_awake()
    {
        Assert.True(Bank.MaySleep(0.040));
        Assert.False(Bank.With(0.040, 82).MaySleep);
        Assert.Equal(157, Bank.With(0.040, double.PositiveInfinity).Seconds / 3600, 1.0);
        Assert.Equal(63, Bank.With(0.040, 82).Seconds / 3600, 1.0);
        Assert.Equal(0.101, Bank.With(0.040, 82).Amps, 5e-4);
        Assert.Equal(0.3, Bank.With(0.040, 82).BleedWatts, 0.05);
    }

    // The largest value of E12 under 83.3 Ω is 82 Ω (IEC 60063).
    [Fact]
    public void The_resistor_of_the_trade_is_the_next_one_under_the_limit() => Assert.InRange(Bank.MostBleedOhms(0.040), 82, 100);

    [Fact]
    public void Lamps_that_surely_keep_it_awake_need_no_resistor() => Assert.Equal(double.PositiveInfinity, Bank.MostBleedOhms(0.1));

    // Source: a hobby electronics page, tests/Reference/usb-supply.csv: 10 to 20 mA was treated as no load.
    [Fact]
    public void A_load_that_was_published_as_not_seen_lets_it_sleep() =>
        Assert.True(Bank.MaySleep(ReferenceRows.Of("usb-supply.csv").Single(r => r["name"] == "power_bank_load_not_seen_high").Number("value")));
}
