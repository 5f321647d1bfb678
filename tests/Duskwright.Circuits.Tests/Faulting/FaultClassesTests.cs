using Duskwright.Circuits.Faulting;
using Duskwright.Circuits.Solving;

namespace Duskwright.Circuits.Tests.Faulting;

public sealed class FaultClassesTests
{
    private static FaultEffect Effect(double amps, params double[] lights) => new(SolveStatus.Solved, null, [.. lights], [amps], [4.5], "wire", 0);

    [Fact]
    public void Faults_that_look_alike_and_read_alike_are_one_class()
    {
        var (unseen, classes) = FaultClasses.Of(
            Effect(0.1, 1, 1),
            [Effect(0.09, 0, 1), Effect(0.0905, 0.001, 1), Effect(0.09, 1, 0), Effect(0.1004, 1, 1), Effect(0.08, 0, 1), Effect(0.09, 0.3, 1)],
            new BankView(0.01, 0.001));
        Assert.Equal([3], unseen);
        Assert.Equal([[0, 1], [2], [4], [5]], classes.Select(c => c.ToArray()));
    }

    [Theory]
    [InlineData(0.0999, 1)]
    [InlineData(0.1001, 2)]
    public void Two_readings_within_the_view_are_one_and_beyond_it_two(double apart, int classes) =>
        Assert.Equal(classes, FaultClasses.Of(Effect(1, 1), [Effect(2, 0), Effect(2 + apart, 0)], new BankView(1, 0.1)).Classes.Length);

    [Fact]
    public void A_chain_of_readings_each_near_the_next_is_one_class() =>
        Assert.Equal([[0, 1, 2]], FaultClasses.Of(Effect(1, 1), [Effect(2, 0), Effect(2.09, 0), Effect(2.18, 0)], new BankView(1, 0.1)).Classes.Select(c => c.ToArray()));

    [Fact]
    public void Voltages_tell_apart_what_currents_do_not() =>
        Assert.Equal(2, FaultClasses.Of(Effect(1, 1), [Effect(2, 0), Effect(2, 0) with { PackVolts = [4.3] }], new BankView(0.1, 0.1)).Classes.Length);

    // A lamp reversed and a lamp with an open joint both are dark and take nothing: no look and no meter at the bank tells them apart,
    // and neither which wire of a pair is open (common practice, no source).
    [Fact]
    public void From_the_bank_a_reversed_lamp_cannot_be_told_from_an_open_one()
    {
        var network = new CircuitSketch()
            .Pack("pack", "plus", "0", 4.5, 0.5)
            .Wire("there", "plus", "far", 0.2)
            .Wire("back", "far minus", "0", 0.2)
            .Lamp("inn 1", "far", "far minus", UsualLamps.White, 820)
            .Lamp("inn 2", "far", "far minus", UsualLamps.White, 820)
            .Network;
        var faults = FaultList.Of(network, [], []);
        var (sound, faulty) = FaultSweep.Of(network, faults, TestContext.Current.CancellationToken);
        var (unseen, classes) = FaultClasses.Of(sound, faulty, new BankView(0.01, 1e-4));
        Assert.Empty(unseen);
        int[] ClassOf(CircuitFaultKind kind, string place) => [.. classes.Single(c => c.Any(f => faults[f].Kind == kind && faults[f].Place == place))];
        Assert.Equal(ClassOf(CircuitFaultKind.LampOpen, "inn 1"), ClassOf(CircuitFaultKind.LampReversed, "inn 1"));
        Assert.Equal(ClassOf(CircuitFaultKind.JointOpen, "there"), ClassOf(CircuitFaultKind.JointOpen, "back"));
        Assert.NotEqual(ClassOf(CircuitFaultKind.LampOpen, "inn 1"), ClassOf(CircuitFaultKind.LampOpen, "inn 2"));
        Assert.NotEqual(ClassOf(CircuitFaultKind.LampOpen, "inn 1"), ClassOf(CircuitFaultKind.LampShorted, "inn 1"));
    }
}
