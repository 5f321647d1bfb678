using System.Globalization;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;

namespace Duskwright.Proposals.Sharing;

/// <summary>Whether packs find room in the pocket of the bank: cells lie flat side by side in their holder, holders in rows.</summary>
internal static class Pocket
{
    // What a holder adds to its cells, and to their height; common practice, no source.
    private const double AlongCells = 10;
    private const double AcrossCells = 4;
    private const double AboveCells = 4;

    /// <summary>Why packs do not fit; none where they do, or where the pocket or a pack has no known size.</summary>
    internal static string? TooSmall(Town town, ItemList<Supply> packs)
    {
        if (town.Board?.Bank is not { PocketWidth: { } width, PocketDepth: { } depth } bank)
        {
            return null;
        }

        var holders = packs.Select(p => (Pack: p, Part: Catalogue.FindSupply(town, p.Part)!)).Where(p => p.Part is { Width: not null, Length: not null })
            .Select(p => (Long: p.Part.Length!.Value.Millimetres + AlongCells, Across: (p.Part.Width!.Value.Millimetres * p.Pack.Series * p.Pack.Parallel) + AcrossCells, High: p.Part.Width.Value.Millimetres + AboveCells)).ToList();
        if (bank.PocketHeight is { } height && holders.Exists(h => h.High > height.Millimetres))
        {
            return string.Create(CultureInfo.InvariantCulture, $"The pocket of the bank is {height.Millimetres:0} mm high and a holder {holders.Max(h => h.High):0} mm: make it higher, or take smaller cells.");
        }

        var (wide, deep) = (width.Millimetres, depth.Millimetres);
        return InRows([.. holders.Select(h => (h.Across, h.Long))], wide, deep) || InRows([.. holders.Select(h => (h.Long, h.Across))], wide, deep)
            ? null
            : string.Create(CultureInfo.InvariantCulture, $"The pocket of the bank, {wide:0} mm by {deep:0} mm, does not hold {packs.Count} such packs in rows: make it larger, or take fewer or smaller packs.");
    }

    private static bool InRows(List<(double Width, double Depth)> holders, double wide, double deep)
    {
        var (x, used, row) = (0.0, 0.0, 0.0);
        foreach (var (width, depth) in holders.OrderByDescending(h => h.Depth))
        {
            if (x + width > wide)
            {
                (x, used, row) = (0, used + row, 0);
            }

            if (width > wide || used + Math.Max(row, depth) > deep)
            {
                return false;
            }

            (x, row) = (x + width, Math.Max(row, depth));
        }

        return true;
    }
}
