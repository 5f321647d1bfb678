using System.Collections.Immutable;

namespace Duskwright.Harness.Routes;

/// <summary>The shortest way that goes along one wireway, if only for a piece of it.</summary>
internal static class WayAlong
{
    /// <summary>Joins the shortest way from where a pair starts to a piece of the wireway, the piece, and the shortest way from its other end.</summary>
    /// <param name="graph">The wireways.</param>
    /// <param name="start">Shortest ways from where the pair starts.</param>
    /// <param name="end">Shortest ways from where it ends.</param>
    /// <param name="along">The wireway.</param>
    /// <param name="closed">Wireways that take no more.</param>
    /// <returns>Points, wireways in order and length, infinite where there is none. A pair is not sent up a wireway only to come back.</returns>
    internal static (ImmutableArray<PlanePoint> Points, ImmutableArray<string> Ways, double Metres) Shortest(
        WireGraph graph, ShortestTree start, ShortestTree end, string along, IReadOnlyCollection<string>? closed)
    {
        var pieces = closed?.Contains(along) == true ? [] : graph.PiecesOf(along)
            .Where(p => start.NextFrom(p.From) != p.To && end.NextFrom(p.To) != p.From)
            .Where(p => double.IsFinite(start.MetresTo(p.From) + end.MetresTo(p.To)))
            .ToList();
        if (pieces.Count == 0)
        {
            return ([], [], double.PositiveInfinity);
        }

        var (from, to, metres) = pieces.MinBy(p => start.MetresTo(p.From) + p.Metres + end.MetresTo(p.To));
        var (there, on) = (start.PathTo(from), end.PathTo(to));
        var ways = there.Ways.Reverse().Append(along).Concat(on.Ways).ToList();
        return (
            [.. there.Points.Reverse(), .. on.Points],
            [.. ways.Where((w, i) => i == 0 || ways[i - 1] != w)],
            there.Metres + metres + on.Metres);
    }
}
