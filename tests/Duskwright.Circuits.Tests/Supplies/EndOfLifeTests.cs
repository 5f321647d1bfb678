using System.Collections.Immutable;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Supplies;

namespace Duskwright.Circuits.Tests.Supplies;

public sealed class EndOfLifeTests
{
    private const double Hour = 3600;

    private static readonly CellLaw Aa = UsualCells.Of("LR6");

    // Source: common practice, no source: white behind 820 Ω fades long before three cells are at 0.9 V each; amber at the end of the same
    // pack does not. Hours to half of the first current of 30 lamps 26, a quarter either way.
    [Fact]
    public void A_white_lamp_is_dim_long_before_the_cells_are_flat()
    {
        var end = EndOf(30, UsualLamps.White, 820)!;
        Assert.Equal(EndCause.LampDim, end.Cause);
        Assert.InRange(end.LitSeconds / Hour, 0.75 * 26, 1.25 * 26);
    }

    [Fact]
    public void An_amber_lamp_on_rechargeables_goes_on_until_the_cells_are_flat()
    {
        var cell = UsualCells.Of("HR6");
        var network = new Network(2, [new SourceElement("pack", 1, 0, 1, 1), new ResistorElement("heater", 1, 0, 12), new LampElement("lamp", 1, 0, UsualLamps.Amber, 100)]);
        ImmutableArray<PackOnNetwork> packs = [new PackOnNetwork("pack", new PackLaw(cell, 3, 1, 0.1), CellState.At(cell, 1))];
        var end = EndOfLife.Of(network, packs, Discharge.Run(network, packs, new DischargeSettings(24 * Hour, 100 * Hour)), 0.3)!;
        Assert.Equal((EndCause.EndVoltage, "pack"), (end.Cause, end.Name));
    }

    [Fact]
    public void The_worst_lamp_is_named()
    {
        var network = new Network(3, [new SourceElement("pack", 1, 0, 1, 1), new ResistorElement("thin wire", 1, 2, 20), .. Enumerable.Range(0, 10).Select(i => new LampElement($"near {i}", 1, 0, UsualLamps.White, 270)), new LampElement("far", 2, 0, UsualLamps.White, 270)]);
        ImmutableArray<PackOnNetwork> packs = [new PackOnNetwork("pack", new PackLaw(Aa, 3, 1, 0.2), CellState.At(Aa, 1))];
        var run = Discharge.Run(network, packs, new DischargeSettings(24 * Hour, 100 * Hour));
        Assert.Contains(EndOfLife.Of(network, packs, run)!.Name, network.Elements.OfType<LampElement>().Select(l => l.Name));
        Assert.Equal(0, EndOfLife.Of(network, packs, run, 1.0000001)!.LitSeconds);
    }

    [Fact]
    public void Lamps_that_hold_to_the_last_hour_have_no_end() => Assert.Null(EndOf(10, UsualLamps.White, 820, 2));

    private static EndOfLife? EndOf(int lamps, Circuits.Lamps.LampLaw law, double ohms, double hours = 300)
    {
        var network = new Network(2, [new SourceElement("pack", 1, 0, 1, 1), .. Enumerable.Range(0, lamps).Select(i => new LampElement($"lamp {i}", 1, 0, law, ohms))]);
        ImmutableArray<PackOnNetwork> packs = [new PackOnNetwork("pack", new PackLaw(Aa, 3, 1, 0.2), CellState.At(Aa, 1))];
        return EndOfLife.Of(network, packs, Discharge.Run(network, packs, new DischargeSettings(24 * Hour, hours * Hour)));
    }
}
