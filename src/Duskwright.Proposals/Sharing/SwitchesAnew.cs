using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;

namespace Duskwright.Proposals.Sharing;

/// <summary>The switches of a sharing: those that are kept, on their pack, and new ones for the houses that hang on none of these.</summary>
internal static class SwitchesAnew
{
    // A switch lights up to so many lamps: common practice, no source.
    private const int LampsPerSwitch = 20;

    internal static (ItemList<SwitchGroup> Groups, ItemList<BuildingOnGroup> Places) Of(Town town, ItemList<Supply> packs, List<List<SharedUnit>> on)
    {
        var (groups, places) = (new List<SwitchGroup>(), new List<BuildingOnGroup>());
        var kept = on.SelectMany((units, p) => units.Where(u => u.Switch is not null).Select(u => (u.Switch!, packs[p].Id))).ToDictionary(x => x.Item1, x => x.Id, StringComparer.Ordinal);
        if (kept.Count > 0)
        {
            groups.AddRange(town.SwitchGroups.Select(g => g with { Supply = kept.GetValueOrDefault(g.Id, g.Supply!) }));
        }

        var taken = groups.Select(g => g.Id).ToHashSet(StringComparer.Ordinal);
        var letters = Enumerable.Range(0, int.MaxValue).Select(Letter).Where(l => !taken.Contains(l)).GetEnumerator();
        for (var p = 0; p < packs.Count; p++)
        {
            var here = on[p].Where(u => u.Switch is null).SelectMany(u => u.Houses).ToList();
            var lampsHere = here.Sum(b => b.Lamps);
            var switches = Math.Max(1, (int)Math.Ceiling(lampsHere / (double)LampsPerSwitch));
            var (onThis, lamps) = (0, 0);
            for (var s = 0; s < switches && here.Count > 0; s++)
            {
                letters.MoveNext();
                groups.Add(new SwitchGroup { Id = letters.Current, Supply = packs[p].Id });
                while (onThis < here.Count && (s == switches - 1 || lamps < lampsHere * (s + 1) / switches))
                {
                    lamps += here[onThis].Lamps;
                    places.Add(new BuildingOnGroup(here[onThis++].Key, letters.Current));
                }
            }
        }

        return (groups.ToItemList(), places.ToItemList());
    }

    private static string Letter(int index) => index < 26 ? ((char)('A' + index)).ToString() : $"{(char)('A' + (index / 26) - 1)}{(char)('A' + (index % 26))}";
}
