using System.Collections.Immutable;
using System.Globalization;
using Duskwright.Harness.Cutting;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;

namespace Duskwright.Study.Lists;

/// <summary>Cuts the leads that are still to be cut from the reels on hand and as few new ones as will do.</summary>
internal static class ReelPlan
{
    private const double UsualReelMetres = 10;

    internal static ItemList<WireCuts> Of(Town town, ItemList<CutRow> cutList) => cutList
        .Where(r => !r.Laid)
        .GroupBy(r => r.WireId, StringComparer.Ordinal)
        .Select(g => Cut(town, Catalogue.FindWire(town, g.Key)!, [.. g]))
        .ToItemList();

    private static WireCuts Cut(Town town, WirePart wire, List<CutRow> rows)
    {
        var conductors = rows.SelectMany((r, i) => Enumerable.Range(0, r.Conductors).Select(c => (Row: i, IsPlus: c == 0))).ToList();
        var onHand = town.Reels.Where(r => r.Wire == wire.Id).Select(r => (int)r.Left.Millimetres).ToImmutableArray();
        var full = (int)(1000 * (wire.SoldByMetres ?? UsualReelMetres));
        var plan = CuttingPlanner.Plan(new CuttingProblem([.. conductors.Select(c => rows[c.Row].CutMillimetres)], onHand, full));

        // Both conductors of a lead from one reel, where that takes no more.
        var together = CuttingPlanner.Plan(new CuttingProblem([.. rows.Select(r => r.Conductors * r.CutMillimetres)], onHand, full));
        if (together.TooLong.IsEmpty && (together.NewReels, together.BegunMillimetres).CompareTo((plan.NewReels, plan.BegunMillimetres)) <= 0)
        {
            var conductorsOf = conductors.Index().ToLookup(c => c.Item.Row, c => c.Index);
            plan = together with { Reels = [.. together.Reels.Select(r => r with { Leads = [.. r.Leads.SelectMany(l => conductorsOf[l])] })], NewAtLeast = Math.Min(plan.NewAtLeast, together.NewReels), BegunAtLeast = Math.Min(plan.BegunAtLeast, together.BegunMillimetres) };
        }

        var news = 0;
        return new WireCuts(
            wire,
            plan.Reels.Select(r => Reel(r, r.OnHand is null ? $"new reel {++news}, {Metres(r.Millimetres)}" : $"reel on hand, {Metres(r.Millimetres)}", rows, conductors)).ToItemList(),
            Words(plan, full),
            plan.TooLong.Select(l => rows[conductors[l].Row]).Distinct()
                .Select(r => $"{r.Label}: {Metres(r.CutMillimetres)} in one piece is more than any reel holds: buy it by the metre, or join it where you can still reach the joint.").ToItemList());
    }

    private static ReelCuts Reel(CutReel reel, string name, List<CutRow> rows, List<(int Row, bool IsPlus)> conductors)
    {
        var left = reel.Millimetres;
        var cuts = new List<ReelCut>();
        foreach (var row in reel.Leads.Select(l => conductors[l]).GroupBy(c => c.Row))
        {
            var both = row.Count() == rows[row.Key].Conductors;
            left -= row.Count() * rows[row.Key].CutMillimetres;
            cuts.Add(new ReelCut(rows[row.Key], both ? CutConductors.Both : row.First().IsPlus ? CutConductors.Plus : CutConductors.Minus, left));
        }

        return new ReelCuts(name, reel.OnHand is null, reel.Millimetres, cuts.ToItemList(), left);
    }

    private static string Words(CuttingPlan plan, int full)
    {
        if (plan.Reels.IsEmpty)
        {
            return "There is nothing to cut.";
        }

        var left = Metres(plan.Reels.Sum(r => (long)r.LeftMillimetres));
        var reels = plan.NewReels switch
        {
            0 => "The reels on hand are enough",
            1 => $"One new reel of {Metres(full)}",
            _ => $"{plan.NewReels} new reels of {Metres(full)}",
        };
        var proof = plan.NewReels > plan.NewAtLeast ? $"; {plan.NewAtLeast} at the very least"
            : plan.NewReels > 0 ? ", and no fewer will do"
            : "";
        var begun = plan.BegunMillimetres > plan.BegunAtLeast ? $"; of those on hand {Metres(plan.BegunMillimetres)} are begun, {Metres(plan.BegunAtLeast)} at the very least"
            : plan.BegunMillimetres > 0 ? $"; of those on hand {Metres(plan.BegunMillimetres)} are begun, and no less will do"
            : "";
        return $"{reels}{proof}{begun}; {left} is left over.";
    }

    private static string Metres(long millimetres) => string.Create(CultureInfo.InvariantCulture, $"{millimetres / 1000.0:0.##} m");
}
