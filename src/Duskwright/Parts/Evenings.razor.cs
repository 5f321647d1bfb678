using System.Globalization;
using Duskwright.Plan.Document;
using Duskwright.Proposals;
using Duskwright.Study.Bench;
using Duskwright.Towns;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>Tonight's list from the accepted calendar, and the evenings from which a new one is planned.</summary>
public partial class Evenings
{
    private const int MostMinutes = 24 * 60;

    private (DayOfWeek Day, TimeOnly From, int Minutes)[] _week = [];
    private int _hands = 1;
    private int? _dryingPlaces;
    private CalendarProposal? _proposal;

    [Inject]
    private OpenTown Open { get; set; } = default!;

    [Inject]
    private TimeProvider Time { get; set; } = default!;

    private BenchCalendar? Calendar => Open.Town.Calendar;

    private DateTime Now => Time.GetLocalNow().DateTime;

    private (DayOfWeek Day, TimeOnly From, int Minutes)[] Week => _week;

    private List<EveningWork> Tonight => EveningWork.On(Open.Town, DateOnly.FromDateTime(Now));

    private DateOnly? Next => EveningWork.Left(Open.Town).Select(s => DateOnly.FromDateTime(s.Start)).Where(d => d > DateOnly.FromDateTime(Now)).Cast<DateOnly?>().Min();

    private List<EveningWork> Coming => Next is { } next ? EveningWork.On(Open.Town, next) : [];

    private int Late => EveningWork.Left(Open.Town).Count(s => s.Start.Date < Now.Date);

    private List<WeeklySession> Sessions => [.. _week.Where(d => d.Minutes > 0).Select(d => new WeeklySession { Day = d.Day, From = d.From, Minutes = Math.Min(d.Minutes, MostMinutes - (int)d.From.ToTimeSpan().TotalMinutes) })];

    protected override void OnInitialized()
    {
        var kept = Calendar?.Sessions ?? [];
        _hands = Calendar?.Hands ?? 1;
        _dryingPlaces = Calendar?.DryingPlaces;
        _week = [.. Enumerable.Range(1, 7).Select(d => (DayOfWeek)(d % 7)).Select(d => kept.FirstOrDefault(s => s.Day == d) is { } s ? (d, s.From, s.Minutes) : (d, new TimeOnly(19, 30), 0))];
    }

    private void From(int day, ChangeEventArgs e)
    {
        if (TimeOnly.TryParse(e.Value as string, CultureInfo.InvariantCulture, out var from))
        {
            _week[day].From = from;
        }
    }

    private void Minutes(int day, ChangeEventArgs e) =>
        _week[day].Minutes = int.TryParse(e.Value as string, NumberStyles.Integer, CultureInfo.InvariantCulture, out var minutes) ? Math.Clamp(minutes, 0, MostMinutes) : 0;

    private void Hands(ChangeEventArgs e) =>
        _hands = int.TryParse(e.Value as string, NumberStyles.Integer, CultureInfo.InvariantCulture, out var hands) ? Math.Clamp(hands, 1, 20) : 1;

    private void DryingPlaces(ChangeEventArgs e) =>
        _dryingPlaces = int.TryParse(e.Value as string, NumberStyles.Integer, CultureInfo.InvariantCulture, out var places) ? Math.Clamp(places, 1, 1000) : null;

    private void Plan() => _proposal = CalendarProposal.From(Open.Town, Now, Sessions, _hands, _dryingPlaces);

    private void Take()
    {
        Open.Apply(_proposal!.Edit(Sessions, _hands, _dryingPlaces));
        _proposal = null;
    }
}
