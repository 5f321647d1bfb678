using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Results;

/// <summary>Which houses light with another when that is switched on at the bank, because they hang on one run of shared pairs.</summary>
internal sealed class RunCompany
{
    private const string Join = "join";

    private readonly ResolvedTown _resolved;
    private readonly HashSet<string> _wired;

    internal RunCompany(ResolvedTown resolved)
    {
        _resolved = resolved;
        _wired = resolved.Town.StandingLog().Where(l => l.Kind == LogKind.StepDone && l.Step == Join).Select(l => l.Building)
            .Concat(resolved.Town.Buildings.Where(b => b.State == BuildingState.Fixed).Select(b => b.Key))
            .OfType<string>()
            .ToHashSet(StringComparer.Ordinal);
    }

    /// <summary>The houses whose pair goes on to a building, and of the others on its run those that are joined already.</summary>
    /// <param name="building">The building's key.</param>
    /// <param name="pack">Its supply with what hangs on it.</param>
    /// <returns>In the order of the document; none where its pair has its own ends at the switch.</returns>
    internal ItemList<ResolvedBuilding> Of(string building, PackInput pack)
    {
        var company = new HashSet<string>(StringComparer.Ordinal);
        foreach (var group in pack.Groups.Where(g => g.Shared.Count > 0))
        {
            if (group.Pairs.FirstOrDefault(p => p.Building == building) is { Junction: not 0 } own)
            {
                var way = Way(group, own.Junction);
                company.UnionWith(group.Pairs.Where(p => p.Junction != 0 && Way(group, p.Junction)[^1] == way[^1] && (way.Exists(s => s.Run == p.Building) || _wired.Contains(p.Building))).Select(p => p.Building));
            }
        }

        company.Remove(building);
        return company.Count == 0 ? [] : _resolved.Buildings.Where(b => company.Contains(b.Building.Key)).ToItemList();
    }

    // The shared pairs from a junction back to the switch.
    private static List<SharedPairInput> Way(GroupInput group, int junction)
    {
        var way = new List<SharedPairInput>();
        for (var at = junction; at != 0; at = way[^1].From)
        {
            way.Add(group.Shared.First(s => s.To == at));
        }

        return way;
    }
}
