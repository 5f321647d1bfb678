using System.Collections.Immutable;
using Duskwright.Circuits.Fitting;
using Duskwright.Circuits.Lamps;

namespace Duskwright.Circuits.Tests.Fitting;

public sealed class LampFitTests
{
    private const int Trials = 2000;

    // Of 2000 trials nine tenths are 1800 ± 13, so three deviations are 2 %.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(5)]
    public void Nine_ranges_in_ten_hold_the_lamp_that_was_measured(int readings)
    {
        var random = new Random(readings);
        var (voltsHeld, ampsHeld) = (0, 0);
        for (var trial = 0; trial < Trials; trial++)
        {
            var lamp = Drawn(random);
            var fit = LampFit.Of([.. ((double[])[2e-3, 10e-3, 0.5e-3, 5e-3, 15e-3]).Take(readings).Select(a => Read(random, lamp, a))], LampPrior.White);
            voltsHeld += Holds(fit.VoltsAt(4e-3), lamp.VoltsAt(4e-3)) ? 1 : 0;
            ampsHeld += Holds(fit.AmpsBehind(4.5, 270), lamp.At(4.5, 270).Amps) ? 1 : 0;
        }

        Assert.InRange(voltsHeld / (double)Trials, 0.88, 0.92);
        Assert.InRange(ampsHeld / (double)Trials, 0.87, 0.93);
    }

    // Source: a hobby experiment, tests/Reference/led-measured-operating-points.csv, rounded to 1 mA and 0.1 V by its author. Three rows are
    // fitted, the others foretold: each lies in the range, widened by half of its last digit.
    [Fact]
    public void Three_published_readings_of_a_lamp_foretell_the_others()
    {
        var rows = ReferenceRows.Of("led-measured-operating-points.csv");
        var fit = LampFit.Of([.. rows.Where(r => r["series_resistance_ohm"] is "82" or "140" or "330").Select(Rounded)], LampPrior.White);
        Assert.All(rows, row =>
        {
            var range = fit.VoltsAt(row.Number("led_current_a"));
            Assert.InRange(row.Number("led_vf_v"), range.Low - 0.05, range.High + 0.05);
            Assert.True(range.High - range.Low < 0.2);
        });
    }

    [Fact]
    public void A_further_reading_never_widens_the_range()
    {
        var random = new Random(5);
        var lamp = Drawn(random);
        var readings = ((double[])[2e-3, 10e-3, 0.5e-3]).Select(a => Read(random, lamp, a)).ToImmutableArray();
        double Width(int count) => LampFit.Of([.. readings.Take(count)], LampPrior.White).VoltsAt(5e-3) is var e ? e.High - e.Low : 0;
        Assert.True(Width(0) > Width(1) && Width(1) > Width(2) && Width(2) > Width(3));
    }

    [Fact]
    public void Readings_without_current_or_error_are_refused()
    {
        Assert.Throws<ArgumentException>(() => LampFit.Of([new LampReading(0, 2, 0, 0.01)], LampPrior.Red));
        Assert.Throws<ArgumentException>(() => LampFit.Of([new LampReading(1e-3, 2, 0, 0)], LampPrior.Red));
    }

    private static bool Holds(Estimate range, double value) => value >= range.Low && value <= range.High;

    private static LampReading Rounded(IReadOnlyDictionary<string, string> row) =>
        new(row.Number("led_current_a"), row.Number("led_vf_v"), 1e-3 / Math.Sqrt(12), 0.1 / Math.Sqrt(12));

    private static LedLaw Drawn(Random random)
    {
        var prior = LampPrior.White;
        return new LedLaw(
            prior.RefVolts + (prior.RefVoltsSigma * Normal(random)),
            LampPrior.RefAmps,
            prior.Ideality + (prior.IdealitySigma * Normal(random)),
            Math.Max(0, prior.SeriesOhms + (prior.SeriesOhmsSigma * Normal(random))));
    }

    private static LampReading Read(Random random, LedLaw lamp, double amps)
    {
        const double VoltsSigma = 0.005;
        var shown = amps * (1 + (0.01 * Normal(random)));
        return new LampReading(shown, lamp.VoltsAt(amps) + (VoltsSigma * Normal(random)), 0.01 * amps, VoltsSigma);
    }

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
