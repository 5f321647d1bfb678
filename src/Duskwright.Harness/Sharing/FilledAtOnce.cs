namespace Duskwright.Harness.Sharing;

/// <summary>A sharing to show at once: what is pinned where it is, the rest greatest first, each into the first pack in use that takes it.</summary>
internal static class FilledAtOnce
{
    internal static int[]? Share(SharingProblem problem)
    {
        var packOf = problem.Loads.Select(l => l.PinnedPack ?? -1).ToArray();
        var room = problem.Packs.Select((p, i) => p.CapacityMicroamperes - problem.Loads.Where(l => l.PinnedPack == i).Sum(l => (long)l.Microamperes)).ToArray();
        var used = packOf.Where(p => p >= 0).ToHashSet();
        foreach (var load in Enumerable.Range(0, packOf.Length).Where(l => packOf[l] < 0).OrderByDescending(l => problem.Loads[l].Microamperes).ThenBy(l => l))
        {
            var takes = problem.Loads[load].Microamperes;
            var pack = Enumerable.Range(0, room.Length).Where(p => room[p] >= takes).OrderBy(p => used.Contains(p) ? 0 : 1).ThenBy(p => p).Select(p => (int?)p).FirstOrDefault();
            if (pack is not { } into)
            {
                return null;
            }

            packOf[load] = into;
            room[into] -= takes;
            used.Add(into);
        }

        return packOf;
    }
}
