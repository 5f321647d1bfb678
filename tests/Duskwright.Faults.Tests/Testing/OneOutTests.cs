using Duskwright.Circuits.Metering;
using Duskwright.Circuits.Networks;
using Duskwright.Faults.Testing;

namespace Duskwright.Faults.Tests.Testing;

/// <summary>Whether a reading tells all well from one lamp out. Lamps side by side add their currents: Kirchhoff.</summary>
public class OneOutTests
{
    [Theory]
    [InlineData(2, true)]
    [InlineData(40, false)]
    public void One_of_two_lamps_out_halves_the_reading_and_one_of_forty_is_lost_in_the_spread(int lamps, bool tells)
    {
        var one = OneOut.Of(House(lamps), Meter.Usual)!;
        Assert.Equal(tells, one.Tells);
        Assert.Equal((lamps - 1.0) / lamps, one.Out.LikelyAmps / one.Healthy.LikelyAmps, 0.03);
        Assert.True(one.Healthy.LeastAmps < one.Healthy.LikelyAmps && one.Healthy.LikelyAmps < one.Healthy.MostAmps);
    }

    [Fact]
    public void A_missing_lamp_passes_more_often_the_more_lamps_there_are()
    {
        var shares = new[] { 2, 4, 8, 16, 32 }.Select(n => OneOut.Of(House(n), Meter.Usual)!.PassShare).ToList();
        Assert.Equal(shares.Order(), shares);
        Assert.True(shares[0] < 0.001 && shares[^1] > 0.2);
    }

    [Fact]
    public void A_circuit_in_which_nothing_lights_has_no_lamp_to_miss() =>
        Assert.Null(OneOut.Of(new TestCircuit(new Network(2, [new SourceElement("pack", 1, 0, 4.5, 0.5), new LampElement("turned", 0, 1, Hamlet.White, 820)]), 0, []), Meter.Usual));

    // Source: printed table of the standard normal distribution: 0.5 % lie outside ±2.807.
    [Fact]
    public void Of_healthy_circuits_one_in_two_hundred_lies_outside_the_band()
    {
        var range = new MeterRange(0.02, 2_000_000, 0, 0, 0);
        var prediction = new Prediction(0.005, System.Collections.Immutable.ImmutableDictionary<string, double>.Empty.Add("lamps", 0.05), []);
        Assert.Equal(0.995, TestBand.Of(prediction, range).PassShare(prediction, range), 2e-4);
    }

    // A lamp lit 0.65 of the time that draws its state anew five times a second: dark in 0.35 of draws; 0.65^k < 0.01 from k = 10.69 (by hand).
    [Fact]
    public void Flickering_lamps_are_watched_until_each_has_been_lit_and_dark()
    {
        Assert.Equal(10.69 / 5, FlickerWatch.Seconds(1, 0.65, 5), 0.002);
        Assert.True(FlickerWatch.Seconds(4, 0.65, 5) > FlickerWatch.Seconds(1, 0.65, 5));
        Assert.Equal(Math.Sqrt(0.65 * 0.35 / 50), FlickerWatch.ShareDeviation(0.65, 5, 10), 1e-12);
    }

    private static TestCircuit House(int lamps)
    {
        var network = Hamlet.Of(820, lamps).Network;
        var factors = Enumerable.Range(0, network.Elements.Length).Where(i => network.Elements[i] is LampElement).SelectMany(i =>
        {
            var lamp = (LampElement)network.Elements[i];
            return new[]
            {
                new Factor($"volts of {lamp.Name}", [(i, lamp with { Law = Hamlet.White with { RefVolts = 2.8 } })], [(i, lamp with { Law = Hamlet.White with { RefVolts = 2.6 } })], 1, true),
                new Factor($"resistor of {lamp.Name}", [(i, lamp with { ResistorOhms = 820 * 1.05 })], [(i, lamp with { ResistorOhms = 820 * 0.95 })], 2, true),
            };
        });
        return new TestCircuit(network, 0, [.. factors]);
    }
}
