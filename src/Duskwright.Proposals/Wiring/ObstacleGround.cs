using System.Collections.Immutable;
using Duskwright.Harness.Routes;
using Duskwright.Plan.Document;

namespace Duskwright.Proposals.Wiring;

/// <summary>What wire goes round under a board: battens, legs and magnets as drawn, and with them water nobody's pair begins in.</summary>
internal static class ObstacleGround
{
    // What is drawn up to the edge is taken to close it: nobody leads wire between a batten and the frame.
    private const double AtEdgeMetres = 0.002;
    private const double BeyondEdgeMetres = 0.02;

    /// <summary>The ground of a town; none where no obstacle is drawn.</summary>
    internal static FreeArea? Of(Town town)
    {
        if (town.Board is not { } board || !board.Scenery.Any(s => s.Kind == SceneryKind.Obstacle && s.Points.Count > 2))
        {
            return null;
        }

        var (width, depth) = (board.Width.Metres, board.Depth.Metres);
        var ends = town.Buildings.Where(b => b.Place is not null).Select(b => BoardGround.Demand(board, b)).Select(d => d.Hole ?? d.From)
            .Concat(board.Bank is { } bank ? [BoardGround.InMetres(bank.At)] : [])
            .ToList();

        // A boat's pair runs beneath the water it lies on.
        var obstacles = board.Scenery
            .Where(s => s.Kind is SceneryKind.Obstacle or SceneryKind.Water && s.Points.Count > 2)
            .Select(s => (s.Kind, Line: s.Points.Select(BoardGround.InMetres).ToImmutableArray()))
            .Where(s => s.Kind == SceneryKind.Obstacle || !ends.Exists(e => Encloses(s.Line, e)))
            .Select(s => s.Line.Select(p => new PlanePoint(Closing(p.X, width), Closing(p.Y, depth))).ToImmutableArray())
            .ToImmutableArray();
        var onBoard = ends.TrueForAll(e => e.X >= 0 && e.X <= width && e.Y >= 0 && e.Y <= depth);
        return new FreeArea(onBoard ? [new(0, 0), new(width, 0), new(width, depth), new(0, depth)] : [], obstacles).Joined();
    }

    // A ray to the right crosses the outline an odd number of times.
    internal static bool Encloses(IReadOnlyList<PlanePoint> outline, PlanePoint at) => outline
        .Zip(outline.Skip(1).Append(outline[0]))
        .Count(e => e.First.Y > at.Y != e.Second.Y > at.Y && at.X < e.First.X + ((at.Y - e.First.Y) / (e.Second.Y - e.First.Y) * (e.Second.X - e.First.X))) % 2 == 1;

    private static double Closing(double at, double side) => at <= AtEdgeMetres ? -BeyondEdgeMetres : at >= side - AtEdgeMetres ? side + BeyondEdgeMetres : at;
}
