using Duskwright.Circuits.Supplies;

namespace Duskwright.Circuits.Tests.Supplies;

public sealed class CellLawTests
{
    private static readonly CellLaw Cell = new(3600, 0.6, 1e-4, [new(1, 1.6, 0.2), new(0.5, 1.3, 0.4), new(0, 0.8, 1.0)], 0.9);

    private static readonly Gen<CellState> States =
        from left in Gen.Double[0.3, 1]
        from lag in Gen.Double[0.5, 1]
        select new CellState(3600 * left * 0.6 * lag, 3600 * left * 0.4);

    // Source: J. F. Manwell and J. G. McGowan, Lead acid battery storage model for hybrid energy systems, Solar Energy 50 (1993) 399–405:
    // dq1/dt = −I − k(1 − c)q1 + k·c·q2, dq2/dt = k(1 − c)q1 − k·c·q2 with k = k′. Here summed by fourth-order Runge–Kutta.
    [Fact]
    public void The_closed_form_is_the_two_well_equations_summed_up() =>
        Gen.Select(States, Gen.Double[0, 1], Gen.Double[1, 5000]).Sample((state, drawnShare, seconds) =>
        {
            const int Steps = 200;
            var amps = drawnShare * state.AvailableCoulombs / seconds;
            var h = seconds / Steps;
            var (k, c) = (Cell.FollowPerSecond, Cell.AvailableShare);
            (double, double) Slope(double q1, double q2) => (-amps - (k * (1 - c) * q1) + (k * c * q2), (k * (1 - c) * q1) - (k * c * q2));
            var (q1, q2) = (state.AvailableCoulombs, state.BoundCoulombs);
            for (var i = 0; i < Steps; i++)
            {
                var (a1, a2) = Slope(q1, q2);
                var (b1, b2) = Slope(q1 + (h / 2 * a1), q2 + (h / 2 * a2));
                var (c1, c2) = Slope(q1 + (h / 2 * b1), q2 + (h / 2 * b2));
                var (d1, d2) = Slope(q1 + (h * c1), q2 + (h * c2));
                q1 += h / 6 * (a1 + (2 * b1) + (2 * c1) + d1);
                q2 += h / 6 * (a2 + (2 * b2) + (2 * c2) + d2);
            }

            var after = Cell.Advance(state, amps, seconds);
            return Math.Abs(after.AvailableCoulombs - q1) < 1e-6 && Math.Abs(after.BoundCoulombs - q2) < 1e-6;
        });

    [Fact]
    public void The_wells_lose_what_is_drawn_and_nothing_else() =>
        Gen.Select(States, Gen.Double[0, 0.1], Gen.Double[1, 5000]).Sample((state, amps, seconds) =>
        {
            var after = Cell.Advance(state, amps, seconds);
            return Math.Abs(Sum(state) - Sum(after) - (amps * seconds)) < 1e-8;
        });

    [Fact]
    public void A_rest_gives_a_tired_cell_its_volts_back()
    {
        var tired = Cell.Advance(CellState.At(Cell, 1), 0.3, 4000);
        var rested = Cell.Advance(tired, 0, 40_000);
        Assert.True(Cell.At(rested).OpenVolts > Cell.At(tired).OpenVolts + 0.1);
        Assert.Equal(Sum(tired), Sum(rested), 1e-8);
        Assert.Equal(Cell.Left(rested), Cell.AvailableLeft(rested), 0.02);
    }

    [Fact]
    public void A_cell_drawn_harder_has_less_left_to_give()
    {
        double Given(double amps)
        {
            var (state, seconds) = (CellState.At(Cell, 1), 0);
            for (; Cell.AvailableLeft(state) > 0.01; seconds++)
            {
                state = Cell.Advance(state, amps, 1);
            }

            return amps * seconds;
        }

        Assert.True(Given(0.05) > Given(0.2) + 100);
        Assert.True(Given(0.2) > Given(1) + 100);
    }

    [Fact]
    public void Wells_never_fall_below_empty_nor_rise_above_full() =>
        Gen.Select(States, Gen.Double[-5, 5], Gen.Double[0, 1e6]).Sample((state, amps, seconds) =>
        {
            var after = Cell.Advance(state, amps, seconds);
            return after.AvailableCoulombs is >= 0 and <= (3600 * 0.6) + 1e-9 && after.BoundCoulombs >= 0 && Sum(after) <= 3600 + 1e-9;
        });

    [Theory]
    [InlineData(1.0, 1.6, 0.2)]
    [InlineData(0.75, 1.45, 0.3)]
    [InlineData(0.5, 1.3, 0.4)]
    [InlineData(0.25, 1.05, 0.7)]
    [InlineData(0.0, 0.8, 1.0)]
    public void Between_the_points_of_its_curve_a_cell_is_straight(double left, double volts, double ohms)
    {
        var at = Cell.At(CellState.At(Cell, left));
        Assert.Equal(volts, at.OpenVolts, 1e-12);
        Assert.Equal(ohms, at.Ohms, 1e-12);
    }

    // Source: J. Bird, Electrical Circuit Theory and Technology, example 4.1, p. 35: eight cells of 2.2 V and 0.2 Ω make 17.6 V and 1.6 Ω.
    [Fact]
    public void Cells_in_a_row_add_their_volts_and_ohms()
    {
        var cell = new CellLaw(3600, 0.8, 1e-4, [new(1, 2.2, 0.2), new(0, 1, 0.2)], 1);
        var pack = new PackLaw(cell, 8, 1, 0);
        Assert.Equal(17.6, pack.OpenVolts(CellState.At(cell, 1)), 1e-12);
        Assert.Equal(1.6, pack.Ohms(CellState.At(cell, 1)), 1e-12);
        Assert.Equal(0.9, (pack with { Parallel = 2, ExtraOhms = 0.1 }).Ohms(CellState.At(cell, 1)), 1e-12);
    }

    [Theory]
    [InlineData(0, 0.6, 1e-4)]
    [InlineData(3600, 0, 1e-4)]
    [InlineData(3600, 1.01, 1e-4)]
    [InlineData(3600, 0.6, 0)]
    public void A_cell_that_cannot_be_is_refused(double coulombs, double share, double follow) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new CellLaw(coulombs, share, follow, Cell.Curve, 0.9));

    [Fact]
    public void A_curve_that_does_not_fall_is_refused()
    {
        Assert.Throws<ArgumentException>(() => new CellLaw(3600, 0.6, 1e-4, [new(1, 1.6, 0.2)], 0.9));
        Assert.Throws<ArgumentException>(() => new CellLaw(3600, 0.6, 1e-4, [new(0, 0.8, 1), new(1, 1.6, 0.2)], 0.9));
    }

    private static double Sum(CellState state) => state.AvailableCoulombs + state.BoundCoulombs;
}
