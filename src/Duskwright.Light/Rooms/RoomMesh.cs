using System.Collections.Immutable;

namespace Duskwright.Light.Rooms;

/// <summary>How finely a room is cut into patches.</summary>
/// <param name="WallPatches">Patches along an edge of the room of its mean length, 1 or more; longer edges have more.</param>
/// <param name="PanePatches">Patches across and along a pane, at least, 1 or more.</param>
public sealed record RoomMesh(int WallPatches, int PanePatches)
{
    /// <summary>The usual mesh: a wall mesh twice as fine moves the mean light on a pane by less than 0.8 % in a hundred random rooms (tests).</summary>
    public static RoomMesh Usual { get; } = new(10, 4);

    internal ImmutableArray<FaceGrid> Cut(RoomBox box, ImmutableArray<RoomPane> panes)
    {
        var patch = (box.WidthMetres + box.DepthMetres + box.HeightMetres) / 3 / WallPatches;
        var grids = ImmutableArray.CreateBuilder<FaceGrid>(BoxFaces.Count);
        var first = 0;
        foreach (var face in Enum.GetValues<BoxFace>())
        {
            var here = panes.Where(p => p.Wall == face).Select(p => p.Opening).ToList();
            var grid = new FaceGrid(
                face,
                Lines(box.Size(face.Across()), patch, [.. here.Select(o => (o.FromAcross, o.ToAcross))]),
                Lines(box.Size(face.Along()), patch, [.. here.Select(o => (o.FromAlong, o.ToAlong))]),
                first);
            grids.Add(grid);
            first += grid.Count;
        }

        return grids.ToImmutable();
    }

    private double[] Lines(double size, double patch, List<(double From, double To)> openings)
    {
        var ends = openings.SelectMany(o => new[] { o.From, o.To }).Concat([0, size]).Order().ToList();
        var lines = new List<double> { 0 };
        foreach (var end in ends)
        {
            var from = lines[^1];
            if (end - from <= FaceGrid.Hair)
            {
                continue;
            }

            // An interval inside an opening takes its share of the opening's patches.
            var opening = openings.Where(o => o.From < end - FaceGrid.Hair && o.To > from + FaceGrid.Hair).Select(o => (o.To - o.From) / PanePatches).DefaultIfEmpty(patch).Min();
            var count = Math.Max(1, (int)Math.Ceiling(((end - from) / Math.Min(patch, opening)) - 1e-6));
            for (var i = 1; i <= count; i++)
            {
                lines.Add(i == count ? end : from + ((end - from) * i / count));
            }
        }

        return [.. lines];
    }
}
