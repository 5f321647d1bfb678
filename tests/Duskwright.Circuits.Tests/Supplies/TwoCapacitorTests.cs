using Duskwright.Circuits.Supplies;
using Duskwright.Circuits.Tests.Solving;

namespace Duskwright.Circuits.Tests.Supplies;

/// <summary>
/// The two wells are two capacitors joined by a resistor: C₁ = c·Q and C₂ = (1 − c)·Q at 1 V when full, R = 1/(k′·c·(1 − c)·Q)
/// (Manwell and McGowan 1993, rewritten). Source: ngspice 39.3, shared library, transient analysis of that circuit.
/// </summary>
public sealed class TwoCapacitorTests
{
    // Trapezoidal steps of 10 s against time constants of an hour err by (10/3600)²/12, under a millionth.
    private const double StepSeconds = 10;

    [Theory]
    [InlineData("LR6", 0.1, 6)]
    [InlineData("LR6", 0.02, 60)]
    [InlineData("LR03", 0.05, 10)]
    [InlineData("LR20", 0.4, 12)]
    [InlineData("CR2032", 0.002, 40)]
    [InlineData("HR6", 0.2, 8)]
    public void A_steady_discharge_drains_the_wells_like_two_capacitors(string id, double amps, double hours) =>
        Agree(UsualCells.Of(id), [(amps, hours * 3600)]);

    [Theory]
    [InlineData("LR6")]
    [InlineData("LR03")]
    [InlineData("HR03")]
    public void Load_rest_and_load_again_move_the_wells_like_two_capacitors(string id) =>
        Agree(UsualCells.Of(id), [(0.15, 2 * 3600), (0, 3 * 3600), (0.05, 4 * 3600), (0, 1000)]);

    private static void Agree(CellLaw cell, (double Amps, double Seconds)[] spells)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "The simulator's library is looked for on Linux only.");
        var state = CellState.At(cell, 1);
        var (seconds, wave) = (0.0, new List<string>());
        foreach (var (amps, span) in spells)
        {
            // The source steps within a millisecond.
            wave.Add($"{N(seconds == 0 ? 0 : seconds + 1e-3)} {N(amps)} {N(seconds + span)} {N(amps)}");
            state = cell.Advance(state, amps, span);
            seconds += span;
        }

        var (c, q) = (cell.AvailableShare, cell.ChargeCoulombs);
        var theirs = Ngspice.Volts(
            [
                ".options reltol=1e-7 abstol=1e-12 vntol=1e-10",
                $"c1 n1 0 {N(c * q)} ic=1",
                $"c2 n2 0 {N((1 - c) * q)} ic=1",
                $"r1 n1 n2 {N(1 / (cell.FollowPerSecond * c * (1 - c) * q))}",
                $"i1 n1 0 pwl({string.Join(' ', wave)})",
            ],
            ["n1", "n2"],
            $"tran {N(StepSeconds)} {N(seconds)} 0 {N(StepSeconds)} uic");
        Assert.Equal(theirs["n1"], cell.AvailableLeft(state), 3e-6);
        Assert.Equal(theirs["n2"], state.BoundCoulombs / ((1 - c) * q), 3e-6);
    }

    private static string N(double value) => Ngspice.Number(value);
}
