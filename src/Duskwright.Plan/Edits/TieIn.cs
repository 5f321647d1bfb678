using Duskwright.Plan.Document;

namespace Duskwright.Plan.Edits;

/// <summary>A building added to a town that is wired already, with the pair that ties it in. What is laid, and what it hangs on, stays.</summary>
/// <param name="Added">The building; its key is no other's.</param>
/// <param name="Pair">Its pair; none where the town has no board to draw it on.</param>
/// <param name="Taps">A tap that the pair needs, and the one beyond it whose own pair is cut there; none where nothing is cut.</param>
/// <param name="Words">The label.</param>
public sealed record TieIn(Building Added, Route? Pair, ItemList<Tap> Taps, string Words) : TownEdit
{
    /// <summary>A pack that is added for it, with its switch; none where one of the town's is used.</summary>
    public (Supply Supply, SwitchGroup Switch)? Pack { get; init; }

    /// <summary>The pair of the building it goes on from, where that one has no route yet.</summary>
    public Route? Neighbour { get; init; }

    /// <inheritdoc/>
    public override string Label => Words;

    /// <inheritdoc/>
    public override Town Apply(Town town)
    {
        var held = SharedRuns.Held(town);
        var anew = Taps.Where(t => !held.Contains(t.Id)).ToDictionary(t => t.Id, StringComparer.Ordinal);
        var routed = town.Routes.Select(r => r.Building).ToHashSet(StringComparer.Ordinal);
        var standing = town.Taps.Select(t => t.Id).ToHashSet(StringComparer.Ordinal);
        return town with
        {
            Buildings = town.Buildings.Append(Added).ToItemList(),
            Routes = town.Routes.Concat(new[] { Neighbour, Pair }.OfType<Route>().Where(r => !routed.Contains(r.Building))).ToItemList(),
            Taps = town.Taps.Select(t => anew.GetValueOrDefault(t.Id, t)).Concat(Taps.Where(t => !standing.Contains(t.Id))).ToItemList(),
            Supplies = Pack is { } pack ? town.Supplies.Append(pack.Supply).ToItemList() : town.Supplies,
            SwitchGroups = Pack is { } own ? town.SwitchGroups.Append(own.Switch).ToItemList() : town.SwitchGroups,
        };
    }
}
