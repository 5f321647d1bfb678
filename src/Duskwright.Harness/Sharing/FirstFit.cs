using System.Collections.Immutable;

namespace Duskwright.Harness.Sharing;

/// <summary>A quick sharing to start from: the greatest loads first, each where it costs least, among equals into the fullest pack that takes it.</summary>
internal static class FirstFit
{
    internal static ImmutableArray<Filling>? Share(ImmutableArray<PackKind> kinds, ImmutableArray<LoadClass> classes)
    {
        var packs = new List<(int Kind, int[] Counts, int Room)>();
        foreach (var (_, i) in classes.SelectMany((c, i) => c.Loads.Select(_ => (Take: c.Take.Min(), i))).OrderByDescending(l => l.Take).ThenBy(l => l.i))
        {
            var options = packs.Select((p, at) => (At: at, p.Kind, p.Room, Cost: classes[i].Cost[p.Kind]))
                .Concat(kinds.Select((k, kind) => (At: -1, Kind: kind, Room: k.Capacity, Cost: k.Cost + classes[i].Cost[kind]))
                    .Where(o => packs.Count(p => p.Kind == o.Kind) < kinds[o.Kind].OnHand))
                .Where(o => classes[i].Take[o.Kind] <= o.Room)
                .ToList();
            if (options.Count == 0)
            {
                return null;
            }

            var (to, toKind, room, _) = options.MinBy(o => (o.Cost, o.Room));
            if (to < 0)
            {
                packs.Add((toKind, new int[classes.Length], room));
                to = packs.Count - 1;
            }

            packs[to].Counts[i]++;
            packs[to] = packs[to] with { Room = room - classes[i].Take[toKind] };
        }

        return [.. packs.Select(p => Filling.Of(p.Kind, p.Counts, classes, kinds))];
    }
}
