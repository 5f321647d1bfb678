using Duskwright.Circuits.Wires;

namespace Duskwright.Circuits.Tests.Wires;

public sealed class ShortCircuitTests
{
    private const double RoomCelsius = 20;

    // Source: Lessons in Electric Circuits (T. R. Kuphaldt), vol. I, chapter 11: 10 V behind 0.2 Ω; printed 50 A. The least short counts 0.01 Ω.
    [Fact]
    public void A_dead_short_carries_the_open_voltage_over_the_source_resistance()
    {
        var verdict = ShortCircuit.Worst(10, 0.19, 0, 0.5e-3, RoomCelsius, null);
        Assert.Equal(50, verdict.Amps, 0.5);
        Assert.False(verdict.FuseOpens);
    }

    // Source: D. C. Kulshreshtha, Basic Electrical Engineering, example 4.9, p. 115: eight cells of 1.5 V, 0.75 Ω; most power given out 6.00 W.
    [Fact]
    public void The_short_that_matches_the_source_gets_hottest() =>
        Assert.Equal(6.00, ShortCircuit.Worst(12, 6, 0, 0.5e-3, RoomCelsius, null).HotSpotWatts, 0.005);

    [Fact]
    public void No_short_that_the_fuse_bears_is_worse_than_the_worst() =>
        Gen.Select(Gen.Double[3, 12], Gen.Double[0.1, 3], Gen.Double[0.05, 10], Gen.Double[0.1, 2], Gen.Double[0.1, 1], Gen.Bool).Sample(
            (volts, source, path, trip, fuseOhms, fused) =>
            {
                var fuse = fused ? new FuseLaw(trip / 2, trip, fuseOhms) : null;
                var verdict = ShortCircuit.Worst(volts, source, path, 0.25e-3, RoomCelsius, fuse);
                var around = source + path + (fuse?.Ohms ?? 0);
                for (var shortOhms = 0.01; shortOhms <= 100; shortOhms *= 1.07)
                {
                    var amps = volts / (around + shortOhms);
                    if (fuse is not null && amps > fuse.TripAmps)
                    {
                        continue;
                    }

                    if (amps > verdict.Amps + 1e-12 || amps * amps * shortOhms > verdict.HotSpotWatts + 1e-12)
                    {
                        return false;
                    }
                }

                return true;
            });

    // Source: tests/Reference/ptc-resettable-fuse.csv (a data sheet): 0.50 A hold, 1.00 A trip, 0.41 Ω at least. Three AA cells at 4.8 V, 0.9 Ω.
    [Fact]
    public void Just_below_trip_is_the_worst_that_a_fuse_leaves()
    {
        var row = ReferenceRows.Of("ptc-resettable-fuse.csv").Single(r => r["hold_current_a"] == "0.5");
        var fuse = new FuseLaw(row.Number("hold_current_a"), row.Number("trip_current_a"), row.Number("resistance_min_ohm"));
        var verdict = ShortCircuit.Worst(4.8, 0.9, 1.0, 0.25e-3, RoomCelsius, fuse);
        Assert.True(verdict.FuseOpens);
        Assert.Equal(1.00, verdict.Amps, 1e-9);
        Assert.Equal(4.8 - 0.9 - 1.0 - 0.41, verdict.ShortOhms, 1e-9);
    }

    [Fact]
    public void At_the_end_of_a_long_thin_wire_no_fuse_opens()
    {
        var fuse = new FuseLaw(0.5, 1, 0.41);
        var verdict = ShortCircuit.Worst(4.8, 0.9, 5.3, 0.1e-3, RoomCelsius, fuse);
        Assert.False(verdict.FuseOpens);
        Assert.Equal(4.8 / (0.9 + 5.3 + 0.41 + 0.01), verdict.Amps, 1e-9);
    }
}
