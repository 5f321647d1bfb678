namespace Duskwright.Harness.Sharing;

/// <summary>Sharings over the same packs to draw districts together from: along the board, and gathered about middles.</summary>
internal static class DistrictStarts
{
    private const int Gatherings = 6;

    /// <summary>The starts that overload no pack.</summary>
    internal static IEnumerable<int[]> Of(SharingProblem problem, int[] packOf)
    {
        int[] packs = [.. packOf.Distinct().Order()];
        return new[] { Swept(problem, packs, l => (l.X, l.Y)), Swept(problem, packs, l => (l.Y, l.X)), Gathered(problem, packs) }.OfType<int[]>();
    }

    // The packs are filled one after another along the board, those with something pinned in the order in which that lies.
    private static int[]? Swept(SharingProblem problem, int[] packs, Func<SharedLoad, (double, double)> along)
    {
        var (swept, room) = Pinned(problem);
        double At(int pack) => problem.Loads.Where(l => l.PinnedPack == pack).Select(l => along(l).Item1).DefaultIfEmpty(double.MaxValue).Average();
        var order = packs.OrderBy(At).ThenBy(p => p).ToList();
        foreach (var l in Enumerable.Range(0, swept.Length).Where(l => swept[l] < 0).OrderBy(l => along(problem.Loads[l])))
        {
            var fits = order.FindIndex(p => room[p] >= problem.Loads[l].Microamperes);
            if (fits < 0)
            {
                return null;
            }

            swept[l] = order[fits];
            room[order[fits]] -= problem.Loads[l].Microamperes;
        }

        return swept;
    }

    // Each load goes to the nearest middle with room, those first that lose the most by having to go to the next; then middles are taken anew.
    private static int[]? Gathered(SharingProblem problem, int[] packs)
    {
        var loads = problem.Loads;
        var middles = Middles(problem, packs);
        int[]? last = null;
        for (var turn = 0; turn < Gatherings; turn++)
        {
            var (gathered, room) = Pinned(problem);
            double Away(int l, int p) => Math.Sqrt(Math.Pow(loads[l].X - middles[p].X, 2) + Math.Pow(loads[l].Y - middles[p].Y, 2));
            double Regret(int l) => packs.Select(p => Away(l, p)).Order().Take(2).ToList() is [var near, var next] ? next - near : 0;
            foreach (var l in Enumerable.Range(0, loads.Length).Where(l => gathered[l] < 0).OrderByDescending(Regret).ThenByDescending(l => loads[l].Microamperes).ThenBy(l => l))
            {
                var fits = packs.Where(p => room[p] >= loads[l].Microamperes).ToList();
                if (fits.Count == 0)
                {
                    return last;
                }

                gathered[l] = fits.MinBy(p => Away(l, p));
                room[gathered[l]] -= loads[l].Microamperes;
            }

            last = gathered;
            foreach (var g in gathered.Select((p, l) => (p, l)).GroupBy(x => x.p, x => x.l))
            {
                middles[g.Key] = (g.Average(l => loads[l].X), g.Average(l => loads[l].Y));
            }
        }

        return last;
    }

    // Where something is pinned, its middle; else the load that lies farthest from all middles so far.
    private static Dictionary<int, (double X, double Y)> Middles(SharingProblem problem, int[] packs)
    {
        var middles = new Dictionary<int, (double X, double Y)>();
        foreach (var g in problem.Loads.Where(l => l.PinnedPack is not null).GroupBy(l => l.PinnedPack!.Value))
        {
            middles[g.Key] = (g.Average(l => l.X), g.Average(l => l.Y));
        }

        foreach (var pack in packs.Where(p => !middles.ContainsKey(p)))
        {
            var far = middles.Count == 0
                ? problem.Loads.OrderBy(l => l.X).ThenBy(l => l.Y).First()
                : problem.Loads.MaxBy(l => middles.Values.Min(m => Math.Pow(l.X - m.X, 2) + Math.Pow(l.Y - m.Y, 2)))!;
            middles[pack] = (far.X, far.Y);
        }

        return middles;
    }

    private static (int[] PackOf, long[] Room) Pinned(SharingProblem problem) => (
        [.. problem.Loads.Select(l => l.PinnedPack ?? -1)],
        [.. problem.Packs.Select((p, i) => p.CapacityMicroamperes - problem.Loads.Where(l => l.PinnedPack == i).Sum(l => (long)l.Microamperes))]);
}
