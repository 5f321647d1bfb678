using System.Collections.Immutable;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Supplies;

namespace Duskwright.Circuits.Tests.Supplies;

public sealed class CellByCellTests
{
    private const double Hour = 3600;

    private static readonly CellLaw Aa = UsualCells.Of("LR6");

    // Thirty white lamps behind 820 Ω.
    private static readonly Network Street = new(
        2, [new SourceElement("pack", 1, 0, 1, 1), .. Enumerable.Range(0, 30).Select(i => new LampElement($"lamp {i}", 1, 0, UsualLamps.White, 820))]);

    [Fact]
    public void A_pack_taken_apart_into_equal_cells_is_the_same_pack()
    {
        var fresh = CellState.At(Aa, 1);
        var apart = CellByCell.Split(Street, "pack", [Row(1, 1, 1), Row(1, 1, 1)], 0.2);
        var settings = new DischargeSettings(4 * Hour, 20 * Hour);
        var cellwise = Discharge.Run(apart.Network, apart.Cells, settings).Steps;
        var whole = Discharge.Run(Street, [new PackOnNetwork("pack", new PackLaw(Aa, 3, 2, 0.2), fresh)], settings).Steps;
        Assert.Equal(whole[0].Solution.NodeVolts[1], cellwise[0].Solution.NodeVolts[1], 1e-9);
        Assert.Equal(whole[^1].Solution.NodeVolts[1], cellwise[^1].Solution.NodeVolts[1], 2e-4);
        Assert.Equal(Aa.Left(whole[^1].Packs[0]), Aa.Left(cellwise[^1].Packs[4]), 1e-3);
    }

    // Source: common practice, no source: the weak cell of a string is driven backwards when it is empty before the others.
    [Fact]
    public void The_weak_cell_of_a_string_is_reversed_by_the_others()
    {
        var apart = CellByCell.Split(Street, "pack", [Row(1, 0.15, 1)], 0.2);
        var verdicts = apart.Verdicts(Discharge.Run(apart.Network, apart.Cells, new DischargeSettings(24 * Hour, 25 * Hour) { PastDryCells = true }));
        Assert.NotNull(verdicts[1].ReversedAtSeconds);
        Assert.InRange(verdicts[1].ReversedAtSeconds!.Value / Hour, 3, 12);
        Assert.True(verdicts[1].LeastVolts < 0);
        Assert.Null(verdicts[0].ReversedAtSeconds);
        Assert.Null(verdicts[2].ReversedAtSeconds);
        Assert.Equal("cell 2 of row 1 of pack", verdicts[1].Name);
    }

    [Fact]
    public void Equal_cells_stopped_while_they_hold_reverse_none()
    {
        var apart = CellByCell.Split(Street, "pack", [Row(1, 1, 1)], 0.2);
        var verdicts = apart.Verdicts(Discharge.Run(apart.Network, apart.Cells, new DischargeSettings(24 * Hour, 10 * Hour) { PastDryCells = true }));
        Assert.All(verdicts, v => Assert.Null(v.ReversedAtSeconds));
        Assert.All(verdicts, v => Assert.Equal(0, v.MostFedAmps));
    }

    // Kirchhoff's voltage law on the two rows with next to nothing else connected: I = (E_new − E_old)/(R_new + R_old).
    [Fact]
    public void A_new_row_feeds_an_old_one_beside_it()
    {
        var idle = new Network(2, [new SourceElement("pack", 1, 0, 1, 1), new ResistorElement("load", 1, 0, 1e6)]);
        var apart = CellByCell.Split(idle, "pack", [Row(1, 1, 1), Row(0.3, 0.3, 0.3)], 0);
        var verdicts = apart.Verdicts(Discharge.Run(apart.Network, apart.Cells, new DischargeSettings(Hour, 1)));
        var (fresh, old) = (Aa.At(CellState.At(Aa, 1)), Aa.At(CellState.At(Aa, 0.3)));
        var amps = (fresh.OpenVolts - old.OpenVolts) / (fresh.Ohms + old.Ohms);
        Assert.All(verdicts.Skip(3), v => Assert.Equal(amps, v.MostFedAmps, 1e-3 * amps));
        Assert.All(verdicts.Take(3), v => Assert.Equal(0, v.MostFedAmps));
    }

    [Fact]
    public void Charge_driven_into_an_alkaline_cell_is_lost_and_into_a_rechargeable_one_kept()
    {
        var half = CellState.At(Aa, 0.5);
        Assert.Equal(Aa.Left(half), Aa.Left(Aa.Advance(half, -0.1, Hour)), 1e-12);
        var nimh = UsualCells.Of("HR6");
        Assert.Equal(0.5 + (0.1 * Hour / nimh.ChargeCoulombs), nimh.Left(nimh.Advance(CellState.At(nimh, 0.5), -0.1, Hour)), 1e-9);
    }

    [Fact]
    public void A_pack_that_is_not_there_or_has_no_cells_is_refused()
    {
        Assert.StartsWith("No source of the network is called other.", Assert.Throws<ArgumentException>(() => CellByCell.Split(Street, "other", [Row(1)], 0)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => CellByCell.Split(Street, "pack", [], 0));
        Assert.Throws<ArgumentException>(() => CellByCell.Split(Street, "pack", [Row(1), []], 0));
    }

    private static ImmutableArray<CellInPack> Row(params double[] left) => [.. left.Select(l => new CellInPack(Aa, CellState.At(Aa, l)))];
}
