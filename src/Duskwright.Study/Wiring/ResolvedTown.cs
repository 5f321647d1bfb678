using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;

namespace Duskwright.Study.Wiring;

/// <summary>A town with everything that was not said filled in.</summary>
internal sealed record ResolvedTown(Town Town, IReadOnlyList<ResolvedBuilding> Buildings)
{
    /// <summary>Where each pair begins that does not begin at the bank.</summary>
    internal IReadOnlyDictionary<string, string> Starts { get; } = SharedRuns.Starts(Town);

    internal static ResolvedTown Of(Town town, Memo memo)
    {
        var givens = new ResolvingGivens(
            town.Wiring,
            town.OwnParts,
            town.Supplies,
            town.SwitchGroups,
            town.Board?.Bank,
            town.Buildings.Where(b => b.Distance is not null).Select(b => b.Distance!.Value.Metres).Order().ToItemList());
        var routes = new Dictionary<string, Route>(StringComparer.Ordinal);
        foreach (var route in town.Routes)
        {
            routes.TryAdd(route.Building, route);
        }

        return new(town, [.. town.Buildings.Select(b => memo.Get(
            new ResolvingQuery(b, routes.GetValueOrDefault(b.Key), givens),
            q => new ResolvedBuilding(b, Resolver.Pair(town, b), Resolver.Lamps(town, b))))]);
    }
}

/// <summary>A building with everything that was not said filled in.</summary>
internal sealed record ResolvedBuilding(Building Building, ResolvedPair Pair, IReadOnlyList<ResolvedLamp> Lamps);

/// <summary>What the town says for all its buildings, as far as resolving one reads it.</summary>
internal sealed record ResolvingGivens(
    WiringChoices Wiring, PartList OwnParts, ItemList<Supply> Supplies, ItemList<SwitchGroup> SwitchGroups, Bank? Bank, ItemList<double> DistancesMetres);

/// <summary>All that resolving a building reads.</summary>
internal sealed record ResolvingQuery(Building Building, Route? Route, ResolvingGivens Givens)
{
    // Few buildings share a key; hashing the whole would cost more than the answer.
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Building.Key);

    public bool Equals(ResolvingQuery? other) =>
        other is not null && Building.Equals(other.Building) && Equals(Route, other.Route) && Givens.Equals(other.Givens);
}
