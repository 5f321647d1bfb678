using System.Globalization;
using Duskwright.Harness.Sharing;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Proposals.Sharing;
using Duskwright.Study.Sums;

namespace Duskwright.Proposals;

/// <summary>A suggested sharing of the lamps among packs and switches.</summary>
/// <param name="Edit">The edit that takes it; none where there is no sharing.</param>
/// <param name="PacksUsed">How many packs it takes.</param>
/// <param name="PacksAtLeast">How many it takes at the very least.</param>
/// <param name="Proven">Whether that is proved.</param>
/// <param name="Why">Why there is none, in words.</param>
public sealed record SharingProposal(AcceptSharing? Edit, int PacksUsed, int PacksAtLeast, bool Proven, string? Why)
{
    /// <summary>Share of its current that a pack keeps for what is built later: common practice, no source.</summary>
    public const double SpareShare = 0.25;

    /// <summary>What of the wishes could not be met, or is to be minded, a sentence each.</summary>
    public ItemList<string> Notes { get; init; } = [];

    /// <summary>Shares all lamps that are not fixed to a pack over as few packs as last the show.</summary>
    /// <param name="town">The town; its packs are kept, or where it has none, packs like <paramref name="usual"/> are added.</param>
    /// <param name="usual">The pack to add.</param>
    /// <param name="spareShare">Share of its current that each pack keeps for what is built later, 0 or more.</param>
    /// <param name="cancel">Stops the search.</param>
    /// <returns>The proposal.</returns>
    public static SharingProposal Of(Town town, Supply usual, double spareShare = SpareShare, CancellationToken cancel = default) =>
        Of(town, usual, new SharingWishes { SpareShare = spareShare }, null, cancel);

    /// <summary>Shares all lamps as the maker wishes.</summary>
    /// <param name="town">The town; its packs are kept, or where it has none, packs like <paramref name="usual"/> are added.</param>
    /// <param name="usual">The pack to add.</param>
    /// <param name="wishes">What is asked beside the fewest packs.</param>
    /// <param name="better">Hears each better proposal as it is found.</param>
    /// <param name="cancel">Stops the search; the best proposal so far is given.</param>
    /// <returns>The proposal.</returns>
    public static SharingProposal Of(Town town, Supply usual, SharingWishes wishes, IProgress<SharingProposal>? better, CancellationToken cancel)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(wishes.SpareShare);
        var supplies = town.Supplies.Count > 0 ? town.Supplies.Concat(More(town, wishes.MorePacks)).ToItemList() : Enough(town, usual, wishes.SpareShare);
        var keep = SharedUnits.MustKeepSwitches(town) || (wishes.KeepSwitches && town.SwitchGroups.Count > 0);
        var (units, torn) = keep ? SharedUnits.Switches(town) : (SharedUnits.Houses(town, Wired(town, supplies[0])), null);
        if (torn is not null || units.Count == 0)
        {
            return new SharingProposal(null, 0, 0, torn is null, torn ?? "No building has a lamp yet.");
        }

        // Packs of the same cells give the same; working it out runs one down.
        var gives = supplies.Select(Cells).Distinct().ToDictionary(s => s, s => (int)(1e6 * PackCapacity.Amperes(town, s) / (1 + wishes.SpareShare)));
        var index = supplies.Select((s, i) => (s.Id, i)).ToDictionary(x => x.Id, x => x.i, StringComparer.Ordinal);
        var loads = units.Select(u => new SharedLoad(u.Name, (int)Math.Ceiling(1e6 * u.Amperes), u.X, u.Y, u.Pack is { } pack ? index[pack] : null)).ToList();

        // Where there are no packs yet nothing is refused: what asks more than a pack gives fills one alone, and its findings say how long that lasts.
        var (most, hungry) = (gives.Values.Max(), loads.Where(l => town.Supplies.Count == 0 && l.Microamperes > gives.Values.Max()).ToList());
        loads = loads.ConvertAll(l => hungry.Contains(l) ? l with { Microamperes = most } : l);
        var alone = hungry.ConvertAll(l => string.Create(CultureInfo.InvariantCulture, $"{l.Id} takes {l.Microamperes / 1000.0:0.#} mA, more than the {most / 1000.0:0.#} mA such a pack gives to the end of the show: it hangs on one alone."));

        // What is to stay stays, even where it asks too much; such a pack gets nothing more.
        var stays = supplies.Select((_, p) => loads.Where(l => l.PinnedPack == p).Sum(l => l.Microamperes)).ToList();
        var overfull = supplies.Zip(stays).Where(x => x.Second > gives[Cells(x.First)])
            .Select(x => string.Create(CultureInfo.InvariantCulture, $"What is to stay on pack {x.First.Id} takes {x.Second / 1000.0:0.#} mA, and it may give {gives[Cells(x.First)] / 1000.0:0.#} mA: nothing more is hung on it.")).ToList();
        var problem = new SharingProblem([.. loads], [.. supplies.Zip(stays, (s, on) => new PackSlot(s.Id, Math.Max(on, gives[Cells(s)])))]);
        var (answer, notes) = wishes.NeighboursApart && !keep
            ? NeighboursApart.Solve(problem, cancel)
            : (SharingSolver.Solve(problem, new SharingSettings(), better is null ? null : new Passed(a => better.Report(Made(a, []))), cancel), []);
        return answer.Infeasible is { } why
            ? new SharingProposal(null, 0, 0, false, $"{why}.")
            : Made(answer, wishes.NeighboursApart && keep ? ["Scenes or lamps name their switches, so these stay as they are, and neighbours on one switch go dark together: hang them on different switches first."] : notes);

        SharingProposal Made(SharingAnswer shared, ItemList<string> said)
        {
            var used = shared.PackOf.Distinct().Order().ToList();
            var packs = town.Supplies.Count > 0 ? [.. Enumerable.Range(0, supplies.Count).Where(p => p < town.Supplies.Count || used.Contains(p))] : used;
            var kept = packs.Select((p, i) => town.Supplies.Count > 0 ? supplies[p] : supplies[p] with { Id = Number(i + 1) }).ToItemList();
            var on = packs.Select(p => units.Where((_, u) => shared.PackOf[u] == p).ToList()).ToList();
            var (groups, places) = SwitchesAnew.Of(town, kept, on, keep);
            var pocket = Pocket.TooSmall(town, kept);
            return new SharingProposal(new AcceptSharing(kept, groups, places), shared.PacksUsed, shared.PacksLowerBound, shared.Proven, null)
            {
                Notes = overfull.Concat(alone).Concat(said).Concat(pocket is null ? [] : [pocket]).ToItemList(),
            };
        }
    }

    // More packs like the commonest of the town, fuse and all, fresh and under numbers that are free.
    private static IEnumerable<Supply> More(Town town, int packs)
    {
        var like = town.Supplies.GroupBy(Cells).MaxBy(g => g.Count())!.First() with { Name = null, ChargeLeft = 1 };
        return Enumerable.Range(1, town.Supplies.Count + packs).Select(Number).Where(n => town.Supplies.All(s => s.Id != n)).Take(packs).Select(n => like with { Id = n });
    }

    private static Supply Cells(Supply supply) => supply with { Id = "", Name = null, Fuse = null };

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    // All lamps on one pack, to read their currents; the packs are then cut to size.
    private static Town Wired(Town town, Supply supply) =>
        town.Supplies.Count > 0 && town.Buildings.All(b => b.SwitchGroup is not null)
            ? town
            : town with
            {
                Supplies = [supply],
                SwitchGroups = [new SwitchGroup { Id = "A", Supply = supply.Id }],
                Scenes = [],
                Buildings = town.Buildings.Select(b => b with { SwitchGroup = "A" }).ToItemList(),
            };

    private static ItemList<Supply> Enough(Town town, Supply usual, double spareShare)
    {
        var capacity = Math.Max(1e-3, PackCapacity.Amperes(town, usual) / (1 + spareShare));
        var load = PackCapacity.Loads(Wired(town, usual)).Sum(b => b.Amperes);
        var count = 2 * (int)Math.Max(1, Math.Ceiling(load / capacity));
        return Enumerable.Range(1, count).Select(n => usual with { Id = Number(n), Name = null }).ToItemList();
    }

    // Tells on what it hears, on the thread that tells it.
    private sealed class Passed(Action<SharingAnswer> on) : IProgress<SharingAnswer>
    {
        public void Report(SharingAnswer value) => on(value);
    }
}
