using System.Collections.Immutable;
using Duskwright.Light.Lamps;
using Duskwright.Light.Rooms;

namespace Duskwright.Light.Tests.Rooms;

/// <summary>Rooms as makers build them: 15 to 120 mm long, matt black to white, one to three lamps of any lobe, one to three panes.</summary>
internal static class RandomRoom
{
    internal static LitRoom Of(Random random)
    {
        double Between(double low, double high) => low + ((high - low) * random.NextDouble());
        var (width, depth, height) = (Between(0.02, 0.12), Between(0.015, 0.08), Between(0.02, 0.06));
        var finish = new[] { 0.06, 0.3, 0.55, 0.8 };
        var even = random.Next(2) == 0;
        var one = finish[random.Next(4)];
        var box = new RoomBox(width, depth, height, [.. Enumerable.Range(0, 6).Select(_ => even ? one : finish[random.Next(4)])]);
        var lamps = Enumerable.Range(0, random.Next(1, 4)).Select(_ => new RoomLamp(
            new LampLobe(Between(0.01, 0.5), new[] { 0.5, 1.05, 2.1, 2.4, 6 }[random.Next(5)]),
            new(width * Between(0.2, 0.8), depth * Between(0.3, 0.8), height * Between(0.2, 0.8)),
            new(Between(-1, 1), Between(-1, 1), Between(-1, 1)))).ToImmutableArray();
        return new LitRoom(box, lamps, Panes(random, box));
    }

    private static ImmutableArray<RoomPane> Panes(Random random, RoomBox box)
    {
        BoxFace[] walls = [BoxFace.Front, BoxFace.Right, BoxFace.Back];
        return [.. walls.Take(random.Next(1, 4)).Select(wall =>
        {
            var (wide, high) = (wall == BoxFace.Right ? box.DepthMetres : box.WidthMetres, box.HeightMetres);
            var (left, bottom) = (wide * (0.1 + (0.3 * random.NextDouble())), high * (0.1 + (0.3 * random.NextDouble())));
            var opening = new Rectangle(left, left + (wide * (0.15 + (0.3 * random.NextDouble()))), bottom, bottom + (high * (0.2 + (0.4 * random.NextDouble()))));
            return new RoomPane(wall, opening, new Glazing(0.5 + (0.4 * random.NextDouble()), random.NextDouble(), 0.1 * random.NextDouble()));
        })];
    }
}
