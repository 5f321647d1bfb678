using Duskwright.Light.Rooms;

namespace Duskwright.Light.Tests.Rooms;

/// <summary>
/// An independent Monte Carlo tracer: rays leave the lamps by their lobes and bounce by the cosine law; at every wall they count what of them
/// would fall on the pane next (Lambert's contour formula). It shares no patch, form factor or solver with what it checks.
/// </summary>
internal sealed class RayTracer(LitRoom room, int pane, int seed)
{
    private const int Batches = 20;
    private const double FaintWeight = 0.1;

    private readonly Random _random = new(seed);
    private readonly double[] _size = [room.Box.WidthMetres, room.Box.DepthMetres, room.Box.HeightMetres];
    private readonly double[][] _corners = Corners(room, room.Panes[pane]);

    /// <summary>Mean illuminance of the pane with its standard error, lx; batches of rays, each spread evenly over the lobe, tell the error.</summary>
    internal (double Lux, double StandardError) Trace(int raysPerLamp)
    {
        var side = Math.Max(2, (int)Math.Sqrt(raysPerLamp / Batches));
        var batches = Enumerable.Range(0, Batches).Select(_ => room.Lamps.Sum(lamp => Batch(lamp, side))).ToList();
        var mean = batches.Average();
        var area = room.Panes[pane].Opening.Area;
        return (mean / area, Math.Sqrt(batches.Sum(b => (b - mean) * (b - mean)) / (Batches - 1) / Batches) / area);
    }

    private double Batch(RoomLamp lamp, int side)
    {
        var (even, exponent) = (lamp.Lobe.FullAngleRadians >= Math.PI, Math.Log(0.5) / Math.Log(Math.Abs(Math.Cos(lamp.Lobe.FullAngleRadians / 2))));
        var lumens = lamp.Lobe.AxisCandelas * 2 * Math.PI * (even ? 2 : 1 / (exponent + 1));
        double[] along = [lamp.Axis.X, lamp.Axis.Y, lamp.Axis.Z];
        var (u, v, w) = Frame(along);
        var (at, way) = (new double[3], new double[3]);
        var sum = 0.0;
        for (var i = 0; i < side * side; i++)
        {
            var (first, turn) = (((i % side) + _random.NextDouble()) / side, 2 * Math.PI * ((i / side) + _random.NextDouble()) / side);
            var cosine = even ? (2 * first) - 1 : Math.Pow(first, 1 / (exponent + 1));
            var sine = Math.Sqrt(1 - (cosine * cosine));
            for (var axis = 0; axis < 3; axis++)
            {
                way[axis] = (cosine * w[axis]) + (sine * Math.Cos(turn) * u[axis]) + (sine * Math.Sin(turn) * v[axis]);
            }

            (at[0], at[1], at[2]) = (lamp.At.X, lamp.At.Y, lamp.At.Z);
            sum += Path(at, way);
        }

        return sum * lumens / (side * side);
    }

    /// <summary>Share of a ray that falls on the pane, at first or after any bounce.</summary>
    private double Path(double[] at, double[] way)
    {
        var face = Next(at, way);
        var onPane = PaneAt(at, face);
        var share = onPane == pane ? 1.0 : 0;
        var weight = 1.0;
        while (true)
        {
            weight *= onPane >= 0 ? room.Panes[onPane].Sheet.Reflectance : room.Box.Reflectances[face];
            if (weight == 0)
            {
                return share;
            }

            share += weight * Seen(at, face);
            if (weight < FaintWeight)
            {
                // Russian roulette: half of the faint rays go on, twice as strong.
                if (_random.Next(2) == 0)
                {
                    return share;
                }

                weight *= 2;
            }

            var (turn, square, normal) = (2 * Math.PI * _random.NextDouble(), _random.NextDouble(), face / 2);
            way[normal] = (face % 2 == 0 ? 1 : -1) * Math.Sqrt(1 - square);
            way[(normal + 1) % 3] = Math.Sqrt(square) * Math.Cos(turn);
            way[(normal + 2) % 3] = Math.Sqrt(square) * Math.Sin(turn);
            face = Next(at, way);
            onPane = PaneAt(at, face);
        }
    }

    /// <summary>Share of the light leaving a point of a wall that falls on the pane: ½π · Σ of the edges' angles, each by its tilt (Lambert 1760).</summary>
    private double Seen(double[] at, int face)
    {
        if (face == (int)room.Panes[pane].Wall)
        {
            return 0;
        }

        var sum = 0.0;
        for (var edge = 0; edge < 4; edge++)
        {
            var (a, b) = (Unit(_corners[edge], at), Unit(_corners[(edge + 1) % 4], at));
            var angle = Math.Acos(Math.Clamp((a.X * b.X) + (a.Y * b.Y) + (a.Z * b.Z), -1, 1));
            var (crossX, crossY, crossZ) = ((a.Y * b.Z) - (a.Z * b.Y), (a.Z * b.X) - (a.X * b.Z), (a.X * b.Y) - (a.Y * b.X));
            var size = Math.Sqrt((crossX * crossX) + (crossY * crossY) + (crossZ * crossZ));
            sum += size < 1e-15 ? 0 : angle * (face / 2 == 0 ? crossX : face / 2 == 1 ? crossY : crossZ) / size;
        }

        return Math.Abs(sum) / (2 * Math.PI);
    }

    private int Next(double[] at, double[] way)
    {
        var (nearest, face) = (double.MaxValue, 0);
        for (var axis = 0; axis < 3; axis++)
        {
            var distance = way[axis] > 0 ? (_size[axis] - at[axis]) / way[axis] : way[axis] < 0 ? -at[axis] / way[axis] : double.MaxValue;
            if (distance > 1e-12 && distance < nearest)
            {
                (nearest, face) = (distance, (2 * axis) + (way[axis] > 0 ? 1 : 0));
            }
        }

        for (var axis = 0; axis < 3; axis++)
        {
            at[axis] = Math.Clamp(at[axis] + (nearest * way[axis]), 0, _size[axis]);
        }

        at[face / 2] = face % 2 == 0 ? 0 : _size[face / 2];
        return face;
    }

    private int PaneAt(double[] at, int face)
    {
        var (across, along) = face / 2 == 0 ? (at[1], at[2]) : face / 2 == 1 ? (at[0], at[2]) : (at[0], at[1]);
        for (var p = 0; p < room.Panes.Length; p++)
        {
            var o = room.Panes[p].Opening;
            if ((int)room.Panes[p].Wall == face && across > o.FromAcross && across < o.ToAcross && along > o.FromAlong && along < o.ToAlong)
            {
                return p;
            }
        }

        return -1;
    }

    private static (double X, double Y, double Z) Unit(double[] to, double[] from)
    {
        var (x, y, z) = (to[0] - from[0], to[1] - from[1], to[2] - from[2]);
        var length = Math.Sqrt((x * x) + (y * y) + (z * z));
        return (x / length, y / length, z / length);
    }

    private static (double[] U, double[] V, double[] W) Frame(double[] along)
    {
        var length = Math.Sqrt(along.Sum(a => a * a));
        double[] w = [.. along.Select(a => a / length)];
        double[] other = Math.Abs(w[0]) < 0.6 ? [1, 0, 0] : [0, 1, 0];
        var u = Cross(w, other);
        var size = Math.Sqrt(u.Sum(a => a * a));
        u = [.. u.Select(a => a / size)];
        return (u, Cross(w, u), w);
    }

    private static double[] Cross(double[] a, double[] b) => [(a[1] * b[2]) - (a[2] * b[1]), (a[2] * b[0]) - (a[0] * b[2]), (a[0] * b[1]) - (a[1] * b[0])];

    private static double[][] Corners(LitRoom room, RoomPane pane)
    {
        var o = pane.Opening;
        return
        [
            .. new[] { (o.FromAcross, o.FromAlong), (o.ToAcross, o.FromAlong), (o.ToAcross, o.ToAlong), (o.FromAcross, o.ToAlong) }.Select(c => pane.Wall switch
            {
                BoxFace.Right => new[] { room.Box.WidthMetres, c.Item1, c.Item2 },
                BoxFace.Back => [c.Item1, room.Box.DepthMetres, c.Item2],
                _ => [c.Item1, 0, c.Item2],
            }),
        ];
    }
}
