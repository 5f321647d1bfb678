using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Study.Figures;
using Duskwright.Study.Results;

namespace Duskwright.Study.Bench;

/// <summary>How long a pack has burnt since its cells were changed, by the log, and how long it still does.</summary>
/// <param name="Pack">The pack.</param>
/// <param name="FreshSince">When its cells were last changed; none where the log does not say.</param>
/// <param name="UsedHours">Hours burnt since then, or in all.</param>
/// <param name="LeftHours">Hours until its worst window looks dim, 0 or more; none where its cells do not fade.</param>
/// <param name="ShowDays">Whole days of the show that it still lasts; none where its cells do not fade.</param>
/// <param name="LastsShow">Whether it lasts all days of the show.</param>
/// <param name="CellsOut">Since when its cells are out, for storage; none while they are in.</param>
public sealed record PackHours(PackResult Pack, DateOnly? FreshSince, double UsedHours, Figure? LeftHours, int? ShowDays, bool LastsShow, DateOnly? CellsOut)
{
    /// <summary>Cells that one change takes.</summary>
    public int Cells => Pack.Supply.Series * Pack.Supply.Parallel;

    /// <summary>Tells it of every pack that lights something.</summary>
    /// <param name="town">The town.</param>
    /// <param name="packs">Its packs.</param>
    /// <returns>The packs in their order.</returns>
    /// <remarks>
    /// Hours are taken to be burnt with everything on, as the forecast has them. What cells recover while they rest is left out, so that they are
    /// changed too early rather than too late.
    /// </remarks>
    internal static List<PackHours> Of(Town town, IEnumerable<PackResult> packs)
    {
        var log = town.StandingLog().Where(l => l.Supply is not null).OrderBy(l => l.At).ToLookup(l => l.Supply!, StringComparer.Ordinal);
        return [.. packs.Where(p => p.Lamps > 0).Select(p => Of(town.Show, p, [.. log[p.Supply.Id]]))];
    }

    private static PackHours Of(Show show, PackResult pack, List<LogEntry> log)
    {
        var changed = log.FindLastIndex(l => l.Kind == LogKind.CellsChanged);
        var since = log.Skip(changed + 1).ToList();
        var used = since.Where(l => l.Burnt is not null).Sum(l => l.Burnt!.Value.Hours);
        var left = pack.HoursToDim is { } dim
            ? Figure.From(Laws.HoursLeft, "hours to half light left", "h", dim, Figure.Given("hours burnt", used, "h", changed < 0 ? "the log, all of it" : $"the log since the cells were changed on {log[changed].Date:yyyy-MM-dd}", Certainty.Measured))
            : null;
        var days = left is null || show.HoursPerDay.Hours <= 0 ? (int?)null : (int)Math.Floor(left.Value / show.HoursPerDay.Hours);
        var last = log.LastOrDefault(l => l.Kind is LogKind.CellsOut or LogKind.CellsChanged or LogKind.Burnt);
        return new PackHours(pack, changed < 0 ? null : log[changed].Date, used, left, days, days is null || days >= show.Days, last is { Kind: LogKind.CellsOut } ? last.Date : null);
    }
}
