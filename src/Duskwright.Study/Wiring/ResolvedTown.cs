using Duskwright.Plan.Document;

namespace Duskwright.Study.Wiring;

/// <summary>A town with everything that was not said filled in.</summary>
internal sealed record ResolvedTown(Town Town, IReadOnlyList<ResolvedBuilding> Buildings)
{
    internal static ResolvedTown Of(Town town) =>
        new(town, [.. town.Buildings.Select(b => new ResolvedBuilding(b, Resolver.Pair(town, b), Resolver.Lamps(town, b)))]);
}

/// <summary>A building with everything that was not said filled in.</summary>
internal sealed record ResolvedBuilding(Building Building, ResolvedPair Pair, IReadOnlyList<ResolvedLamp> Lamps);
