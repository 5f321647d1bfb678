using System.Collections.Immutable;

namespace Duskwright.Light.Rooms;

/// <summary>A room's patches: their areas, what they throw back and swallow, and which of them make up each pane.</summary>
internal sealed class RoomPatches
{
    private readonly LitRoom _room;
    private readonly ImmutableArray<FaceGrid> _grids;

    internal RoomPatches(LitRoom room, ImmutableArray<FaceGrid> grids)
    {
        (_room, _grids) = (room, grids);
        Count = grids.Sum(g => g.Count);
        (Areas, Reflectances, Absorbed) = (new double[Count], new double[Count], new double[Count]);
        foreach (var grid in grids)
        {
            var reflectance = room.Box.Reflectances[(int)grid.Face];
            for (var i = grid.First; i < grid.First + grid.Count; i++)
            {
                (Areas[i], Reflectances[i], Absorbed[i]) = (grid.Rectangle(i).Area, reflectance, 1 - reflectance);
            }
        }

        var panes = ImmutableArray.CreateBuilder<PanePatches>();
        foreach (var pane in room.Panes)
        {
            var grid = grids[(int)pane.Wall];
            var (own, columns) = grid.Of(pane.Opening);
            foreach (var patch in own)
            {
                (Reflectances[patch], Absorbed[patch]) = (pane.Sheet.Reflectance, 1 - pane.Sheet.Reflectance - pane.Sheet.Transmittance);
            }

            var behind = grids[(int)pane.Wall.Opposite()];
            panes.Add(new(
                new PaneGrid(columns, [.. own.Select(p => Areas[p])]),
                own,
                [.. own.Select(p => grid.Rectangle(p)).Select(r => behind.PatchAt((r.FromAcross + r.ToAcross) / 2, (r.FromAlong + r.ToAlong) / 2))]));
        }

        Panes = panes.ToImmutable();
    }

    internal int Count { get; }

    internal double[] Areas { get; }

    internal double[] Reflectances { get; }

    internal double[] Absorbed { get; }

    internal ImmutableArray<PanePatches> Panes { get; }

    internal double[] LumensFrom(RoomLamp lamp)
    {
        var lumens = new double[Count];
        foreach (var grid in _grids)
        {
            for (var i = grid.First; i < grid.First + grid.Count; i++)
            {
                lumens[i] = DirectLight.Lumens(_room.Box, grid.Face, grid.Rectangle(i), lamp);
            }
        }

        return lumens;
    }

    internal ImmutableArray<double> MostLux(IReadOnlyList<double> lux) => [.. _grids.Select(g => Enumerable.Range(g.First, g.Count).Max(i => lux[i]))];

    internal ImmutableArray<double> MeanLux(IReadOnlyList<double> lux) =>
        [.. _grids.Select(g => Enumerable.Range(g.First, g.Count).Sum(i => lux[i] * Areas[i]) / Enumerable.Range(g.First, g.Count).Sum(i => Areas[i]))];
}

/// <summary>The patches of one pane, and those straight behind them on the far wall.</summary>
internal sealed record PanePatches(PaneGrid Grid, ImmutableArray<int> Patches, ImmutableArray<int> Behind);
