using Duskwright.Plan.Document;

namespace Duskwright.Study.Bench;

/// <summary>What dries at a moment, and what can be taken up while it does.</summary>
/// <param name="Drying">Houses that wait for something to dry, the first to be dry first.</param>
/// <param name="Ready">Steps whose time has come, like work together; houses already begun come first.</param>
public sealed record Meanwhile(IReadOnlyList<DryingHouse> Drying, IReadOnlyList<ReadyWork> Ready)
{
    /// <summary>Tells it of a whole town.</summary>
    /// <param name="town">The town.</param>
    /// <param name="now">The moment, by the clock of the log.</param>
    /// <returns>What dries and what is ready; both empty where every house is fixed.</returns>
    public static Meanwhile At(Town town, DateTime now)
    {
        var works = town.Buildings.Select(b => HouseWork.Of(town, b, [])).ToList();
        var drying = works
            .SelectMany(w => w.Steps.Where(s => !s.IsDone && s.WaitsFor.Count == 0 && s.ReadyAt > now).Take(1).Select(s => new DryingHouse(w.Building.Name, w.Building.Key, s.Step.Words, s.ReadyAt!.Value)))
            .OrderBy(d => d.Until)
            .ToList();
        var ready = works
            .OrderBy(w => w.Building.State == BuildingState.Idea && !w.Steps.Any(s => s.IsDone))
            .SelectMany(w => w.Steps.Where(s => !s.IsDone && s.WaitsFor.Count == 0 && !(s.ReadyAt > now)).Select(s => (w.Building, s.Step)))
            .GroupBy(x => x.Step.Key, StringComparer.Ordinal)
            .Select(g => new ReadyWork(g.Key, g.First().Step.Words, [.. g.Select(x => (x.Building.Name, x.Building.Key, x.Step.Minutes))]))
            .ToList();
        return new Meanwhile(drying, ready);
    }
}

/// <summary>A house that waits for something to dry.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Key">Its key.</param>
/// <param name="Then">What is done next.</param>
/// <param name="Until">When it is dry.</param>
public sealed record DryingHouse(string Name, string Key, string Then, DateTime Until);

/// <summary>One kind of work whose time has come, with the houses on which it can be done.</summary>
/// <param name="Step">The step's key.</param>
/// <param name="Words">What is done, as it is called on the first of them.</param>
/// <param name="Houses">The houses by name and key, with hands-on minutes each.</param>
public sealed record ReadyWork(string Step, string Words, IReadOnlyList<(string Name, string Key, int Minutes)> Houses);
