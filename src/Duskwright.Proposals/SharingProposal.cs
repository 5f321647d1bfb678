using System.Globalization;
using Duskwright.Harness.Sharing;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
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

    // A switch lights up to so many lamps: common practice, no source.
    private const int LampsPerSwitch = 20;

    /// <summary>Shares all lamps that are not fixed to a pack over as few packs as last the show.</summary>
    /// <param name="town">The town; its packs are kept, or where it has none, packs like <paramref name="usual"/> are added.</param>
    /// <param name="usual">The pack to add.</param>
    /// <param name="spareShare">Share of its current that each pack keeps for what is built later, 0 or more.</param>
    /// <param name="cancel">Stops the search.</param>
    /// <returns>The proposal.</returns>
    public static SharingProposal Of(Town town, Supply usual, double spareShare = SpareShare, CancellationToken cancel = default)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(spareShare);
        var supplies = town.Supplies.Count > 0 ? town.Supplies : Enough(town, usual, spareShare);
        var wired = Wired(town, supplies[0]);
        var buildings = PackCapacity.Loads(wired);

        // Packs of the same cells give the same; working it out runs one down.
        var gives = supplies.Select(Cells).Distinct().ToDictionary(s => s, s => (int)(1e6 * PackCapacity.Amperes(town, s) / (1 + spareShare)));
        var packs = supplies.Select(s => new PackSlot(s.Id, gives[Cells(s)])).ToList();
        var index = supplies.Select((s, i) => (s.Id, i)).ToDictionary(x => x.Id, x => x.i, StringComparer.Ordinal);
        var supplyOfGroup = town.SwitchGroups.ToDictionary(g => g.Id, g => g.Supply, StringComparer.Ordinal);
        var groupOf = town.Buildings.ToDictionary(b => b.Key, b => b.SwitchGroup, StringComparer.Ordinal);
        var loads = buildings.Select(b => new SharedLoad(
            b.Building.Name,
            (int)Math.Ceiling(1e6 * b.Amperes),
            b.Building.Place?.At.X.Metres ?? b.Building.Distance?.Metres ?? b.Building.PairLength?.Metres ?? 0,
            b.Building.Place?.At.Y.Metres ?? 0,
            b.Building.Pack is { } wished ? index[wished] : b.Building.State == BuildingState.Fixed && groupOf[b.Building.Key] is { } group && supplyOfGroup[group] is { } pinned ? index[pinned] : null)).ToList();
        if (loads.Count == 0)
        {
            return new SharingProposal(null, 0, 0, true, "No building has a lamp yet.");
        }

        var answer = SharingSolver.Solve(new SharingProblem([.. loads], [.. packs]), new SharingSettings(), cancel);
        if (answer.Infeasible is { } why)
        {
            return new SharingProposal(null, 0, 0, false, $"{why}.");
        }

        var used = answer.PackOf.Distinct().Order().ToList();
        var kept = town.Supplies.Count > 0 ? supplies : used.Select((p, i) => supplies[p] with { Id = Number(i + 1) }).ToItemList();
        var (groups, places) = Switches(kept, town.Supplies.Count > 0 ? [.. Enumerable.Range(0, supplies.Count)] : used, answer, buildings.Select(b => (b.Building.Key, b.Lamps)).ToList());
        return new SharingProposal(new AcceptSharing(kept, groups, places), answer.PacksUsed, answer.PacksLowerBound, answer.Proven, null);
    }

    private static Supply Cells(Supply supply) => supply with { Id = "", Name = null, Fuse = null };

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static (ItemList<SwitchGroup> Groups, ItemList<BuildingOnGroup> Places) Switches(
        ItemList<Supply> supplies, List<int> packs, SharingAnswer answer, List<(string Key, int Lamps)> buildings)
    {
        var (groups, places) = (new List<SwitchGroup>(), new List<BuildingOnGroup>());
        for (var p = 0; p < packs.Count; p++)
        {
            var here = buildings.Where((_, i) => answer.PackOf[i] == packs[p]).ToList();
            var lampsHere = here.Sum(b => b.Lamps);
            var switches = Math.Max(1, (int)Math.Ceiling(lampsHere / (double)LampsPerSwitch));
            var (onThis, lamps) = (0, 0);
            for (var s = 0; s < switches && here.Count > 0; s++)
            {
                var id = SwitchLetter(groups.Count);
                groups.Add(new SwitchGroup { Id = id, Supply = supplies[p].Id });
                while (onThis < here.Count && (s == switches - 1 || lamps < lampsHere * (s + 1) / switches))
                {
                    lamps += here[onThis].Lamps;
                    places.Add(new BuildingOnGroup(here[onThis++].Key, id));
                }
            }
        }

        return (groups.ToItemList(), places.ToItemList());
    }

    private static string SwitchLetter(int index) => index < 26 ? ((char)('A' + index)).ToString() : $"{(char)('A' + (index / 26) - 1)}{(char)('A' + (index % 26))}";

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
}
