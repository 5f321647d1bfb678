using Duskwright.Plan.Document;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Lists;

/// <summary>What of a town is there already and is neither cut nor bought again.</summary>
/// <remarks>A house that is fixed was proved on its pack before it was glued: its pair, its switch and its pack stand.</remarks>
internal sealed class Standing
{
    private readonly HashSet<string> _pairs;
    private readonly HashSet<string> _switches;
    private readonly HashSet<string> _supplies;

    private Standing(HashSet<string> pairs, HashSet<string> switches, HashSet<string> supplies) =>
        (_pairs, _switches, _supplies) = (pairs, switches, supplies);

    internal static Standing In(ResolvedTown resolved)
    {
        var town = resolved.Town;
        var built = resolved.Buildings.Where(b => b.Building.State == BuildingState.Fixed).ToList();
        var pairs = SharedRuns.Held(town).ToHashSet(StringComparer.Ordinal);
        var switches = built.SelectMany(b => b.Lamps).Select(l => l.SwitchGroup).OfType<string>().ToHashSet(StringComparer.Ordinal);

        // Nobody reads or refills a pack that is not there.
        var supplies = town.SwitchGroups.Where(g => switches.Contains(g.Id)).Select(g => g.Supply)
            .Concat(town.Log.Select(e => e.Supply)).OfType<string>().ToHashSet(StringComparer.Ordinal);
        return new Standing(pairs, switches, supplies);
    }

    /// <summary>Whether a house's pair lies already.</summary>
    internal bool Pair(Building building) => _pairs.Contains(building.Key);

    /// <summary>Whether a shared pair lies already.</summary>
    internal bool Tap(Tap tap) => _pairs.Contains(tap.Id);

    /// <summary>Whether a switch is wired up already.</summary>
    internal bool Switch(SwitchGroup group) => _switches.Contains(group.Id);

    /// <summary>Whether a pack is at the bank already.</summary>
    internal bool Pack(Supply supply) => _supplies.Contains(supply.Id);
}
