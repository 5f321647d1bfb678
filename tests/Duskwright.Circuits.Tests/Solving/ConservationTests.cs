using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Solving;

namespace Duskwright.Circuits.Tests.Solving;

/// <summary>Laws that need no reference.</summary>
public sealed class ConservationTests
{
    [Fact]
    public void What_flows_into_a_joint_flows_out_of_it() =>
        RandomTown.Any.Sample(town =>
        {
            var (network, solution) = Solved(town.Network);
            var (sum, through) = (new double[network.NodeCount], new double[network.NodeCount]);
            for (var i = 0; i < network.Elements.Length; i++)
            {
                var (element, amps) = (network.Elements[i], solution.ElementAmps[i]);
                sum[element.A] -= amps;
                sum[element.B] += amps;
                through[element.A] += Math.Abs(amps);
                through[element.B] += Math.Abs(amps);
            }

            return sum.Zip(through).All(p => Math.Abs(p.First) <= 5e-10 + (1e-9 * p.Second));
        });

    [Fact]
    public void What_the_pack_spends_becomes_heat_and_light() =>
        RandomTown.Any.Sample(town =>
        {
            var (network, solution) = Solved(town.Network);
            var (spent, used) = (0.0, 0.0);
            for (var i = 0; i < network.Elements.Length; i++)
            {
                var (element, amps) = (network.Elements[i], solution.ElementAmps[i]);
                var across = solution.NodeVolts[element.A] - solution.NodeVolts[element.B];
                switch (element)
                {
                    case SourceElement source:
                        spent += source.OpenVolts * amps;
                        used += amps * amps * source.Ohms;
                        break;
                    case ResistorElement resistor:
                        used += amps * amps * resistor.Ohms;
                        break;
                    default:
                        used += across * amps;
                        break;
                }
            }

            return Math.Abs(spent - used) <= 1e-9 + (1e-7 * spent);
        });

    [Fact]
    public void A_fresher_pack_leaves_no_lamp_with_less() =>
        Gen.Select(RandomTown.Any, Gen.Double[0.01, 1]).Sample((town, more) =>
            LampAmps(town).Zip(LampAmps(town with { Volts = town.Volts + more })).All(p => Math.Abs(p.Second) >= Math.Abs(p.First) - 1e-9));

    [Fact]
    public void A_longer_pair_leaves_its_own_house_with_no_more() =>
        Gen.Select(RandomTown.Any, Gen.Int[0, 100], Gen.Double[0.1, 10]).Sample((town, pick, more) =>
        {
            var house = pick % town.Houses.Length;
            var longer = town with { Houses = [.. town.Houses.Select((h, i) => i == house ? h with { WireOhms = h.WireOhms + more } : h)] };
            return Of(town).Zip(Of(longer)).All(p => Math.Abs(p.Second) <= Math.Abs(p.First) + 1e-9);

            IEnumerable<double> Of(RandomTown t)
            {
                var before = t.Houses.Take(house).Sum(h => h.Lamps.Length);
                return LampAmps(t).Skip(before).Take(t.Houses[house].Lamps.Length);
            }
        });

    [Fact]
    public void Equal_lamps_on_a_shared_resistance_act_like_one_on_as_many_times_that_resistance() =>
        Gen.Select(Gen.Int[1, 60], Gen.Double[0.1, 5], Gen.Double[0, 1000]).Sample((count, sharedOhms, ohms) =>
        {
            Element[] many = [new SourceElement("pack", 1, 0, 4.5, sharedOhms), .. Enumerable.Range(0, count).Select(i => new LampElement($"lamp {i}", 1, 0, UsualLamps.White, ohms))];
            Element[] one = [new SourceElement("pack", 1, 0, 4.5, sharedOhms * count), new LampElement("lamp", 1, 0, UsualLamps.White, ohms)];
            var (shared, alone) = (OperatingPoint.Solve(new Network(2, [.. many])).ElementAmps[1], OperatingPoint.Solve(new Network(2, [.. one])).ElementAmps[1]);
            return Math.Abs(shared - alone) <= 1e-9 + (1e-8 * alone);
        });

    [Fact]
    public void In_a_network_of_wire_alone_two_supplies_act_as_the_sum_of_each() =>
        Gen.Select(
            Gen.Select(Gen.Int[0, 7], Gen.Int[0, 7], Gen.Double[0.01, 100]).Array[0, 12], Gen.Double[0.01, 100].Array[7], Gen.Double[-12, 12], Gen.Double[-12, 12]).Sample((extra, chain, first, second) =>
        {
            var both = Volts(first, second);
            return both.Zip(Volts(first, 0).Zip(Volts(0, second))).All(p => Math.Abs(p.First - p.Second.First - p.Second.Second) < 1e-8);

            IEnumerable<double> Volts(double a, double b)
            {
                List<Element> elements = [new SourceElement("first", 3, 0, a, 0.5), new SourceElement("second", 7, 1, b, 2)];
                elements.AddRange(chain.Select((ohms, i) => new ResistorElement($"chain {i}", i, i + 1, ohms)));
                elements.AddRange(extra.Where(e => e.Item1 != e.Item2).Select(e => new ResistorElement("cross", e.Item1, e.Item2, e.Item3)));
                return Solved(new Network(8, [.. elements])).Solution.NodeVolts;
            }
        });

    private static (Network Network, Solution Solution) Solved(Network network)
    {
        var solution = OperatingPoint.Solve(network);
        return solution.Status == SolveStatus.Solved ? (network, solution) : throw new InvalidOperationException($"{solution.Status} at {solution.FailedAt}");
    }

    private static List<double> LampAmps(RandomTown town)
    {
        var (network, solution) = Solved(town.Network);
        return network.Elements.Select((e, i) => (e, i)).Where(x => x.e is LampElement).Select(x => solution.ElementAmps[x.i]).ToList();
    }
}
