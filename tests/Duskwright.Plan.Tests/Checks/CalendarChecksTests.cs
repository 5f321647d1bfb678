using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;

namespace Duskwright.Plan.Tests.Checks;

public class CalendarChecksTests
{
    private static readonly WeeklySession Tuesday = new() { Day = DayOfWeek.Tuesday, From = new TimeOnly(20, 0), Minutes = 120 };

    [Theory]
    [InlineData(0, false)]
    [InlineData(1, true)]
    [InlineData(240, true)]
    [InlineData(241, false)]
    public void A_session_lasts_some_minutes_and_ends_by_midnight(int minutes, bool allowed) =>
        Assert.Equal(allowed, Problems(Tuesday with { Minutes = minutes }) == 0);

    [Theory]
    [InlineData(21, false)]
    [InlineData(22, true)]
    public void Two_sessions_of_a_day_do_not_overlap(int hour, bool allowed) =>
        Assert.Equal(allowed, Problems(Tuesday, Tuesday with { From = new TimeOnly(hour, 0), Minutes = 60 }) == 0);

    [Theory]
    [InlineData(0)]
    [InlineData(1001)]
    public void Places_to_dry_are_at_least_one_and_not_endless(int places) =>
        Assert.Equal("calendar.drying_places", Assert.Single(TownChecks.Of(new Town { Name = "Nowhere", Calendar = new BenchCalendar { DryingPlaces = places } })).Path);

    [Fact]
    public void A_calendar_needs_a_pair_of_hands() =>
        Assert.Equal("calendar.hands", Assert.Single(TownChecks.Of(new Town { Name = "Nowhere", Calendar = new BenchCalendar { Hands = 0 } })).Path);

    private static int Problems(params WeeklySession[] sessions) => TownChecks.Of(new Town { Name = "Nowhere", Calendar = new BenchCalendar { Sessions = [.. sessions] } }).Count;
}
