using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Results;

namespace Duskwright.Study.Tests.Results;

/// <summary>What the log says of the cells.</summary>
public class PackRunningTests
{
    private static readonly DateOnly Friday = new(2026, 12, 4);

    // Twenty-four lamps on three AA, seven hours a day for two days.
    private static readonly Town Fair = new()
    {
        Name = "Fair",
        Supplies = [new Supply { Id = "1", Part = "LR6", Series = 3 }, new Supply { Id = "2", Part = "LR6", Series = 3 }],
        SwitchGroups = [new SwitchGroup { Id = "A", Supply = "1" }, new SwitchGroup { Id = "B", Supply = "2" }],
        Buildings = new[] { ("A", 24), ("B", 12) }.Select(h => new Building
        {
            Name = $"House {h.Item1}",
            Leds = h.Item2,
            SwitchGroup = h.Item1,
            PairLength = Length.FromMillimetres(300),
            Resistor = ResistorChoice.Of(Resistance.FromOhms(820)),
        }).ToItemList(),
        Show = new Show { HoursPerDay = Duration.FromHours(7), Days = 2 },
    };

    private static LogEntry Burnt(int day, double hours, string? supply = null, string? id = null) => new() { Id = id, Date = Friday.AddDays(day), Kind = LogKind.Burnt, Supply = supply, Burnt = Duration.FromHours(hours) };

    private static LogEntry Of(LogKind kind, int day, string? supply = null, string? corrects = null) => new() { Date = Friday.AddDays(day), Kind = kind, Supply = supply, Corrects = corrects };

    private static PackRunning First(params LogEntry[] log) => All(log)[0];

    private static ItemList<PackRunning> All(params LogEntry[] log) => TownStudy.Of(Fair with { Log = log.ToItemList() }).Running;

    // Common practice, no source: 24 lamps of 820 ohms on three AA come to half current in about 32 h, so a weekend of two days of seven
    // hours is lasted. Light falls a little faster than current and cells differ: within a third.
    [Fact]
    public void Three_AA_carry_twenty_four_lamps_through_a_weekend_fair()
    {
        var fresh = First();
        Assert.InRange(fresh.HoursLeft!.Value, 32 * 0.67, 32 * 1.33);
        Assert.True(fresh.ShowDaysLeft >= 2);
        Assert.StartsWith("The cells last the 2 show days.", fresh.Advice, StringComparison.Ordinal);
        Assert.Equal(3, fresh.CellsToPack);
    }

    [Fact]
    public void Hours_burnt_are_taken_off_and_those_of_the_whole_town_count_for_every_pack()
    {
        var (fresh, used) = (All(), All(Burnt(0, 7), Burnt(1, 5, "1")));
        Assert.Equal((12, 7), (used[0].HoursUsed.Value, used[1].HoursUsed.Value));
        Assert.Equal(fresh[0].HoursLeft!.Value - 12, used[0].HoursLeft!.Value, 1e-9);
        Assert.True(used[0].VoltsNow!.Value < fresh[0].VoltsNow!.Value);
    }

    [Fact]
    public void A_change_of_cells_begins_anew_and_what_was_withdrawn_does_not_count()
    {
        Assert.Equal(2, First(Burnt(0, 30), Of(LogKind.CellsChanged, 1, "1"), Burnt(2, 2)).HoursUsed.Value);
        Assert.Equal(0, First(Burnt(0, 30, id: "x"), Of(LogKind.Withdrawn, 0, corrects: "x")).HoursUsed.Value);
    }

    [Fact]
    public void Cells_that_may_not_last_the_day_are_changed_before_it_and_are_packed()
    {
        var tired = First(Burnt(0, 200));
        Assert.Equal((0, 0), (tired.HoursLeft!.Value, tired.ShowDaysLeft));
        Assert.StartsWith("Change the cells before the next show day", tired.Advice, StringComparison.Ordinal);
        Assert.True(tired.CellsToPack >= 3);
    }

    [Fact]
    public void Cells_of_which_the_town_said_they_were_half_empty_are_full_once_they_are_changed()
    {
        var half = Fair with { Supplies = Fair.Supplies.Select(s => s with { ChargeLeft = 0.5 }).ToItemList(), Log = [Of(LogKind.CellsChanged, 0)] };
        Assert.Equal(First().HoursLeft!.Value, TownStudy.Of(half).Running[0].HoursLeft!.Value, 1e-9);
    }

    [Fact]
    public void Cells_taken_out_for_storage_are_out_until_lamps_burn_again()
    {
        Assert.True(First(Burnt(0, 7), Of(LogKind.CellsOut, 1)).CellsOut);
        Assert.False(First(Of(LogKind.CellsOut, 1), Burnt(2, 1)).CellsOut);
        Assert.StartsWith("The cells are out", First(Of(LogKind.CellsOut, 1)).Advice, StringComparison.Ordinal);
    }
}
