using Duskwright.Light.Rooms;

namespace Duskwright.Light.Tests.Rooms;

public class RandomRoomTests
{
    private const int Rooms = 100;

    // What RoomMesh.Usual states, and what is left of 2 % for three standard errors of the tracer.
    private const double MeshError = 0.008;
    private const double NoiseShare = 0.012;
    private const int MostRays = 600_000;

    [Fact]
    public void A_ray_tracer_that_shares_nothing_with_radiosity_finds_the_same_light_on_the_panes()
    {
        var cases = new (double Share, double Noise)[Rooms];
        Parallel.For(0, Rooms, seed =>
        {
            var random = new Random(4200 + seed);
            var room = RandomRoom.Of(random);
            var pane = random.Next(room.Panes.Length);
            var transfer = RoomTransfer.Of(room, RoomMesh.Usual);
            var lux = transfer.Lamps.Sum(l => transfer.Panes[pane].Mean(l.Panes[pane].Lux));
            var tracer = new RayTracer(room, pane, seed);
            var rays = 8_000;
            var (traced, error) = tracer.Trace(rays);
            while (3 * error > NoiseShare * traced && rays < MostRays)
            {
                rays = Math.Min(MostRays, (int)(1.15 * rays * Math.Pow(3 * error / (NoiseShare * traced), 2)));
                (traced, error) = tracer.Trace(rays);
            }

            cases[seed] = (Math.Abs(lux - traced) / traced, 3 * error / traced);
        });
        Assert.All(cases, c => Assert.InRange(c.Noise, 0, NoiseShare));
        Assert.All(cases, c => Assert.InRange(c.Share, 0, c.Noise + MeshError));
        Assert.InRange(cases.Select(c => c.Share).Order().ElementAt(Rooms / 2), 0, 0.004);
    }

    [Fact]
    public void No_light_is_lost_or_made_in_a_room()
    {
        // Before any normalisation: out through the panes plus swallowed is what the lamps send, to 0.1 %.
        for (var seed = 0; seed < Rooms; seed++)
        {
            var room = RandomRoom.Of(new Random(seed));
            var transfer = RoomTransfer.Of(room, RoomMesh.Usual);
            foreach (var (lamp, reach) in room.Lamps.Zip(transfer.Lamps))
            {
                var outside = room.Panes.Select((pane, p) => pane.Sheet.Transmittance * pane.Opening.Area * transfer.Panes[p].Mean(reach.Panes[p].Lux)).Sum();
                Assert.Equal(lamp.Lobe.Lumens, outside + reach.AbsorbedLumens, lamp.Lobe.Lumens * 1e-3);
            }
        }
    }
}
