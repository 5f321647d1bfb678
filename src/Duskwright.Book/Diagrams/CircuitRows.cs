using Duskwright.Book.Houses;
using Duskwright.Study;
using Duskwright.Study.Results;

namespace Duskwright.Book.Diagrams;

/// <summary>The lines of a circuit in the order they are drawn: pack by pack, switch by switch, building by building.</summary>
internal static class CircuitRows
{
    /// <summary>The packs that are one circuit: those that share a return wire, else each by itself.</summary>
    internal static IEnumerable<IReadOnlyList<PackResult>> Circuits(TownStudy study)
    {
        var lit = study.Packs.Where(p => p.Lamps > 0).ToList();
        return study.Town.Wiring is { ReturnWire: not null, ReturnLength.Metres: > 0 } && lit.Count > 0 ? [lit] : lit.Select(p => (IReadOnlyList<PackResult>)[p]);
    }

    internal static IReadOnlyList<CircuitRow> Of(TownStudy study, IReadOnlyList<PackResult> packs)
    {
        var rows = (from pack in packs
                    from grp in study.Town.SwitchGroups
                    where grp.Supply == pack.Supply.Id
                    from house in study.Buildings
                    from lamp in house.Lamps.Zip(JointNumbers.Of(house.Lamps), (l, j) => (Result: l, Joints: j))
                    where lamp.Result.SwitchGroup == grp.Id
                    select new CircuitRow(pack, grp, house, lamp.Result, lamp.Joints)).ToList();
        return
        [
            .. rows.Select((row, i) =>
            {
                var (before, after) = (i > 0 ? rows[i - 1] : null, i < rows.Count - 1 ? rows[i + 1] : null);
                return row with
                {
                    First = (before?.Pack != row.Pack, before?.Group != row.Group, before?.HouseKey != row.HouseKey),
                    Last = (after?.Pack != row.Pack, after?.HouseKey != row.HouseKey),
                };
            }),
        ];
    }

    /// <summary>Cuts the lines into pages; a building goes on over a page's end only where it is taller than a page.</summary>
    internal static IReadOnlyList<(int From, int To)> Pages(IReadOnlyList<CircuitRow> rows, double height)
    {
        var pages = new List<(int, int)>();
        var (from, used) = (0, 0.0);
        for (var i = 0; i < rows.Count; i++)
        {
            var whole = rows[i].First.House ? rows.Skip(i).TakeWhile(r => r.HouseKey == rows[i].HouseKey).Sum(r => r.Above + r.Below) : 0;
            var needed = whole <= height ? Math.Max(whole, rows[i].Above + rows[i].Below) : rows[i].Above + rows[i].Below;
            if (i > from && used + needed > height)
            {
                pages.Add((from, i - 1));
                (from, used) = (i, 0);
            }

            used += rows[i].Above + rows[i].Below;
        }

        if (rows.Count > 0)
        {
            pages.Add((from, rows.Count - 1));
        }

        return pages;
    }
}
