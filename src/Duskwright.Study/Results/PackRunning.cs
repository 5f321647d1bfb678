using System.Globalization;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Study.Figures;

namespace Duskwright.Study.Results;

/// <summary>How far the cells of one pack are by the log, and when they are due.</summary>
public sealed record PackRunning
{
    /// <summary>The supply.</summary>
    public required Supply Supply { get; init; }

    /// <summary>Hours that its lamps burnt since its cells were last changed, as the log has them; an entry that names no supply counts for all.</summary>
    public required Figure HoursUsed { get; init; }

    /// <summary>When its cells were changed; none where the log has no change.</summary>
    public DateTime? Changed { get; init; }

    /// <summary>Whether its cells were taken out, for storage, and not put back.</summary>
    public bool CellsOut { get; init; }

    /// <summary>Hours that are left until its worst lamp is dim, all its switches on; none where it never is.</summary>
    public Figure? HoursLeft { get; init; }

    /// <summary>Volts to be read under load by now, V; none with no lamps or where the cells are out.</summary>
    public Figure? VoltsNow { get; init; }

    /// <summary>Days of the show that its cells still last for certain, by the earlier end of <see cref="HoursLeft"/>; none where they never are due.</summary>
    public int? ShowDaysLeft { get; init; }

    /// <summary>How many cells the whole show takes from now, one set in case at least; 0 for a supply without cells.</summary>
    public required int CellsToPack { get; init; }

    /// <summary>What to do, in a sentence.</summary>
    public required string Advice { get; init; }

    internal static ItemList<PackRunning> Of(TownStudy study)
    {
        var log = study.Town.StandingLog().OrderBy(l => l.At).ToList();

        // Cells that the log says were changed are full, whatever the town said of those before them.
        bool Fresh(Supply supply) => supply.ChargeLeft < 1 && log.Any(l => l.Kind == LogKind.CellsChanged && Concerns(l, supply));
        var now = study.Town.Supplies.Any(Fresh) ? study.After(study.Town with { Supplies = study.Town.Supplies.Select(s => Fresh(s) ? s with { ChargeLeft = 1 } : s).ToItemList() }) : study;
        return now.Packs.Select(p => Of(p, log, study.Town.Show)).ToItemList();
    }

    private static bool Concerns(LogEntry entry, Supply supply) => entry.Building is null && (entry.Supply is null || entry.Supply == supply.Id);

    private static PackRunning Of(PackResult pack, IReadOnlyList<LogEntry> log, Show show)
    {
        var its = log.Where(l => Concerns(l, pack.Supply)).ToList();
        var (change, stored) = (its.FindLastIndex(l => l.Kind == LogKind.CellsChanged), its.FindLastIndex(l => l.Kind == LogKind.CellsOut));
        var burnt = its.Skip(change + 1).Where(l => l.Kind == LogKind.Burnt && l.Burnt is not null).ToList();
        var used = Figure.From(Laws.Sum, "hours burnt since the cells were changed", "h", [.. burnt.Select(l => Figure.Given($"on {l.Date.ToString("d MMMM yyyy", CultureInfo.InvariantCulture)}", l.Burnt!.Value.Hours, "h", "the log", Certainty.Measured))]);
        var isOut = stored > change && !its.Skip(stored + 1).Any(l => l.Kind == LogKind.Burnt);
        var left = pack.HoursToDim is { } dim ? Figure.From(Laws.HoursLeft, "hours left until its worst lamp is dim", "h", dim, used).Between(Left(dim.Low ?? dim.Value, used), Left(dim.High ?? dim.Value, used)) : null;
        var hours = show.HoursPerDay.Hours;
        var days = left is null || hours <= 0 ? (int?)null : (int)Math.Floor(left.Low!.Value / hours);
        var cells = pack.Part.Charge is null ? 0 : pack.Supply.Series * pack.Supply.Parallel;
        return new PackRunning
        {
            Supply = pack.Supply,
            HoursUsed = used,
            Changed = change < 0 ? null : its[change].At,
            CellsOut = isOut,
            HoursLeft = left,
            VoltsNow = isOut || pack.Fade is not { } fade ? null : Figure.Given("volts under load by now", fade.At(fade.Volts, used.Value), "V", "the discharge at the hours burnt, all switches on", Certainty.Computed),
            ShowDaysLeft = days,
            CellsToPack = cells * Sets(pack.HoursToDim, left, hours * show.Days),
            Advice = Words(isOut, cells, days, show),
        };
    }

    private static double Left(double hours, Figure used) => Math.Max(0, hours - used.Value);

    // What is left is used up first; each set after it lasts as long as the earlier end says.
    private static int Sets(Figure? fresh, Figure? left, double needed) => fresh is null || left is null || (fresh.Low ?? fresh.Value) <= 0
        ? 1
        : Math.Max(1, (int)Math.Ceiling((needed - left.Low!.Value) / (fresh.Low ?? fresh.Value)));

    private static string Words(bool isOut, int cells, int? days, Show show) => (isOut, cells, days) switch
    {
        (true, _, _) => "The cells are out; put fresh ones in, or these if they are not leaking, before the next show.",
        (_, 0, _) => "It has no cells to change.",
        (_, _, null) => "Its lamps are never dim before the cells are empty. Take the cells out when it is put away for more than a month.",
        (_, _, 0) => "Change the cells before the next show day: they may not last it.",
        (_, _, { } d) when d >= show.Days => $"The cells last the {(show.Days == 1 ? "show day" : $"{show.Days} show days")}. Take them out when it is put away for more than a month.",
        (_, _, { } d) => $"The cells last {d} show {(d == 1 ? "day" : "days")}: change them before the next after {(d == 1 ? "it" : "them")}.",
    };
}
