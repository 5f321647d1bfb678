using Duskwright.Circuits.Fitting;
using Duskwright.Circuits.Supplies;
using Duskwright.Circuits.Tests.Supplies;

namespace Duskwright.Circuits.Tests.Fitting;

public sealed class PackFitTests
{
    private const int Trials = 300;

    private static readonly PackLaw ThreeAa = new(UsualCells.Of("LR6"), 3, 1, 0.2);

    // Of 300 trials nine tenths are 270 ± 5, so three deviations are 5 %.
    [Fact]
    public void Nine_ranges_in_ten_hold_what_is_left_in_a_pack()
    {
        var random = new Random(3);
        var (chargeHeld, ohmsHeld) = (0, 0);
        for (var trial = 0; trial < Trials; trial++)
        {
            var left = random.NextDouble();
            var state = CellState.At(ThreeAa.Cell, left);
            var ohms = ((ThreeAa.Ohms(state) - ThreeAa.ExtraOhms) * Math.Exp(PackFit.OhmsLogSigma * Normal(random))) + ThreeAa.ExtraOhms;
            var open = ThreeAa.OpenVolts(state) + (3 * PackFit.OpenVoltsSigma * Normal(random));
            PackReading Read(double amps) => new(amps, open - (amps * ohms) + (0.003 * Normal(random)), 0.003);
            var fit = PackFit.Of(ThreeAa, [Read(0), Read(0.15)]);
            chargeHeld += left >= fit.ChargeLeft.Low && left <= fit.ChargeLeft.High ? 1 : 0;
            ohmsHeld += ohms >= fit.Ohms.Low && ohms <= fit.Ohms.High ? 1 : 0;
        }

        Assert.InRange(chargeHeld / (double)Trials, 0.85, 0.95);
        Assert.InRange(ohmsHeld / (double)Trials, 0.85, 0.95);
    }

    // Source: J. Bird, Electrical Circuit Theory and Technology, example 4.3, p. 36, tests/Reference/worked-examples.csv BAT-17: 25 V open and
    // 24 V at 10 A are 0.1 Ω. Here on cells whose curve is flat and whose resistance is about that, so the readings decide.
    [Fact]
    public void Open_and_loaded_volts_tell_the_resistance_as_in_the_textbook()
    {
        var row = ReferenceRows.Of("worked-examples.csv").Single(r => r["example_id"] == "BAT-17");
        var cell = new CellLaw(36000, 0.8, 1e-4, [new(1, 25.01, 0.11), new(0, 24.99, 0.11)], 20);
        var fit = PackFit.Of(new PackLaw(cell, 1, 1, 0), [new PackReading(0, 25, 0.01), new PackReading(10, 24, 0.01)]);
        Assert.Equal(row.Number("expected_value"), fit.Ohms.Likely, 0.002);
        Assert.InRange(row.Number("expected_value"), fit.Ohms.Low, fit.Ohms.High);
    }

    [Fact]
    public void Readings_far_from_any_curve_still_give_a_range()
    {
        var fit = PackFit.Of(ThreeAa, [new PackReading(0, 1.0, 0.003)]);
        Assert.True(fit.ChargeLeft.High < 0.05);
    }

    [Fact]
    public void A_pack_without_readings_is_refused() => Assert.Throws<ArgumentException>(() => PackFit.Of(ThreeAa, []));

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
