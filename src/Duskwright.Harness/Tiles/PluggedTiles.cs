using System.Collections.Immutable;

namespace Duskwright.Harness.Tiles;

/// <summary>Tiles that plug into one another, each with a current of its own: how they can be put together, and what is lost on the way to each.</summary>
/// <remarks>
/// An arrangement names for each tile the one it plugs into, −1 for the socket; it may leave none out. Every plug with the wire across a tile has the same resistance.
/// What is lost at a tile is Σ over all tiles u of i_u·r·(plugs that u's way and the tile's way have in common), by Kirchhoff's laws. The way to the tile passes one tile after
/// the other, so at most n − k tiles can lie beyond its k-th plug: no arrangement loses more at it than the row that ends in it, the lightest of the others first
/// (rearrangement inequality; G. H. Hardy, J. E. Littlewood and G. Pólya, Inequalities, chapter X).
/// </remarks>
public static class PluggedTiles
{
    /// <summary>The socket, as what a tile plugs into.</summary>
    public const int Socket = -1;

    /// <summary>The row in which most is lost at one tile, for steady currents: that tile last, the others with the lightest first.</summary>
    /// <param name="amps">The current of each tile, A.</param>
    /// <param name="last">The tile.</param>
    /// <returns>The tiles from the socket outwards.</returns>
    public static ImmutableArray<int> WorstRow(ImmutableArray<double> amps, int last) => [.. Enumerable.Range(0, amps.Length).OrderBy(t => t == last).ThenBy(t => amps[t])];

    /// <summary>What is lost at the end of that row, on both conductors: no arrangement of these tiles, nor of some of them, loses more.</summary>
    /// <param name="amps">The current of each tile, A; where it falls with the volts, the most it can be.</param>
    /// <param name="ohms">One plug and the wire across one tile, one conductor, Ω.</param>
    /// <returns>Volts.</returns>
    public static double MostLostVolts(ImmutableArray<double> amps, double ohms) => 2 * ohms * amps.Order().Select((a, i) => a * (i + 1)).Sum();

    /// <summary>What is lost at each tile of an arrangement, on both conductors.</summary>
    /// <param name="into">What each tile plugs into.</param>
    /// <param name="amps">The current of each tile, A.</param>
    /// <param name="ohms">One plug and the wire across one tile, one conductor, Ω.</param>
    /// <returns>Volts, one for each tile.</returns>
    public static ImmutableArray<double> LostVolts(ImmutableArray<int> into, ImmutableArray<double> amps, double ohms)
    {
        var through = new double[into.Length];
        for (var t = 0; t < into.Length; t++)
        {
            for (var at = t; at != Socket; at = into[at])
            {
                through[at] += amps[t];
            }
        }

        return
        [
            .. Enumerable.Range(0, into.Length).Select(t =>
            {
                var volts = 0.0;
                for (var at = t; at != Socket; at = into[at])
                {
                    volts += 2 * ohms * through[at];
                }

                return volts;
            }),
        ];
    }

    /// <summary>Tiles in a row, as an arrangement.</summary>
    /// <param name="row">The tiles from the socket outwards.</param>
    /// <returns>What each plugs into.</returns>
    public static ImmutableArray<int> Row(IReadOnlyList<int> row)
    {
        var into = new int[row.Count];
        for (var i = 0; i < row.Count; i++)
        {
            into[row[i]] = i == 0 ? Socket : row[i - 1];
        }

        return [.. into];
    }

    /// <summary>Every row of some tiles, in a fixed order.</summary>
    /// <param name="tiles">How many tiles there are, at most 8.</param>
    /// <returns>Each row as an arrangement.</returns>
    public static IEnumerable<ImmutableArray<int>> Rows(int tiles)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(tiles, 8);
        return Orders([], [.. Enumerable.Range(0, tiles)]).Select(o => Row(o));
    }

    /// <summary>Every way to put some tiles together from one socket: (n + 1)^(n − 1) trees by Cayley's formula where tiles have sides enough.</summary>
    /// <param name="tiles">How many tiles there are, at most 6.</param>
    /// <param name="sides">How many plugs a tile has; one of them leads to the socket.</param>
    /// <returns>Each as an arrangement; the socket takes as many tiles as come.</returns>
    public static IEnumerable<ImmutableArray<int>> Trees(int tiles, int sides = 4)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(tiles, 6);
        var into = Enumerable.Repeat(Socket, tiles).ToArray();
        do
        {
            if (LeadsToSocket(into) && Enumerable.Range(0, tiles).All(t => into.Count(i => i == t) < sides))
            {
                yield return [.. into];
            }
        }
        while (Next(into));
    }

    private static IEnumerable<ImmutableArray<int>> Orders(ImmutableArray<int> begun, ImmutableArray<int> left) =>
        left.IsEmpty ? [begun] : left.SelectMany(t => Orders(begun.Add(t), left.Remove(t)));

    private static bool LeadsToSocket(int[] into)
    {
        for (var t = 0; t < into.Length; t++)
        {
            var (at, steps) = (t, 0);
            while (at != Socket)
            {
                (at, steps) = (into[at], steps + 1);
                if (steps > into.Length)
                {
                    return false;
                }
            }
        }

        return true;
    }

    private static bool Next(int[] into)
    {
        for (var t = 0; t < into.Length; t++)
        {
            if (++into[t] < into.Length)
            {
                return true;
            }

            into[t] = Socket;
        }

        return false;
    }
}
