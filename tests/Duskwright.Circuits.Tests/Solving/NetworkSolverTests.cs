using Duskwright.Circuits.Lamps;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Solving;

namespace Duskwright.Circuits.Tests.Solving;

public sealed class NetworkSolverTests
{
    [Fact]
    public void What_hangs_on_nothing_is_named()
    {
        var network = new CircuitSketch()
            .Pack("pack", "plus", "0", 4.5, 0.6)
            .Lamp("inn", "plus", "0", UsualLamps.White, 820)
            .Wire("loose tail", "far", "farther", 1)
            .Network;
        var solution = OperatingPoint.Solve(network);
        Assert.Equal(SolveStatus.Floating, solution.Status);
        Assert.Equal("loose tail", solution.FailedAt);
    }

    [Fact]
    public void A_house_whose_pair_was_never_joined_is_named_and_has_no_currents()
    {
        var network = new CircuitSketch()
            .Pack("pack", "plus", "0", 4.5, 0.6)
            .Wire("there", "plus", "far", 0.5)
            .Lamp("inn", "far", "0", UsualLamps.White, 820)
            .Wire("tail of the mill", "mill plus", "mill joint", 0.1)
            .Lamp("mill", "mill joint", "mill minus", UsualLamps.White, 820)
            .Network;
        var solution = OperatingPoint.Solve(network);
        Assert.Equal(SolveStatus.Floating, solution.Status);
        Assert.Equal("tail of the mill", solution.FailedAt);
        Assert.All(solution.ElementAmps, amps => Assert.True(double.IsNaN(amps)));
    }

    // A pack that hangs on the town by one lead only floats with nothing: its voltage is that of the lead, and it gives no current.
    [Fact]
    public void A_second_pack_joined_by_one_lead_gives_nothing()
    {
        var solved = new CircuitSketch()
            .Pack("pack", "plus", "0", 4.5, 0.6)
            .Lamp("inn", "plus", "0", UsualLamps.White, 820)
            .Pack("spare", "spare plus", "plus", 3, 0.5)
            .Solve();
        Assert.Equal(0, solved.Amps("spare"), 1e-12);
        Assert.Equal(3, solved.Volts("spare plus", "plus"), 1e-12);
    }

    [Fact]
    public void A_node_without_any_part_is_named_by_its_number()
    {
        var solution = OperatingPoint.Solve(new Network(3, [new ResistorElement("wire", 0, 1, 1)]));
        Assert.Equal(SolveStatus.Floating, solution.Status);
        Assert.Equal("node 2", solution.FailedAt);
    }

    [Fact]
    public void The_farthest_lamp_on_a_run_sees_the_lowest_voltage()
    {
        var street = new CircuitSketch().Pack("pack", "plus 0", "0", 4.5, 0.6);
        for (var house = 1; house <= 10; house++)
        {
            var before = house == 1 ? "0" : $"minus {house - 1}";
            street.Wire($"there {house}", $"plus {house - 1}", $"plus {house}", 0.5)
                .Wire($"back {house}", $"minus {house}", before, 0.5)
                .Lamp($"house {house}", $"plus {house}", $"minus {house}", UsualLamps.White, 390);
        }

        var solved = street.Solve();
        var volts = Enumerable.Range(1, 10).Select(h => solved.Volts($"plus {h}", $"minus {h}")).ToList();
        Assert.Equal(volts.OrderDescending(), volts);
        Assert.True(volts[0] - volts[9] > 0.1);
    }

    [Fact]
    public void Starting_from_a_solve_nearby_gives_the_same_answer_in_fewer_steps()
    {
        var network = Street(4.5);
        var solver = new NetworkSolver(network);
        var first = solver.Solve(network);
        var next = Street(4.45);
        var (cold, warm) = (solver.Solve(next), solver.Solve(next, first.NodeVolts.AsSpan()));
        Assert.True(warm.Iterations < cold.Iterations);
        Assert.All(cold.NodeVolts.Zip(warm.NodeVolts), p => Assert.Equal(p.First, p.Second, 1e-9));
    }

    [Fact]
    public void The_same_network_gives_the_same_digits()
    {
        var (first, second) = (OperatingPoint.Solve(Street(4.5)), OperatingPoint.Solve(Street(4.5)));
        Assert.Equal(first.NodeVolts.AsEnumerable(), second.NodeVolts);
    }

    [Fact]
    public void A_solver_refuses_a_network_of_another_structure()
    {
        var solver = new NetworkSolver(Street(4.5));
        Assert.Throws<ArgumentException>(() => solver.Solve(new Network(2, [new ResistorElement("wire", 0, 1, 1)])));
        var turned = Street(4.5);
        var wire = (ResistorElement)turned.Elements[1];
        var thrown = Assert.Throws<ArgumentException>(() => solver.Solve(new Network(turned.NodeCount, turned.Elements.SetItem(1, wire with { A = wire.B, B = wire.A }))));
        Assert.StartsWith("there joins nodes", thrown.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => solver.Solve(Street(4.5), new double[2]));
    }

    [Fact]
    public void A_regulated_supply_gives_its_limit_and_no_more()
    {
        var solved = new CircuitSketch().Pack("port", "plus", "0", 5, 0.1, limitAmps: 0.5).Wire("short", "plus", "0", 1).Solve();
        Assert.Equal(0.5, solved.Amps("port"), 1e-4);
        Assert.Equal(0.5, solved.Volts("plus"), 1e-4);
    }

    [Fact]
    public void Below_its_limit_a_regulated_supply_holds_its_voltage()
    {
        var solved = new CircuitSketch().Pack("port", "plus", "0", 5, 0.1, limitAmps: 0.5).Wire("load", "plus", "0", 10.9).Solve();
        Assert.Equal(5 / 11.0, solved.Amps("port"), 1e-9);
    }

    // Hostile on purpose: two packs of unlike voltage, loops, limits, lamps without resistors and lamps across both plus poles.
    [Fact]
    public void Any_network_that_hangs_together_is_solved() =>
        Gen.Select(
            RandomTown.Any,
            Gen.Select(Gen.Int[0, 1000], Gen.Int[0, 1000], Gen.Double[0.001, 1000]).Array[0, 6],
            Gen.Select(Gen.Int[0, 1000], Gen.Int[0, 1000], Gen.Double[-12, 12], Gen.Double[0.05, 2]).Array[0, 3]).Sample((town, ties, packs) =>
        {
            var network = town.Network;
            int At(int pick) => pick % network.NodeCount;
            var tied = new Network(
                network.NodeCount,
                [
                    .. network.Elements,
                    .. ties.Where(t => At(t.Item1) != At(t.Item2)).Select(t => new ResistorElement("tie", At(t.Item1), At(t.Item2), t.Item3)),
                    .. packs.Where(p => At(p.Item1) != At(p.Item2)).Select(p => new SourceElement("second pack", At(p.Item1), At(p.Item2), p.Item3, 0.5, p.Item4)),
                ]);
            var solution = OperatingPoint.Solve(tied);
            return solution.Status == SolveStatus.Solved && solution.ResidualAmps < 1e-6;
        });

    [Fact]
    public void A_dead_short_of_a_millionth_of_an_ohm_is_solved()
    {
        var solved = new CircuitSketch()
            .Pack("pack", "plus", "0", 4.8, 0.9)
            .Lamp("inn", "plus", "0", new LedLaw(2.7, 1e-3, 2, 12), 820)
            .Wire("short", "plus", "0", 1e-6)
            .Solve();
        Assert.Equal(4.8 / 0.9, solved.Amps("pack"), 1e-4);
    }

    private static Network Street(double volts)
    {
        var street = new CircuitSketch().Pack("pack", "plus", "0", volts, 0.6).Wire("there", "plus", "end", 2);
        for (var lamp = 0; lamp < 20; lamp++)
        {
            street.Lamp($"lamp {lamp}", "end", "0", UsualLamps.White, 390);
        }

        return street.Network;
    }
}
