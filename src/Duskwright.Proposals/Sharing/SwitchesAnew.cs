using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;

namespace Duskwright.Proposals.Sharing;

/// <summary>The switches of a sharing: those that are kept or that a glued house hangs on, and new ones for the houses that find no place on these.</summary>
internal static class SwitchesAnew
{
    // A switch lights up to so many lamps: common practice, no source.
    private const int LampsPerSwitch = 20;

    internal static (ItemList<SwitchGroup> Groups, ItemList<BuildingOnGroup> Places) Of(Town town, ItemList<Supply> packs, List<List<SharedUnit>> on, bool keepAll)
    {
        var (groups, places) = (new List<SwitchGroup>(), new List<BuildingOnGroup>());
        var kept = on.SelectMany((units, p) => units.Where(u => u.Switch is not null).Select(u => (u.Switch!, Pack: packs[p].Id, Lamps: u.Houses.Sum(h => h.Lamps)))).ToLookup(x => x.Item1, StringComparer.Ordinal);
        groups.AddRange(town.SwitchGroups.Where(g => keepAll || kept.Contains(g.Id)).Select(g => kept[g.Id].Select(k => k.Pack).FirstOrDefault() is { } pack ? g with { Supply = pack } : g));
        var taken = groups.Select(g => g.Id).ToHashSet(StringComparer.Ordinal);
        using var letters = Enumerable.Range(0, int.MaxValue).Select(Letter).Where(l => !taken.Contains(l)).GetEnumerator();
        for (var p = 0; p < packs.Count; p++)
        {
            var here = new Queue<(string Key, int Lamps)>(on[p].Where(u => u.Switch is null).SelectMany(u => u.Houses));

            // A switch that is there already is filled first.
            foreach (var group in keepAll ? [] : groups.Where(g => g.Supply == packs[p].Id).ToList())
            {
                for (var lamps = kept[group.Id].Sum(k => k.Lamps); here.TryPeek(out var next) && lamps + next.Lamps <= LampsPerSwitch; lamps += next.Lamps)
                {
                    places.Add(new BuildingOnGroup(here.Dequeue().Key, group.Id));
                }
            }

            AddNew(packs[p].Id, [.. here]);
        }

        return (groups.ToItemList(), places.ToItemList());

        void AddNew(string pack, List<(string Key, int Lamps)> here)
        {
            var lampsHere = here.Sum(b => b.Lamps);
            var switches = Math.Max(1, (int)Math.Ceiling(lampsHere / (double)LampsPerSwitch));
            var (onThis, lamps) = (0, 0);
            for (var s = 0; s < switches && here.Count > 0; s++)
            {
                letters.MoveNext();
                groups.Add(new SwitchGroup { Id = letters.Current, Supply = pack });
                while (onThis < here.Count && (s == switches - 1 || lamps < lampsHere * (s + 1) / switches))
                {
                    lamps += here[onThis].Lamps;
                    places.Add(new BuildingOnGroup(here[onThis++].Key, letters.Current));
                }
            }
        }
    }

    private static string Letter(int index) => index < 26 ? ((char)('A' + index)).ToString() : $"{(char)('A' + (index / 26) - 1)}{(char)('A' + (index % 26))}";
}
