using System.Collections.Immutable;
using Duskwright.Harness.Sharing;

namespace Duskwright.Harness.Cutting;

/// <summary>Cuts leads from reels so that least is wasted: the cutting stock problem, solved by columns.</summary>
/// <remarks>
/// A column is what is cut from one reel (P. C. Gilmore and R. E. Gomory, A linear programming approach to the cutting-stock problem,
/// Operations Research 9 (1961) 849-859), as a column of <see cref="ColumnSharing"/> is what hangs on one pack. Repeats exactly.
/// </remarks>
public static class CuttingPlanner
{
    // Steps of the weighing of one reel, millimetres by kinds of lead: as fine a grain as this allows, down to a millimetre.
    private const long MostSteps = 1_000_000;

    private static readonly ColumnSettings Quick = new(Rounds: 200, MostColumns: 1000, DeterministicSeconds: 0.3);

    /// <summary>Plans the cutting.</summary>
    /// <param name="problem">Leads and reels.</param>
    /// <param name="cancel">Stops the search; the best plan so far is given.</param>
    /// <returns>The plan; always one.</returns>
    public static CuttingPlan Plan(CuttingProblem problem, CancellationToken cancel = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(problem.NewMillimetres, 1);
        var longest = Math.Max(problem.NewMillimetres, problem.OnHandMillimetres.DefaultIfEmpty(0).Max());
        var leads = Enumerable.Range(0, problem.LeadsMillimetres.Length).ToLookup(i => problem.LeadsMillimetres[i] <= longest);
        var cut = new Cutting(problem, [.. leads[true]]);
        if (cut.Leads.IsEmpty)
        {
            return new CuttingPlan([], [.. leads[false]], 0, 0, 0, 0);
        }

        var fewest = cut.Least(cut.Leads.Length, ofNew: 1, ofOnHand: _ => 0, cut.NewBySum, cancel);
        var newReels = fewest.Packs.Count(p => cut.IsNew(p.Kind));
        var (packs, begun, begunAtLeast) = (fewest.Packs, cut.Begun(fewest.Packs), 0L);
        if (begun > 0)
        {
            var unit = cut.Kinds.Aggregate(0, (g, k) => Divisor(g, k.Millimetres));
            var shortest = cut.Least(newReels, ofNew: 0, ofOnHand: mm => mm / unit, (cut.BegunBySum(newReels) + unit - 1) / unit, cancel);
            packs = !shortest.Packs.IsEmpty && cut.Begun(shortest.Packs) < begun ? shortest.Packs : packs;
            (begun, begunAtLeast) = (cut.Begun(packs), Math.Min(cut.Begun(packs), shortest.AtLeast * unit));
        }

        return new CuttingPlan(cut.Reels(packs), [.. leads[false]], newReels, (int)fewest.AtLeast, begun, begunAtLeast);
    }

    private static int Divisor(int a, int b) => b == 0 ? a : Divisor(b, a % b);

    private sealed class Cutting
    {
        private readonly CuttingProblem _problem;
        private readonly int _grain;

        internal Cutting(CuttingProblem problem, ImmutableArray<int> leads)
        {
            (_problem, Leads) = (problem, leads);

            // Reels of one length are interchangeable; the new ones come last.
            Kinds = [.. problem.OnHandMillimetres.Select((mm, i) => (mm, i)).Where(x => x.mm > 0).GroupBy(x => x.mm, x => x.i).Select(g => (g.Key, g.ToImmutableArray())), (problem.NewMillimetres, [])];
            var longest = Kinds.Max(k => k.Millimetres);
            var grains = Math.Max(1, MostSteps / Math.Max(1, leads.CountBy(Length).Sum(n => (long)Math.Min(n.Value, longest / n.Key))));
            _grain = (int)Math.Max(1, (longest + grains - 1) / grains);
        }

        internal ImmutableArray<int> Leads { get; }

        internal ImmutableArray<(int Millimetres, ImmutableArray<int> Reels)> Kinds { get; }

        // What any plan must buy, and begin beside so many new reels, by length alone.
        internal long NewBySum => Math.Max(0, (BegunBySum(0) - Kinds.Sum(k => (long)k.Millimetres * k.Reels.Length) + _problem.NewMillimetres - 1) / _problem.NewMillimetres);

        internal long BegunBySum(int newReels) => Math.Max(0, Leads.Sum(l => (long)Length(l)) - ((long)newReels * _problem.NewMillimetres));

        internal bool IsNew(int kind) => kind == Kinds.Length - 1;

        internal long Begun(ImmutableArray<FilledPack> packs) => packs.Where(p => !IsNew(p.Kind)).Sum(p => (long)Kinds[p.Kind].Millimetres);

        // Leads rounded up may take more than they do, so where they are, the bound is of leads rounded down, and reels cut full one after another may do better.
        internal ColumnAnswer Least(int newOnHand, long ofNew, Func<int, long> ofOnHand, long bySum, CancellationToken cancel)
        {
            var first = FullestReels.Cut(Kinds.Select((k, i) => (k.Millimetres, IsNew(i) ? newOnHand : k.Reels.Length)), [.. Leads.Select(Length)]) is { } full
                ? new ColumnAnswer(full, full.Sum(p => IsNew(p.Kind) ? ofNew : ofOnHand(Kinds[p.Kind].Millimetres)), bySum)
                : null;
            if (first?.Cost == bySum)
            {
                return first;
            }

            var answer = ColumnSharing.Solve(Columns(up: true), Quick, cancel);
            var atLeast = _grain == 1 ? answer.AtLeast : ColumnSharing.Solve(Columns(up: false), Quick, cancel).AtLeast;
            var best = first is not null && (answer.Packs.IsEmpty || first.Cost <= answer.Cost) ? first : answer;
            return best with { AtLeast = Math.Max(bySum, best.Packs.IsEmpty ? atLeast : Math.Min(atLeast, best.Cost)) };

            ColumnProblem Columns(bool up)
            {
                ImmutableArray<int> take = [.. Leads.Select(l => (Length(l) + (up ? _grain - 1 : 0)) / _grain)];
                return new ColumnProblem(
                    [.. Kinds.Select((k, i) => new PackKind((k.Millimetres + (up ? 0 : _grain - 1)) / _grain, IsNew(i) ? newOnHand : k.Reels.Length, IsNew(i) ? ofNew : ofOnHand(k.Millimetres)))],
                    [.. Kinds.Select(_ => take)],
                    [.. Kinds.Select(_ => Leads.Select(_ => 0L).ToImmutableArray())]);
            }
        }

        internal ImmutableArray<CutReel> Reels(ImmutableArray<FilledPack> packs)
        {
            var next = new int[Kinds.Length];
            return
            [
                .. packs.OrderBy(p => IsNew(p.Kind)).ThenBy(p => p.Kind).Select(p =>
                {
                    ImmutableArray<int> leads = [.. p.Loads.Select(l => Leads[l])];
                    return new CutReel(
                        IsNew(p.Kind) ? null : Kinds[p.Kind].Reels[next[p.Kind]++], Kinds[p.Kind].Millimetres, leads, Kinds[p.Kind].Millimetres - leads.Sum(Length));
                }),
            ];
        }

        private int Length(int lead) => _problem.LeadsMillimetres[lead];
    }
}
