using System.Collections.Immutable;

namespace Duskwright.Harness.Sharing;

/// <summary>Shares loads among packs by columns: whole fillings of a pack, priced by a linear programme, then chosen in whole numbers.</summary>
/// <remarks>
/// The bound is the linear programme's over all fillings, never over those at hand: it counts as reached only when no filling left out could lower it,
/// and before that it is lowered by what the best filling left out could gain (L. S. Lasdon, Optimization Theory for Large Systems, 1970, chapter 3).
/// </remarks>
public static class ColumnSharing
{
    /// <summary>Shares the loads at the least cost.</summary>
    /// <param name="problem">Loads and packs.</param>
    /// <param name="settings">How far the search goes.</param>
    /// <param name="cancel">Stops the search; the best sharing so far is given.</param>
    /// <returns>The sharing; without packs where none was found.</returns>
    public static ColumnAnswer Solve(ColumnProblem problem, ColumnSettings settings, CancellationToken cancel = default)
    {
        if (problem.Take.IsEmpty || problem.Take[0].IsEmpty)
        {
            return new ColumnAnswer([], 0, 0);
        }

        var classes = LoadClass.Of(problem);
        using var master = new ColumnMaster(problem.Kinds, classes);
        var best = FirstFit.Share(problem.Kinds, classes);
        foreach (var filling in best ?? [])
        {
            master.Add(filling);
        }

        var (linear, worth, packWorth) = PriceOut(master, problem.Kinds, classes, settings, cancel);
        var atLeast = (long)Math.Ceiling(linear - 1e-6);
        Keep(ColumnMaster.Choose(master.Fillings, problem.Kinds, classes, atLeast, Known(), settings, cancel).Fillings);

        // A sharing that costs so much uses only fillings whose reduced cost lies within what that is above the linear bound.
        // Few of them first; all of them prove that none costs so little, and the bound rises by one.
        while (atLeast < Known() && !cancel.IsCancellationRequested)
        {
            var few = Within(atLeast - linear, settings.MostColumns / 10);
            var (found, searched) = Choose(few.Fillings);
            Keep(found);
            if (atLeast == Known())
            {
                break;
            }

            var many = few.All ? few : Within(atLeast - linear, settings.MostColumns);
            if (!few.All)
            {
                (found, searched) = Choose(many.Fillings);
                Keep(found);
            }

            if (!many.All || !searched || best is null)
            {
                break;
            }

            atLeast = Math.Min(atLeast + 1, Known());
        }

        return best is null
            ? new ColumnAnswer([], 0, atLeast)
            : new ColumnAnswer(Unpack(best.Value, classes), CostOf(best.Value), Math.Min(atLeast, CostOf(best.Value)));

        long Known() => best is null ? long.MaxValue / 4 : CostOf(best.Value);

        void Keep(ImmutableArray<Filling>? other) => best = other is not null && CostOf(other.Value) < Known() ? other : best;

        (List<Filling> Fillings, bool All) Within(double slack, int most) => FillingsWithin(slack, most, problem.Kinds, classes, worth, packWorth);

        (ImmutableArray<Filling>? Fillings, bool Searched) Choose(List<Filling> within) => ColumnMaster.Choose(
            [.. within.Concat(master.Fillings).DistinctBy(f => f.Key)], problem.Kinds, classes, atLeast, Known(), settings, cancel);
    }

    private static (double Linear, double[] Worth, double[] PackWorth) PriceOut(
        ColumnMaster master, ImmutableArray<PackKind> kinds, ImmutableArray<LoadClass> classes, ColumnSettings settings, CancellationToken cancel)
    {
        // What the worths alone are worth: with what a filling left out could gain it bounds every sharing, whatever the worths are.
        double Value(double[] worth, double[] packWorth) => classes.Select((c, i) => c.Loads.Length * worth[i]).Sum() + kinds.Select((k, i) => k.OnHand * packWorth[i]).Sum();

        // Every load where it costs least, and every pack that pays for itself: no filling can gain on that.
        double[] bestWorth = [.. classes.Select(c => (double)c.Cost.Min())], bestPackWorth = [.. kinds.Select(k => Math.Min(0.0, k.Cost))];
        var bound = Value(bestWorth, bestPackWorth);
        for (var round = 0; round < settings.Rounds && !cancel.IsCancellationRequested; round++)
        {
            if (master.Price() is not var (worth, packWorth))
            {
                break;
            }

            var value = Value(worth, packWorth);
            var (gain, added) = (0.0, false);
            for (var k = 0; k < kinds.Length; k++)
            {
                var knapsack = new Knapsack(k, kinds[k].Capacity, classes, [.. classes.Select((c, i) => worth[i] - c.Cost[k])]);
                var reduced = kinds[k].Cost - packWorth[k] - knapsack.Greatest;
                if (reduced < -1e-7)
                {
                    // No more packs of a kind than are on hand, nor than there are loads, can use a filling left out.
                    gain += reduced * Math.Min(kinds[k].OnHand, classes.Sum(c => c.Loads.Length));
                    added |= master.Add(Filling.Of(k, knapsack.Best(), classes, kinds));
                }
            }

            if (value + gain > bound)
            {
                (bound, bestWorth, bestPackWorth) = (value + gain, worth, packWorth);
            }

            if (!added)
            {
                break;
            }
        }

        return (bound, bestWorth, bestPackWorth);
    }

    private static (List<Filling> Fillings, bool All) FillingsWithin(
        double slack, int most, ImmutableArray<PackKind> kinds, ImmutableArray<LoadClass> classes, double[] worth, double[] packWorth)
    {
        var (fillings, all) = (new List<Filling>(), true);
        for (var k = 0; k < kinds.Length; k++)
        {
            var least = kinds[k].Cost - packWorth[k] - slack - 1e-6;
            var (counts, complete) = new Knapsack(k, kinds[k].Capacity, classes, [.. classes.Select((c, i) => worth[i] - c.Cost[k])])
                .AtLeast(least, most / kinds.Length);
            fillings.AddRange(counts.Select(n => Filling.Of(k, n, classes, kinds)));
            all &= complete;
        }

        return (fillings, all);
    }

    private static long CostOf(ImmutableArray<Filling> fillings) => fillings.Sum(f => f.Cost);

    private static ImmutableArray<FilledPack> Unpack(ImmutableArray<Filling> fillings, ImmutableArray<LoadClass> classes)
    {
        var next = new int[classes.Length];
        return
        [
            .. fillings.Where(f => f.Counts.Any(n => n > 0)).Select(f => new FilledPack(f.Kind,
            [
                .. f.Counts.SelectMany((n, i) => Enumerable.Range(0, n).Select(_ => classes[i].Loads[next[i]++])).Order(),
            ])),
        ];
    }
}
