using System.Collections.Immutable;
using Duskwright.Calendar.Jobs;
using Duskwright.Calendar.Scheduling;
using Duskwright.Harness.Laying;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Study;
using Duskwright.Study.Bench;

namespace Duskwright.Proposals;

/// <summary>A suggested calendar: every step that is left, put into the maker's evenings and weekends, house by house where drying allows.</summary>
/// <remarks>Of calendars that end at most one evening and a hundredth of the whole time after the earliest found, the one with the fewest half-built buildings is taken; <see cref="FinishAtEarliest"/> tells what that costs.</remarks>
/// <param name="Steps">The steps in order of time; a step longer than the longest session is in parts.</param>
/// <param name="Finish">When all is done and dry, each step counted with its own setting out.</param>
/// <param name="FinishAtEarliest">No order of the steps is done and dry before.</param>
/// <param name="HalfBuilt">The most buildings that are begun and not ended at one time.</param>
/// <param name="Why">Why there is no calendar; none where there is one.</param>
public sealed record CalendarProposal(ItemList<PlannedStep> Steps, DateTime Finish, DateTime FinishAtEarliest, int HalfBuilt, string? Why)
{
    /// <summary>No calendar that is done and dry by then has fewer half built at its worst time.</summary>
    public int HalfBuiltBound { get; init; }

    /// <summary>Buildings that stand half built when an evening or a Saturday ends, summed over all of them.</summary>
    public int HalfBuiltEvenings { get; init; }

    /// <summary>No calendar has a smaller sum: each building alone waits so long for what dries.</summary>
    public int HalfBuiltEveningsBound { get; init; }

    /// <summary>Minutes by which evenings end sooner because work of one kind is set out once for all its houses; the finish does not count on them.</summary>
    public int SavedMinutes { get; init; }

    /// <summary>No calendar in these evenings saves more of them.</summary>
    public int MostSavedMinutes { get; init; }

    private const string Hands = "hands";
    private const string Shelf = "shelf";
    private const int MinutesPerWeek = 7 * 24 * 60;

    // Steps are not interrupted, so sessions are not filled to the last minute, and the last coat must dry.
    private const int SpareWeeks = 8;

    // A maker waits for the answer; on towns the rules come near the bound at once, and the solver adds minutes.
    private static readonly ScheduleSettings Quick = new(DeterministicLimit: 0.5, MostExactJobs: 120);

    // A finish one evening and a hundredth of the whole time later is little to a maker beside a bench full of houses in pieces.
    private const double SlackShare = 0.01;

    /// <summary>Schedules what is left to do on every building.</summary>
    /// <param name="town">The town.</param>
    /// <param name="start">The first day.</param>
    /// <param name="sessions">When the maker works, every week.</param>
    /// <param name="hands">Pairs of hands; 1 or more.</param>
    /// <param name="dryingPlaces">How many buildings have room to dry at once; none where there is room for all.</param>
    /// <param name="cancel">Stops the search; the best calendar so far is given.</param>
    /// <returns>The proposal.</returns>
    /// <exception cref="ArgumentException">Two sessions overlap, one does not last or passes midnight, or there are no hands.</exception>
    public static CalendarProposal Of(Town town, DateOnly start, IReadOnlyList<WeeklySession> sessions, int hands = 1, int? dryingPlaces = null, CancellationToken cancel = default) =>
        From(town, start.ToDateTime(TimeOnly.MinValue), sessions, hands, dryingPlaces, cancel);

    /// <summary>Schedules from a moment on what is really left: what is ticked is done, what was ticked lately still dries.</summary>
    /// <param name="town">The town.</param>
    /// <param name="now">The moment.</param>
    /// <param name="sessions">When the maker works, every week.</param>
    /// <param name="hands">Pairs of hands; 1 or more.</param>
    /// <param name="dryingPlaces">How many buildings have room to dry at once; none where there is room for all.</param>
    /// <param name="cancel">Stops the search; the best calendar so far is given.</param>
    /// <returns>The proposal.</returns>
    /// <exception cref="ArgumentException">Two sessions overlap, one does not last or passes midnight, or there are no hands.</exception>
    public static CalendarProposal From(Town town, DateTime now, IReadOnlyList<WeeklySession> sessions, int hands = 1, int? dryingPlaces = null, CancellationToken cancel = default)
    {
        var (start, midnight) = (DateOnly.FromDateTime(now), now.Date);
        if (sessions.FirstOrDefault(s => s.Minutes <= 0 || s.From.ToTimeSpan().TotalMinutes + s.Minutes > 24 * 60) is { } wrong)
        {
            throw new ArgumentException($"The session on {wrong.Day} lasts {wrong.Minutes} min; more than 0, ending by midnight, is allowed.", nameof(sessions));
        }

        if (sessions.Count == 0)
        {
            return new CalendarProposal([], midnight, midnight, 0, "No session is set: say on which days and for how long you work at the bench.");
        }

        var ready = town.Buildings.SelectMany(b => HouseWork.Of(town, b, []).Steps.Select(s => (Key: (b.Key, s.Step.Key), s.ReadyAt)))
            .ToDictionary(s => s.Key, s => Math.Max(Minute(now), s.ReadyAt is { } at ? Minute(at) : 0));
        int Minute(DateTime at) => (int)Math.Ceiling((at - midnight).TotalMinutes);
        var parts = town.Buildings.SelectMany(b => BuildSteps.Of(town, b).SelectMany(s => Parts(b, s, sessions.Max(e => e.Minutes), ready[(b.Key, s.Key)]))).ToList();
        if (parts.Count == 0)
        {
            return new CalendarProposal([], midnight, midnight, 0, null);
        }

        var minutes = parts.Sum(p => p.Minutes);
        var slack = (int)((MinutesPerWeek / sessions.Count) + (SlackShare * MinutesPerWeek * minutes / WeekMinutes(sessions, hands)));
        var work = Work(town, parts, Dates(start, sessions, minutes, hands), hands, dryingPlaces);
        var schedule = BuildSchedule.Plan(work, Quick with { FinishSlack = slack }, cancel);
        if (schedule.Why is not null)
        {
            return new CalendarProposal([], midnight, midnight, 0, schedule.Why);
        }

        (string? Kind, int Minutes)[] kinds = [.. parts.Select(p => (p.SetUpMinutes > 0 ? p.Step.Key : null, p.SetUpMinutes))];
        var (begun, taken) = SharedSettingOut.Of(work, kinds, schedule.Starts);
        var planned = parts.Select((p, i) =>
        {
            var (begin, end) = (midnight.AddMinutes(begun[i]), midnight.AddMinutes(begun[i] + taken[i]));
            return new PlannedStep(p.Building.Key, p.Building.Name, p.Step, begin, end, end.AddMinutes(p.DryMinutes));
        });
        return new CalendarProposal(planned.OrderBy(p => p.Begin).ToItemList(), midnight.AddMinutes(schedule.Finish), midnight.AddMinutes(schedule.FinishBound), schedule.HousesHalfBuilt, null)
        {
            HalfBuiltBound = schedule.HousesHalfBuiltBound,
            HalfBuiltEvenings = schedule.HalfBuiltEvenings,
            HalfBuiltEveningsBound = schedule.HalfBuiltEveningsBound,
            SavedMinutes = minutes - taken.Sum(),
            MostSavedMinutes = SharedSettingOut.MostSaved(work, kinds, hands),
        };
    }

    /// <summary>The edit that takes the calendar; nothing is changed until it is applied.</summary>
    /// <param name="sessions">The sessions for which it was made.</param>
    /// <param name="hands">The pairs of hands.</param>
    /// <param name="dryingPlaces">How many buildings have room to dry at once; none where there is room for all.</param>
    /// <returns>The edit.</returns>
    public AcceptCalendar Edit(IReadOnlyList<WeeklySession> sessions, int hands, int? dryingPlaces = null) => new(new BenchCalendar
    {
        Sessions = sessions.ToItemList(),
        Hands = hands,
        DryingPlaces = dryingPlaces,
        Steps = Steps.Select(s => new CalendarStep { Building = s.Building, Step = s.Step.Key, Start = s.Begin, Minutes = (int)(s.End - s.Begin).TotalMinutes }).ToItemList(),
        Finish = Finish,
        FinishAtEarliest = FinishAtEarliest,
    });

    /// <summary>What is to be done on a day, in order.</summary>
    /// <param name="day">The day.</param>
    /// <returns>The steps; empty on a day without work.</returns>
    public ItemList<PlannedStep> On(DateOnly day) => Steps.Where(s => DateOnly.FromDateTime(s.Begin) == day).ToItemList();

    /// <summary>What can be done while a step dries.</summary>
    /// <param name="step">One of the steps.</param>
    /// <returns>The steps begun after it ends and before it is dry.</returns>
    public ItemList<PlannedStep> WhileDrying(PlannedStep step) => Steps.Where(s => s.Begin >= step.End && s.Begin < step.DryAt).ToItemList();

    private static BuildWork Work(Town town, List<Part> parts, ImmutableArray<WorkSession> sessions, int hands, int? dryingPlaces)
    {
        // From the moment it is worked on until it may be handled again.
        ImmutableArray<Use> Uses(Part part) => dryingPlaces is not null && part.ShelfMinutes > 0 ? [new Use(Hands), new Use(Shelf, 1, part.ShelfMinutes)] : [new Use(Hands)];
        var ends = parts.GroupBy(p => (p.Building.Key, p.Step.Key)).ToDictionary(g => g.Key, g => g.Last().Id);
        var lags = parts.Where(p => p.Number == 1).SelectMany(p => p.Step.After.Select(w => new Lag(ends[(p.Building.Key, w.Step)], p.Id, w.DryMinutes)))
            .Concat(parts.Where(p => p.Number > 1).Select(p => new Lag(p.IdOf(p.Number - 1), p.Id)))
            .Concat(LayingOrder(town, parts, ends));
        return new BuildWork(
            [.. parts.Select(p => new Job(p.Id, p.Minutes) { Words = $"{p.Building.Name}: {p.Step.Words}", House = p.Building.Key, NotBefore = p.NotBefore, DryingMinutes = p.DryMinutes, Uses = Uses(p) })],
            [.. lags],
            [new Resource(Hands, hands) { Words = "pairs of hands" }, .. dryingPlaces is { } places ? [new Resource(Shelf, places) { Words = "places to dry" }] : ImmutableArray<Resource>.Empty])
        {
            Sessions = sessions,
            BegunHouses = [.. town.Buildings.Where(b => b.State is BuildingState.Shell or BuildingState.Fitted).Select(b => b.Key)],
        };
    }

    // A pair is pulled before a house is set down over its way.
    private static IEnumerable<Lag> LayingOrder(Town town, List<Part> parts, Dictionary<(string, string), string> ends)
    {
        var feeds = parts.Where(p => p.Number == 1 && p.Step.Key == BuildSteps.Feed).ToDictionary(p => p.Building.Key, p => p.Id, StringComparer.Ordinal);
        var pulled = new HashSet<string>(StringComparer.Ordinal);
        foreach (var row in TownStudy.Of(town).Laying.Rows.Where(r => r.Act is LayingAct.PullFirst or LayingAct.SetDown && pulled.Add(r.Building) && feeds.ContainsKey(r.Building)))
        {
            foreach (var over in row.CoveredBy.Where(o => feeds.ContainsKey(o) && !pulled.Contains(o)))
            {
                yield return new Lag(ends[(row.Building, BuildSteps.Feed)], feeds[over]);
            }
        }
    }

    private static int WeekMinutes(IReadOnlyList<WeeklySession> sessions, int hands) => hands * sessions.Sum(s => s.Minutes);

    private static ImmutableArray<WorkSession> Dates(DateOnly start, IReadOnlyList<WeeklySession> sessions, int minutes, int hands)
    {
        var weeks = SpareWeeks + (2 * minutes / WeekMinutes(sessions, hands));
        var week = sessions.Select(s => (From: (((int)s.Day - (int)start.DayOfWeek + 7) % 7 * 24 * 60) + (int)s.From.ToTimeSpan().TotalMinutes, s.Minutes)).OrderBy(s => s.From).ToList();
        return [.. Enumerable.Range(0, weeks).SelectMany(w => week.Select(s => new WorkSession((w * MinutesPerWeek) + s.From, (w * MinutesPerWeek) + s.From + s.Minutes)))];
    }

    // A step that no session holds is done in equal parts; only the last one is left to dry.
    private static IEnumerable<Part> Parts(Building building, BenchStep step, int longestSession, int notBefore)
    {
        var count = Math.Max(1, (step.Minutes + longestSession - 1) / longestSession);
        return Enumerable.Range(1, count).Select(n => new Part(building, step, n, (step.Minutes * n / count) - (step.Minutes * (n - 1) / count), n == count ? step.DryMinutes : 0, notBefore)
        {
            SetUpMinutes = step.SetUpMinutes,
            ShelfMinutes = n == count ? step.ShelfMinutes : 0,
        });
    }

    private sealed record Part(Building Building, BenchStep Step, int Number, int Minutes, int DryMinutes, int NotBefore)
    {
        internal int SetUpMinutes { get; init; }

        internal int ShelfMinutes { get; init; }

        internal string Id => IdOf(Number);

        internal string IdOf(int number) => $"{Building.Key}/{Step.Key}/{number}";
    }
}
