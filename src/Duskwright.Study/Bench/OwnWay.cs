using Duskwright.Plan;
using Duskwright.Plan.Document;

namespace Duskwright.Study.Bench;

/// <summary>The usual steps of a house with what its maker does otherwise.</summary>
internal static class OwnWay
{
    private const string Source = "the maker's own";

    internal static List<BenchStep> Of(IReadOnlyList<BenchStep> usual, BuildWay? way)
    {
        var steps = usual.ToList();
        if (way is null)
        {
            return steps;
        }

        foreach (var change in way.Changed)
        {
            Change(steps, change);
        }

        foreach (var own in way.Added)
        {
            Add(steps, own);
        }

        var ordered = Ordered(steps, way.Order);
        foreach (var own in way.Added.Where(a => a.Test is { BeforeSeal: true }))
        {
            HoldSeal(ordered, own.Key);
        }

        return ordered;
    }

    private static void Change(List<BenchStep> steps, ChangedStep change)
    {
        var at = steps.FindIndex(s => s.Key == change.Step);
        if (at < 0)
        {
            return;
        }

        var step = steps[at];
        if (change.LeftOut && step.MayBeLeftOut)
        {
            steps.RemoveAt(at);
            Rewait(steps, w => w.Step == step.Key ? step.After : [w]);
            return;
        }

        steps[at] = step with
        {
            Words = change.Words ?? step.Words,
            Minutes = change.Minutes ?? step.Minutes,
            DryMinutes = change.DryMinutes ?? step.DryMinutes,
            Source = Source,
        };
        if (change.DryMinutes is { } dry)
        {
            Rewait(steps, w => [w.Step != step.Key ? w : w with { DryMinutes = step.DryMinutes == 0 ? dry : (int)Math.Ceiling(w.DryMinutes * (double)dry / step.DryMinutes) }]);
        }
    }

    private static void Add(List<BenchStep> steps, OwnStep own)
    {
        var at = steps.FindIndex(s => s.Key == own.After);

        // As soon as anything else may go on from the step before it.
        ItemList<StepWait> after = at < 0 ? [] : [new StepWait(own.After!, steps.SelectMany(s => s.After).Where(w => w.Step == own.After).Select(w => w.DryMinutes).DefaultIfEmpty(steps[at].DryMinutes).Min())];
        var before = at < 0 ? [] : Behind(steps, own.After!);
        steps.Insert(at + 1, new BenchStep(own.Key, own.Words, own.Minutes, after, own.DryMinutes, own.Seals, [], null, Source) { IsOwn = true, Tests = own.Seals ? Tests(before) : [], OwnTest = own.Test is null ? null : StageTests.Own(own.Key) });
        var waiting = steps.FindIndex(s => s.Key == own.Before);
        if (waiting >= 0 && !before.Contains(own.Before!))
        {
            steps[waiting] = steps[waiting] with { After = steps[waiting].After.Add(new StepWait(own.Key, own.DryMinutes)) };
        }
    }

    // The step itself and the next that seals: who goes on with a reason at the one is asked again at the other.
    private static void HoldSeal(List<BenchStep> steps, string own)
    {
        var at = steps.FindIndex(s => s.Key == own);
        foreach (var i in new[] { at, steps.FindIndex(at, s => s.Seals) }.Where(i => i >= 0).Distinct())
        {
            steps[i] = steps[i] with { Tests = steps[i].Tests.Add(StageTests.Own(own)) };
        }
    }

    // What can be tested by then, up to the house at the bank; else the lamps alone.
    private static ItemList<string> Tests(HashSet<string> behind)
    {
        string[] After(string step, params string[] tests) => behind.Contains(step) ? tests : [];
        return behind.Contains("fit")
            ? [StageTests.RoofOff, StageTests.TurnedRound, .. After("close", StageTests.InTheDark), .. After("feed", StageTests.Fed), .. After("join", StageTests.AtTheBank)]
            : [.. After("lamps", StageTests.OnTheBench)];
    }

    private static HashSet<string> Behind(List<BenchStep> steps, string key)
    {
        var behind = new HashSet<string>(StringComparer.Ordinal) { key };
        var open = new Queue<string>([key]);
        while (open.TryDequeue(out var next))
        {
            foreach (var wait in steps.FirstOrDefault(s => s.Key == next)?.After.Where(w => behind.Add(w.Step)) ?? [])
            {
                open.Enqueue(wait.Step);
            }
        }

        return behind;
    }

    private static void Rewait(List<BenchStep> steps, Func<StepWait, IEnumerable<StepWait>> change)
    {
        for (var i = 0; i < steps.Count; i++)
        {
            steps[i] = steps[i] with { After = steps[i].After.SelectMany(change).GroupBy(w => w.Step, StringComparer.Ordinal).Select(g => g.MaxBy(w => w.DryMinutes)!).ToItemList() };
        }
    }

    // The wanted order as far as waiting allows; a step that the order does not name stays behind the one before it.
    private static List<BenchStep> Ordered(List<BenchStep> steps, ItemList<string> wanted)
    {
        var place = -1;
        var places = steps.ToDictionary(s => s.Key, s => place = wanted.Select((k, i) => (k, i)).Where(x => x.k == s.Key).Select(x => (int?)x.i).FirstOrDefault() ?? place, StringComparer.Ordinal);
        var (left, ordered) = (steps.OrderBy(s => places[s.Key]).ToList(), new List<BenchStep>());
        while (left.Count > 0)
        {
            var next = left.FirstOrDefault(s => s.After.All(w => left.TrueForAll(o => o.Key != w.Step))) ?? left[0];
            left.Remove(next);
            ordered.Add(next);
        }

        return ordered;
    }
}
