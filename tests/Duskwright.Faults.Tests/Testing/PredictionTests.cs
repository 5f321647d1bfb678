using System.Collections.Immutable;
using Duskwright.Circuits.Metering;
using Duskwright.Circuits.Networks;
using Duskwright.Faults.Testing;

namespace Duskwright.Faults.Tests.Testing;

/// <summary>Bands of readings, held against laws that need no engine.</summary>
public class PredictionTests
{
    // Source: JCGM 100:2008, Evaluation of measurement data, equation 10: independent inputs add in variance, each times its slope.
    // A current V/R with 2 % of V and 5 % of R has √(0.02² + 0.05²) = 5.385 % (first order, so to its third digit).
    [Fact]
    public void Volts_and_ohms_that_are_not_known_exactly_add_in_variance()
    {
        var prediction = Prediction.Of(Ohmic(Ohms("resistor", 0.05), Volts(0.02)));
        Assert.Equal(0.0045, prediction.Amps, 1e-9);
        Assert.Equal(0.05385, Math.Sqrt(prediction.Slopes.Values.Sum(s => s * s)), 1e-4);
    }

    // Source: Bishop, Pattern Recognition and Machine Learning, 2006, equations 2.81 and 2.82, worked by hand for two
    // readings of one resistor: what is read 4 % high is expected 4 % × s²/(s² + d² + e²) high, s = 5 %, d = 2 %, e = 1 %/2.
    [Fact]
    public void A_reading_moves_the_next_expectation_by_the_share_of_the_spread_that_lasts()
    {
        var first = Prediction.Of(Ohmic(Ohms("resistor", 0.05)));
        var (s, d, e) = (0.05, Prediction.Discrepancy, 0.01 / 2 / 1.04);
        var next = first.Given(first, 1.04 * first.Amps, 0.01 * first.Amps);
        var gain = s * s / ((s * s) + (d * d) + (e * e));
        Assert.Equal(gain * Math.Log(1.04), Math.Log(next.Amps / first.Amps), 1e-4);
        Assert.Equal(Math.Sqrt((s * s * (1 - gain)) + (d * d)), next.Deviation, 1e-4);
    }

    [Fact]
    public void What_does_not_last_until_the_next_reading_is_not_learnt_from_it()
    {
        var first = Prediction.Of(Ohmic(Volts(0.05)));
        var next = first.Given(first, 1.1 * first.Amps, 0);
        Assert.Equal(first.Amps, next.Amps, 1e-12);
        Assert.Equal(first.Deviation, next.Deviation, 1e-12);
    }

    [Fact]
    public void With_the_volts_read_the_cells_do_not_matter_any_more()
    {
        var test = Ohmic(Ohms("resistor", 0.05), Volts(0.2)).AtVolts(0, 4.2, 0.03);
        var prediction = Prediction.Of(test);
        Assert.Equal(4.2 / 1000, prediction.Amps, 1e-9);
        Assert.DoesNotContain("volts", prediction.Slopes.Keys);
        Assert.Equal(0.03 / 4.2 / 2, prediction.Slopes["volts read at pack"], 1e-5);
    }

    // A meter's burden is a resistance in series: Ohm's law.
    [Fact]
    public void The_burden_of_the_meter_is_in_what_it_is_expected_to_read() =>
        Assert.Equal(4.5 / 1100, Prediction.Of(Ohmic().With(new MeterRange(0.02, 2000, 100, 0.01, 1))).Amps, 1e-9);

    [Fact]
    public void Houses_side_by_side_share_what_they_have_in_common_and_level_out_the_rest()
    {
        var one = new Prediction(0.01, ImmutableDictionary<string, double>.Empty.Add("pack", 0.03).Add("own a", 0.04), []);
        var other = new Prediction(0.01, ImmutableDictionary<string, double>.Empty.Add("pack", 0.03).Add("own b", 0.04), []);
        var both = Prediction.Together([one, other]);
        Assert.Equal(0.02, both.Amps, 1e-12);
        Assert.Equal(0.03, both.Slopes["pack"], 1e-12);
        Assert.Equal(0.02, both.Slopes["own a"], 1e-12);
    }

    private static TestCircuit Ohmic(params Factor[] factors) => new(
        new Network(2, [new SourceElement("pack", 1, 0, 4.5, 1e-6), new ResistorElement("resistor", 1, 0, 1000)]), 0, [.. factors]);

    private static Factor Ohms(string name, double share) => new(
        name, [(1, new ResistorElement("resistor", 1, 0, 1000 * (1 + share)))], [(1, new ResistorElement("resistor", 1, 0, 1000 * (1 - share)))], 1, Lasts: true);

    private static Factor Volts(double share) => new(
        "volts", [(0, new SourceElement("pack", 1, 0, 4.5 * (1 - share), 1e-6))], [(0, new SourceElement("pack", 1, 0, 4.5 * (1 + share), 1e-6))], 1, Lasts: false);
}
