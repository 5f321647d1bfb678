using System.Collections.Immutable;

namespace Duskwright.Harness.Trunks;

/// <summary>The shortest trunk that joins a bank and its taps along wireways that several may share: a Steiner tree.</summary>
/// <remarks>A grown and improved tree from above; dual ascent, cuts in a linear programme and, where those do not meet, whole numbers from below. Repeats exactly.</remarks>
public static class TrunkRouter
{
    // Sums of lengths are equal to about this share.
    private const double Same = 1e-9;

    /// <summary>Finds the trunk.</summary>
    /// <param name="net">Where it may run.</param>
    /// <param name="terminals">Junctions to join; the first is the bank.</param>
    /// <param name="settings">How far the proof is taken.</param>
    /// <param name="cancel">Stops the proof; the tree found so far is given with the bound so far.</param>
    /// <returns>The trunk with its bound, or the terminals that cannot be reached.</returns>
    public static TrunkAnswer Shortest(WireNet net, ImmutableArray<int> terminals, TrunkSettings settings, CancellationToken cancel = default)
    {
        terminals = [.. terminals.Distinct()];
        if (terminals.Length < 2)
        {
            return new TrunkAnswer([], 0, 0, true, []);
        }

        var unreached = TrunkGrowth.Unreached(net, terminals);
        if (!unreached.IsEmpty)
        {
            return new TrunkAnswer([], 0, 0, false, unreached);
        }

        var tree = TrunkGrowth.Best(net, terminals, settings.Starts);
        var metres = TrunkGrowth.Metres(net, tree);
        var (bound, cuts, _) = DualAscent.Run(net, terminals);
        var close = Same * Math.Max(1, metres);
        if (bound < metres - close && settings.Rounds > 0)
        {
            var formulation = new TrunkCuts(net, terminals, cuts);
            bound = Math.Max(bound, formulation.LinearBound(metres, settings.Rounds, cancel));
            Keep(formulation.Guided(settings.Starts));
            if (bound < metres - close && formulation.Whole(settings, cancel) is { } whole)
            {
                bound = Math.Max(bound, Math.Min(whole.AtLeastMetres, metres));
                Keep(whole.Pieces);
            }
        }

        // What the solver's whole numbers leave is below a thousandth of a millimetre a piece.
        bound = Math.Min(bound, metres);
        return new TrunkAnswer([.. tree.Order()], metres, bound, metres - bound < 1e-6 * net.Pieces.Length, []);

        void Keep(ImmutableArray<int> other)
        {
            if (TrunkGrowth.Metres(net, other) is var length && length < metres)
            {
                (tree, metres) = (other, length);
            }
        }
    }
}
