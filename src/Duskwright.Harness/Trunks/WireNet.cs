using System.Collections.Immutable;

namespace Duskwright.Harness.Trunks;

/// <summary>Where trunks may run: junctions, numbered from 0, and the pieces of wireway between them.</summary>
/// <param name="Junctions">How many junctions there are.</param>
/// <param name="Pieces">The pieces; each may be walked both ways.</param>
public sealed record WireNet(int Junctions, ImmutableArray<NetPiece> Pieces)
{
    /// <summary>The pieces at each junction: the junction at the other end and the piece's index.</summary>
    internal ImmutableArray<ImmutableArray<(int To, int Piece)>> Around { get; } = Neighbours(Junctions, Pieces);

    private static ImmutableArray<ImmutableArray<(int To, int Piece)>> Neighbours(int junctions, ImmutableArray<NetPiece> pieces)
    {
        var around = Enumerable.Range(0, junctions).Select(_ => ImmutableArray.CreateBuilder<(int, int)>()).ToArray();
        for (var i = 0; i < pieces.Length; i++)
        {
            around[pieces[i].From].Add((pieces[i].To, i));
            around[pieces[i].To].Add((pieces[i].From, i));
        }

        return [.. around.Select(a => a.ToImmutable())];
    }
}

/// <summary>A piece of wireway between two junctions.</summary>
/// <param name="From">One junction.</param>
/// <param name="To">The other.</param>
/// <param name="Metres">Its length, not negative.</param>
public sealed record NetPiece(int From, int To, double Metres);

/// <summary>A trunk with taps: the pieces that join all its terminals.</summary>
/// <param name="Pieces">Indices of its pieces.</param>
/// <param name="Metres">Their length.</param>
/// <param name="AtLeastMetres">What no trunk can be shorter than.</param>
/// <param name="Proven">Whether none is shorter.</param>
/// <param name="Unreached">Terminals that no wireway joins to the first; empty where there is a trunk.</param>
public sealed record TrunkAnswer(ImmutableArray<int> Pieces, double Metres, double AtLeastMetres, bool Proven, ImmutableArray<int> Unreached);

/// <summary>How far the proof is taken, never by the clock.</summary>
/// <param name="Starts">How many terminals a tree is grown from.</param>
/// <param name="Rounds">How many times cuts are added to the linear programme; 0 leaves it at the dual ascent's bound.</param>
/// <param name="DeterministicSeconds">The whole-number solver's deterministic limit a call.</param>
public sealed record TrunkSettings(int Starts = 20, int Rounds = 200, double DeterministicSeconds = 5);
