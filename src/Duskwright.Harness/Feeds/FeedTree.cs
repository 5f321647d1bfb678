using System.Collections.Immutable;
using Duskwright.Harness.Routes;

namespace Duskwright.Harness.Feeds;

/// <summary>How the buildings of one switch can be fed.</summary>
public enum FeedWay
{
    /// <summary>A pair of its own from the bank to each building.</summary>
    OwnPairs,

    /// <summary>A trunk along the wireways, tapped where buildings lie.</summary>
    Trunk,

    /// <summary>One pair that runs from building to building.</summary>
    Chain,
}

/// <summary>The pairs that feed the buildings of one switch: a tree whose junction 0 is the bank.</summary>
/// <param name="Way">How it feeds them.</param>
/// <param name="Pieces">Its pairs, each after the one that feeds it.</param>
/// <param name="Ends">Where the buildings hang.</param>
/// <param name="AtLeastMetres">What no tree of this kind is shorter than, m of pair.</param>
public sealed record FeedTree(FeedWay Way, ImmutableArray<FeedPiece> Pieces, ImmutableArray<FeedEnd> Ends, double AtLeastMetres)
{
    /// <summary>Length of all its pairs, m.</summary>
    public double Metres => Pieces.Sum(p => p.Metres);

    /// <summary>The buildings that go dark when a piece breaks: all that hang on it and beyond it.</summary>
    /// <param name="piece">Index of the piece.</param>
    /// <returns>Their names, in the order of <see cref="Ends"/>.</returns>
    public ImmutableArray<string> Beyond(int piece)
    {
        var dark = new HashSet<int> { Pieces[piece].To };
        foreach (var next in Pieces.Skip(piece + 1))
        {
            if (dark.Contains(next.From))
            {
                dark.Add(next.To);
            }
        }

        return [.. Ends.Where(e => dark.Contains(e.Junction)).Select(e => e.Building)];
    }
}

/// <summary>A pair between two junctions.</summary>
/// <param name="From">The junction nearer the bank.</param>
/// <param name="To">The junction it feeds; no other piece feeds it.</param>
/// <param name="Metres">Length to cut, slack included, m.</param>
/// <param name="Points">Its line on the board, m.</param>
/// <param name="Wireways">The wireways it uses, in order.</param>
public sealed record FeedPiece(int From, int To, double Metres, ImmutableArray<PlanePoint> Points, ImmutableArray<string> Wireways);

/// <summary>A building at a junction.</summary>
/// <param name="Building">The building.</param>
/// <param name="Junction">The junction.</param>
public sealed record FeedEnd(string Building, int Junction);
