using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;

namespace Duskwright.Plan.Edits;

/// <summary>Holes, wireways, scenery and the bank drawn anew. Routes that are not laid and led by what has changed are dropped; what a laid pair runs through stays.</summary>
/// <param name="Board">The board as it is to be.</param>
/// <param name="Words">The label.</param>
public sealed record DrawGround(Board Board, string Words) : TownEdit
{
    /// <inheritdoc/>
    public override string Label => Words;

    /// <inheritdoc/>
    public override ItemList<Problem> Problems(Town town)
    {
        var laid = town.Routes.Where(r => r.Laid).ToList();
        if (laid.Count == 0 || town.Board is not { } before)
        {
            return [];
        }

        var kept = Board.Wireways.ToHashSet();
        var through = laid.Select(r => town.Buildings.FirstOrDefault(b => b.Key == r.Building)?.FeedHole).OfType<string>().ToHashSet(StringComparer.Ordinal);
        if (before.Bank?.At != Board.Bank?.At)
        {
            return [Stays("board.bank", "The bank", laid.Count)];
        }

        if (before.Wireways.FirstOrDefault(w => !kept.Contains(w) && laid.Exists(r => r.Wireways.Contains(w.Id))) is { } way)
        {
            return [Stays("board.wireways", $"Wireway {way.Id}", laid.Count(r => r.Wireways.Contains(way.Id)))];
        }

        var holes = Board.FeedHoles.ToDictionary(h => h.Id, h => h.At, StringComparer.Ordinal);
        return before.FeedHoles.FirstOrDefault(h => through.Contains(h.Id) && holes.GetValueOrDefault(h.Id) != h.At) is { } hole
            ? [Stays("board.feed_holes", $"Hole {hole.Id}", laid.Count(r => town.Buildings.FirstOrDefault(b => b.Key == r.Building)?.FeedHole == hole.Id))]
            : [];
    }

    /// <inheritdoc/>
    public override Town Apply(Town town)
    {
        if (town.Board is not { } before)
        {
            return town;
        }

        var holes = Board.FeedHoles.ToDictionary(h => h.Id, h => h.At, StringComparer.Ordinal);
        var shut = Board.FeedHoles.Where(h => h.Shut).Select(h => h.Id).Except(before.FeedHoles.Where(h => h.Shut).Select(h => h.Id)).ToHashSet(StringComparer.Ordinal);
        var moved = before.FeedHoles.Where(h => holes.GetValueOrDefault(h.Id) != h.At || shut.Contains(h.Id)).Select(h => h.Id).ToHashSet(StringComparer.Ordinal);
        var through = town.Buildings.Where(b => b.FeedHole is { } hole && moved.Contains(hole)).Select(b => b.Key).ToHashSet(StringComparer.Ordinal);
        var all = before.Bank?.At != Board.Bank?.At || !before.Wireways.Equals(Board.Wireways) || !Barred(before).SequenceEqual(Barred(Board));
        return SharedRuns.Kept(town with
        {
            Board = Board,
            Buildings = town.Buildings
                .Select(b => b.FeedHole is { } hole && moved.Contains(hole) && !holes.ContainsKey(hole) ? b with { FeedHole = null } : b)
                .Select(b => b.Wireway is { } way && !Board.Wireways.Any(w => w.Id == way) ? b with { Wireway = null } : b)
                .ToItemList(),
            Routes = town.Routes.Where(r => r.Laid || !(all || through.Contains(r.Building))).ToItemList(),
            Taps = town.Taps.Where(t => t.Laid || !all).ToItemList(),
        });
    }

    private static IEnumerable<Scenery> Barred(Board board) => board.Scenery.Where(s => s.Kind is SceneryKind.Obstacle or SceneryKind.Free);

    private static Problem Stays(string path, string what, int pairs) =>
        new(path, "laid", $"{what} stays where it is: {(pairs == 1 ? "a pair that is laid runs" : $"{pairs} pairs that are laid run")} to it.", "Say first that those pairs are taken out again.");
}
