using System.Numerics;
using Duskwright.Plan;

namespace Duskwright.Book.Night;

/// <summary>A surface on which the light of one pane falls: a stretch of ground before it, or a wall that faces it.</summary>
/// <param name="Pane">Place of the pane among the scene's.</param>
/// <param name="Corners">The stretch, in order.</param>
/// <param name="Normal">Of the surface.</param>
/// <param name="Albedo">What the surface throws back, linear sRGB.</param>
/// <param name="Reach">How far from the pane it is followed, m; it ends softly there.</param>
public sealed record NightGlow(int Pane, ItemList<Vector3> Corners, Vector3 Normal, Vector3 Albedo, float Reach)
{
    private const float LeastReach = 0.08f;
    private const float ReachHeights = 5;
    private const float WallReach = 0.2f;
    private const float OffSurface = 0.0002f;
    private const int MostWalls = 3;

    internal static IEnumerable<NightGlow> Of(ItemList<NightPane> panes, IReadOnlyList<NightFace> walls, NightGround ground)
    {
        var surfaces = ground.Surfaces().ToList();
        for (var i = 0; i < panes.Count; i++)
        {
            var pane = panes[i];
            foreach (var surface in surfaces.Where(s => s.Corners[0].Y < pane.Middle.Y))
            {
                var reach = Math.Max(LeastReach, ReachHeights * (pane.Middle.Y - surface.Corners[0].Y));
                var stretch = Clip(surface.Corners, Before(pane, surface.Corners[0].Y, reach));
                if (stretch.Count > 2)
                {
                    yield return new NightGlow(i, stretch.Select(p => p + new Vector3(0, OffSurface, 0)).ToItemList(), Vector3.UnitY, surface.Albedo, reach);
                }
            }

            foreach (var wall in Facing(pane, walls))
            {
                yield return new NightGlow(i, wall.Corners.Select(c => c + (OffSurface * wall.Normal)).ToItemList(), wall.Normal, wall.Albedo, 2 * WallReach);
            }
        }
    }

    // The ground that the pane lights, in order seen from above.
    private static List<Vector3> Before(NightPane pane, float height, float reach)
    {
        var forward = Vector3.Normalize(pane.Normal with { Y = 0 });
        var side = Vector3.Cross(forward, Vector3.UnitY);
        var foot = pane.Middle with { Y = height };
        return NightGround.Up([foot - (reach * side), foot + (reach * side), foot + (reach * side) + (reach * forward), foot - (reach * side) + (reach * forward)]);
    }

    private static IEnumerable<NightFace> Facing(NightPane pane, IReadOnlyList<NightFace> walls) =>
        (from wall in walls
         where wall.Building != pane.Building && wall.Stuff is NightStuff.Wall or NightStuff.Slate or NightStuff.Thatch or NightStuff.Tile
         let middle = wall.Corners.Aggregate(Vector3.Zero, (sum, c) => sum + c) / wall.Corners.Count
         let away = middle - pane.Middle
         where away.Length() < WallReach && Vector3.Dot(away, pane.Normal) > 0 && Vector3.Dot(away, wall.Normal) < 0
         orderby away.LengthSquared()
         select wall).Take(MostWalls);

    /// <summary>The part of an outline within a convex stretch (Sutherland and Hodgman, Communications of the ACM 17 (1974) 32).</summary>
    private static List<Vector3> Clip(IReadOnlyList<Vector3> outline, List<Vector3> convex)
    {
        var points = outline.ToList();
        for (var i = 0; i < convex.Count && points.Count > 0; i++)
        {
            var (from, to) = (convex[i], convex[(i + 1) % convex.Count]);
            float Inside(Vector3 p) => ((to.X - from.X) * -(p.Z - from.Z)) + ((to.Z - from.Z) * (p.X - from.X));
            var kept = new List<Vector3>();
            for (var j = 0; j < points.Count; j++)
            {
                var (a, b) = (points[j], points[(j + 1) % points.Count]);
                var (inA, inB) = (Inside(a), Inside(b));
                if (inA >= 0)
                {
                    kept.Add(a);
                }

                if ((inA >= 0) != (inB >= 0))
                {
                    kept.Add(Vector3.Lerp(a, b, inA / (inA - inB)));
                }
            }

            points = kept;
        }

        return points;
    }
}
