using Duskwright.Harness.Laying;
using Duskwright.Plan;

namespace Duskwright.Study.Lists;

/// <summary>The order in which pairs are pulled and houses set down.</summary>
/// <param name="Rows">What to do, in order; none on a town without a board, or where every house is glued.</param>
/// <param name="Notes">Knots and shut ways in words, each with its remedy.</param>
/// <param name="Glued">The keys of the houses that are glued before the first step.</param>
/// <param name="Loose">The keys of those that stand loose with their pair laid before the first step.</param>
public sealed record LayingList(ItemList<LayingRow> Rows, ItemList<string> Notes, ItemList<string> Glued, ItemList<string> Loose)
{
    /// <summary>The houses that must stay to lift off, or the pairs beneath them can never be pulled again.</summary>
    public ItemList<RemovableHouse> Removable { get; init; } = [];

    /// <summary>The ids of the taps whose pair is laid before the first step.</summary>
    public ItemList<string> LaidTaps { get; init; } = [];

    /// <summary>What is done for the pair of one house: neighbours lifted out that stand over its way, the pair pulled, neighbours set back.</summary>
    /// <param name="building">Its key.</param>
    /// <returns>The rows in order; none where its pair is laid already, or where it has no place on the board.</returns>
    public ItemList<LayingRow> Around(string building)
    {
        var own = Rows.ToList().FindIndex(r => r.Building == building && r.Act is LayingAct.PullFirst or LayingAct.SetDown);
        return own < 0
            ? []
            : Rows.Take(own).Reverse().TakeWhile(r => r.Act == LayingAct.TakeOut).Reverse().Append(Rows[own]).Concat(Rows.Skip(own + 1).TakeWhile(r => r.Act == LayingAct.PutBack)).ToItemList();
    }

    /// <summary>What stands and what is pulled after a number of steps.</summary>
    /// <param name="steps">How many steps are done, from 0 to the number of <see cref="Rows"/>.</param>
    /// <returns>The keys of the houses in their places, and of those whose pair is pulled, with the ids of the taps that are laid.</returns>
    public (ItemList<string> Standing, ItemList<string> Pulled) After(int steps)
    {
        var standing = Glued.Concat(Loose).ToHashSet(StringComparer.Ordinal);
        var pulled = standing.Concat(LaidTaps).ToHashSet(StringComparer.Ordinal);
        foreach (var row in Rows.Take(steps))
        {
            _ = row.Act switch
            {
                LayingAct.TakeOut => standing.Remove(row.Building),
                LayingAct.PullFirst or LayingAct.LayShared => pulled.Add(row.Building),
                _ => standing.Add(row.Building) | pulled.Add(row.Building),
            };
        }

        return (standing.Order(StringComparer.Ordinal).ToItemList(), pulled.Order(StringComparer.Ordinal).ToItemList());
    }
}

/// <summary>A house that stands over the way of other houses' pairs.</summary>
/// <param name="Building">Its key.</param>
/// <param name="Words">Over whose ways it stands, when it is lifted, and what gluing it would do.</param>
public sealed record RemovableHouse(string Building, string Words);

/// <summary>One step of laying and setting down.</summary>
/// <param name="Number">Its place in the order, from 1.</param>
/// <param name="Act">What is done.</param>
/// <param name="Building">The building's key; the tap's id where a shared pair is laid.</param>
/// <param name="Do">What to do, in words.</param>
/// <param name="Because">Why now; empty where the order is free.</param>
public sealed record LayingRow(int Number, LayingAct Act, string Building, string Do, string Because)
{
    /// <summary>The keys of the houses that will stand over the way of its pair, and so are fed after it; none in other rows.</summary>
    public ItemList<string> CoveredBy { get; init; } = [];
}
