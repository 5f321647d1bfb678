using System.Numerics;
using Duskwright.Plan;
using Duskwright.Plan.Document;

namespace Duskwright.Book.Night;

/// <summary>The board in space: its levels, their cliffs, and the scenery.</summary>
internal sealed class NightGround(Board board)
{
    private const float Slab = 0.018f;

    // Paint on the ground, so thin that light on the ground still falls on it; water lies above that.
    private const float Thin = 0.0001f;
    private const float WaterLevel = 0.0004f;
    private const float UsualBreadth = 0.02f;

    internal float Width { get; } = (float)board.Width.Metres;

    internal float Depth { get; } = (float)board.Depth.Metres;

    internal Vector3 At(Point point, double height) => new((float)point.X.Metres - (Width / 2), (float)height, (Depth / 2) - (float)point.Y.Metres);

    internal float HeightOf(string? level) => (float)(board.Levels.FirstOrDefault(l => l.Id == level)?.Height.Metres ?? 0);

    /// <summary>What light falls on from above: the board, its levels, and water.</summary>
    internal IEnumerable<NightFace> Surfaces() =>
    [
        Flat(NightStuff.Ground, Whole(0)),
        .. board.Levels.Where(l => l.Outline.Count > 2 && l.Height.Metres > 0).Select(l => Flat(NightStuff.Ground, Outline(l))),
        .. board.Scenery.Where(s => s.Kind == SceneryKind.Water && s.Points.Count > 2).Select(Water),
    ];

    internal IEnumerable<NightFace> Faces()
    {
        var (w, d) = (Width / 2, Depth / 2);
        yield return Flat(NightStuff.Ground, Whole(0));
        yield return NightFace.Of(NightStuff.Wood, null, new(-w, -Slab, d), new(w, -Slab, d), new(w, 0, d), new(-w, 0, d));
        yield return NightFace.Of(NightStuff.Wood, null, new(w, -Slab, d), new(w, -Slab, -d), new(w, 0, -d), new(w, 0, d));
        yield return NightFace.Of(NightStuff.Wood, null, new(w, -Slab, -d), new(-w, -Slab, -d), new(-w, 0, -d), new(w, 0, -d));
        yield return NightFace.Of(NightStuff.Wood, null, new(-w, -Slab, -d), new(-w, -Slab, d), new(-w, 0, d), new(-w, 0, -d));
        foreach (var level in board.Levels.Where(l => l.Outline.Count > 2 && l.Height.Metres > 0))
        {
            var outline = Outline(level);
            yield return Flat(NightStuff.Ground, outline);
            foreach (var (one, next) in outline.Zip(outline.Skip(1).Append(outline[0])))
            {
                yield return NightFace.Of(NightStuff.Stone, null, one with { Y = 0 }, next with { Y = 0 }, next, one);
            }
        }

        foreach (var face in board.Scenery.SelectMany(Scenery))
        {
            yield return face;
        }
    }

    private List<Vector3> Outline(Level level) => Up(level.Outline.Select(p => At(p, level.Height.Metres)));

    /// <summary>An outline counter-clockwise as seen from above, so that it shows its upper side.</summary>
    internal static List<Vector3> Up(IEnumerable<Vector3> points)
    {
        var outline = points.ToList();
        var area = outline.Zip(outline.Skip(1).Append(outline[0]), (a, b) => (a.X * -b.Z) - (b.X * -a.Z)).Sum();
        if (area < 0)
        {
            outline.Reverse();
        }

        return outline;
    }

    private static NightFace Flat(NightStuff stuff, IReadOnlyList<Vector3> outline) => new(outline.ToItemList(), Vector3.UnitY, stuff);

    private NightFace Water(Scenery thing) => Flat(NightStuff.Water, Up(thing.Points.Select(p => At(p, WaterLevel))));

    private IReadOnlyList<Vector3> Whole(float height) => [new(-Width / 2, height, Depth / 2), new(Width / 2, height, Depth / 2), new(Width / 2, height, -Depth / 2), new(-Width / 2, height, -Depth / 2)];

    private float HeightAt(Point point) => board.Levels
        .Where(l => l.Outline.Count > 2 && Within(l.Outline, point))
        .Select(l => (float)l.Height.Metres)
        .DefaultIfEmpty(0)
        .Max();

    // Even and odd crossings of a ray to the right.
    private static bool Within(ItemList<Point> outline, Point point)
    {
        var (x, y) = (point.X.Metres, point.Y.Metres);
        var inside = false;
        for (int i = 0, j = outline.Count - 1; i < outline.Count; j = i++)
        {
            var (xi, yi, xj, yj) = (outline[i].X.Metres, outline[i].Y.Metres, outline[j].X.Metres, outline[j].Y.Metres);
            if ((yi > y) != (yj > y) && x < ((xj - xi) * (y - yi) / (yj - yi)) + xi)
            {
                inside = !inside;
            }
        }

        return inside;
    }

    private IEnumerable<NightFace> Scenery(Scenery thing)
    {
        var breadth = (float)(thing.Size?.Metres ?? UsualBreadth);
        switch (thing.Kind)
        {
            case SceneryKind.Water when thing.Points.Count > 2:
                yield return Water(thing);
                break;
            case SceneryKind.Field when thing.Points.Count > 2:
                var height = HeightAt(thing.Points[0]) + Thin;
                yield return Flat(NightStuff.Leaf, Up(thing.Points.Select(p => At(p, height))));
                break;
            case SceneryKind.Quay:
                foreach (var face in Strips(thing, 0.004f, 0.005f, NightStuff.Stone))
                {
                    yield return face;
                }

                break;
            case SceneryKind.Jetty:
                foreach (var face in Strips(thing, breadth, 0.007f, NightStuff.Wood))
                {
                    yield return face;
                }

                break;
            case SceneryKind.Path or SceneryKind.Steps:
                foreach (var face in Strips(thing, breadth, Thin, NightStuff.Stone))
                {
                    yield return face;
                }

                break;
            case SceneryKind.Tree:
                foreach (var face in Tree(At(thing.Points[0], HeightAt(thing.Points[0])), breadth))
                {
                    yield return face;
                }

                break;
            default:
                break;
        }
    }

    // A line with a breadth, raised above its ground; from level to level it slopes.
    private IEnumerable<NightFace> Strips(Scenery thing, float breadth, float raised, NightStuff stuff)
    {
        foreach (var (from, to) in thing.Points.Zip(thing.Points.Skip(1)))
        {
            var (a, b) = (At(from, HeightAt(from) + raised), At(to, HeightAt(to) + raised));
            var along = (b - a) with { Y = 0 };
            if (along.Length() < 1e-6f)
            {
                continue;
            }

            var side = Vector3.Normalize(Vector3.Cross(Vector3.UnitY, along)) * (breadth / 2);
            yield return NightFace.Of(stuff, null, a - side, b - side, b + side, a + side) is { Normal.Y: > 0 } up ? up : NightFace.Of(stuff, null, a + side, b + side, b - side, a - side);
            if (raised > Thin)
            {
                var down = new Vector3(0, -raised, 0);
                yield return NightFace.Of(stuff, null, a - side + down, b - side + down, b - side, a - side);
                yield return NightFace.Of(stuff, null, b + side + down, a + side + down, a + side, b + side);
            }
        }
    }

    private static IEnumerable<NightFace> Tree(Vector3 foot, float spread)
    {
        const int Sides = 9;
        (float Radius, float Height)[] rings = [(0.1f, 0), (0.34f, 0.18f), (0.48f, 0.5f), (0.36f, 0.85f), (0.02f, 1.05f)];
        Vector3 Rim(int i, (float Radius, float Height) ring) => foot + (spread * new Vector3(ring.Radius * MathF.Cos(i * MathF.Tau / Sides), ring.Height, -ring.Radius * MathF.Sin(i * MathF.Tau / Sides)));
        foreach (var (low, high) in rings.Zip(rings.Skip(1)))
        {
            for (var i = 0; i < Sides; i++)
            {
                yield return NightFace.Of(NightStuff.Leaf, null, Rim(i, low), Rim(i + 1, low), Rim(i + 1, high), Rim(i, high));
            }
        }
    }
}
