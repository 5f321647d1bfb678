using Duskwright.Plan.Document;
using Duskwright.Plan.Format;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Bench;

namespace Duskwright.Study.Tests.Bench;

/// <summary>Hours burnt and left. That hours are counted from the last change of cells, and that stored packs have their cells out: common practice, no source.</summary>
public class PackHoursTests
{
    private static readonly Town Saltmarrow = TownJson.Read(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "examples", "saltmarrow.json"))).Town! with { Log = [] };

    [Fact]
    public void Hours_burnt_are_taken_off_what_the_cells_have()
    {
        var (fresh, used) = (Pack(), Pack(Burnt(1, 1.5), Burnt(2, 0.5)));
        Assert.Equal(2, used.UsedHours, 1e-9);
        Assert.Equal(fresh.LeftHours!.Value - 2, used.LeftHours!.Value, 1e-9);
    }

    [Fact]
    public void New_cells_start_the_count_anew() => Assert.Equal(2, Pack(Burnt(1, 9), At(2, LogKind.CellsChanged), Burnt(3, 2)).UsedHours, 1e-9);

    [Fact]
    public void An_entry_that_was_withdrawn_counts_no_more() =>
        Assert.Equal(0, Pack(Burnt(1, 9) with { Id = "x" }, At(2, LogKind.Withdrawn) with { Corrects = "x" }).UsedHours, 1e-9);

    [Fact]
    public void A_pack_burnt_down_lasts_no_day_and_nothing_below_nothing_is_left()
    {
        var pack = Pack(Burnt(1, 500));
        Assert.Equal((0.0, 0, false), (pack.LeftHours!.Value, pack.ShowDays!.Value, pack.LastsShow));
    }

    [Fact]
    public void Cells_are_out_until_they_burn_again()
    {
        Assert.Equal(new DateOnly(2026, 3, 2), Pack(Burnt(1, 1), At(2, LogKind.CellsOut)).CellsOut);
        Assert.Null(Pack(At(2, LogKind.CellsOut), Burnt(3, 1)).CellsOut);
    }

    private static LogEntry At(int day, LogKind kind) => new() { Date = new DateOnly(2026, 3, day), Kind = kind, Supply = "3" };

    private static LogEntry Burnt(int day, double hours) => At(day, LogKind.Burnt) with { Burnt = Duration.FromHours(hours) };

    private static PackHours Pack(params LogEntry[] log) => TownStudy.Of(Saltmarrow with { Log = [.. log] }).Hours.Single(h => h.Pack.Supply.Id == "3");
}
