using Duskwright.Plan;
using Duskwright.Plan.Document;

namespace Duskwright.Study.Bench;

/// <summary>How far the work on one building is: what is done, what is next and what it waits for.</summary>
/// <param name="Building">The building.</param>
/// <param name="Steps">Every step, in an order in which they can be done.</param>
/// <param name="Tests">The last result of each of its tests that has one, by the test's key.</param>
public sealed record HouseWork(Building Building, ItemList<StepWork> Steps, IReadOnlyDictionary<string, LogEntry> Tests)
{
    /// <summary>The first step that is not done and whose steps before are; none where all is done.</summary>
    public StepWork? Next => Steps.Where(s => !s.IsDone && s.WaitsFor.Count == 0).OrderBy(s => s.ReadyAt ?? DateTime.MinValue).FirstOrDefault();

    /// <summary>The step to take up at a moment: the first that is dry, or else the one that is dry first.</summary>
    /// <param name="now">The moment.</param>
    /// <returns>The step; none where all is done.</returns>
    public StepWork? NextAt(DateTime now) => Steps.FirstOrDefault(s => !s.IsDone && s.WaitsFor.Count == 0 && !(s.ReadyAt > now)) ?? Next;

    /// <summary>Why a step may not be ticked: a test that it waits for was not made or not passed.</summary>
    /// <param name="step">Its key.</param>
    /// <returns>The keys of the tests; empty where nothing stands in the way.</returns>
    public ItemList<string> TestsInTheWay(string step) => Steps.FirstOrDefault(s => s.Step.Key == step)?.Untested ?? [];

    /// <summary>How far a building is, from its state and the log.</summary>
    /// <param name="town">The town.</param>
    /// <param name="building">One of its buildings.</param>
    /// <param name="tests">The keys of the tests that the building has.</param>
    /// <returns>Its work.</returns>
    public static HouseWork Of(Town town, Building building, IEnumerable<string> tests)
    {
        var log = town.StandingLog().Where(l => l.Building == building.Key).ToList();
        var ticks = log.Where(l => l.Step is not null && l.Kind is LogKind.StepDone or LogKind.Seal).GroupBy(l => l.Step!, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Last(), StringComparer.Ordinal);
        var results = log.Where(l => l.Kind == LogKind.Test && l.Test is not null).GroupBy(l => l.Test!, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Last(), StringComparer.Ordinal);
        var behind = BuildSteps.BehindIt(building);
        var known = tests.ToList();
        var all = BuildSteps.All(town, building);

        // A house ticked as glued in is fixed from then on, and still has its last test before it.
        bool Done(string step) => ticks.ContainsKey(step) || (behind.Contains(step) && !(step == BuildSteps.LastTest && ticks.ContainsKey(BuildSteps.GlueIn)));
        var steps = all.Select(step => new StepWork(
            step,
            ticks.GetValueOrDefault(step.Key),
            Done(step.Key),
            step.After.Where(w => !Done(w.Step)).Select(w => w.Step).ToItemList(),
            step.After.Where(w => ticks.ContainsKey(w.Step)).Select(w => (DateTime?)ticks[w.Step].At.AddMinutes(w.DryMinutes)).Max(),
            step.Tests.SelectMany(stage => known.Where(t => StageTests.Is(t, stage))).Where(t => results.GetValueOrDefault(t)?.Passed != true).ToItemList()));
        return new HouseWork(building, steps.ToItemList(), results);
    }
}
