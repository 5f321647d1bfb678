using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Supplies;

namespace Duskwright.Circuits.Tests.Supplies;

public sealed class DutyScheduleTests
{
    private const double Hour = 3600;

    [Fact]
    public void A_dark_day_lengthens_the_rest_before_it()
    {
        var fair = DutySchedule.OfDays([3 * Hour, 7 * Hour, 0, 5 * Hour]);
        Assert.Equal([new DutySpell(3 * Hour, 21 * Hour), new(7 * Hour, 41 * Hour), new(5 * Hour, 19 * Hour)], fair.Spells);
    }

    [Fact]
    public void The_cells_rest_between_the_days_of_a_fair_and_are_brighter_for_it()
    {
        var cell = UsualCells.Of("LR6");
        var pack = new PackOnNetwork("pack", new PackLaw(cell, 3, 1, 0.2), CellState.At(cell, 1));
        var network = new Network(2, [new SourceElement("pack", 1, 0, 1, 1), .. Enumerable.Range(0, 90).Select(i => new LampElement($"lamp {i}", 1, 0, UsualLamps.White, 820))]);
        double EndVolts(DutySchedule schedule) => Discharge.Run(network, [pack], new DischargeSettings(schedule, 8.2 * Hour)).Steps[^1].Solution.NodeVolts[1];
        Assert.True(EndVolts(DutySchedule.OfDays([8 * Hour, 0, 0.2 * Hour])) > EndVolts(DutySchedule.OfDays([8.2 * Hour])) + 0.02);
    }

    [Fact]
    public void Schedules_without_light_are_refused()
    {
        Assert.Throws<ArgumentException>(() => new DutySchedule([]));
        Assert.Throws<ArgumentException>(() => new DutySchedule([new DutySpell(0, Hour)]));
        Assert.Throws<ArgumentException>(() => new DutySchedule([new DutySpell(Hour, -1)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => DutySchedule.OfDays([0, Hour]));
        Assert.Throws<ArgumentOutOfRangeException>(() => DutySchedule.Daily(86401));
    }
}
