using Duskwright.Circuits.Lamps;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Solving;
using Duskwright.Circuits.Tolerance;

namespace Duskwright.Circuits.Tests.Solving;

/// <summary>Networks solved side by side against the same networks solved one by one.</summary>
public sealed class LaneSolverTests
{
    // Seeds 0 to 59: trees and meshes of 5 to 500 lamps, one to three supplies, lamps of every kind, every tenth with a supply at its limit.
    [Fact]
    public void Networks_solved_side_by_side_are_those_solved_one_by_one()
    {
        for (var seed = 0; seed < 60; seed++)
        {
            var network = RandomNetwork.Of(seed);
            var solver = Lanes(network);
            Network[] lanes = [.. Enumerable.Range(0, LaneValues.Lanes).Select(lane => Varied(network, (100 * seed) + lane))];
            for (var lane = 0; lane < lanes.Length; lane++)
            {
                for (var i = 0; i < network.Elements.Length; i++)
                {
                    solver.Values.Put(i, lane, lanes[lane].Elements[i]);
                }
            }

            solver.Solve(lane => lanes[lane]);
            for (var lane = 0; lane < lanes.Length; lane++)
            {
                Same(lanes[lane], solver, lane, $"lane {lane} of town {seed}");
            }
        }
    }

    [Fact]
    public void A_lane_alone_can_be_changed_and_changed_back()
    {
        var network = RandomNetwork.Of(4);
        var solver = Lanes(network);
        var lamp = network.Elements.ToList().FindIndex(e => e is LampElement);
        var open = new ResistorElement("open", network.Elements[lamp].A, network.Elements[lamp].B, 1e9);
        solver.Values.Put(lamp, 1, open);
        solver.Solve([lamp], _ => throw new InvalidOperationException("All lanes settle together."));
        Same(network, solver, 0, "untouched lane");
        Same(new Network(network.NodeCount, network.Elements.SetItem(lamp, open)), solver, 1, "changed lane");
        solver.Values.Put(lamp, 1, network.Elements[lamp]);
        solver.Solve([lamp], _ => throw new InvalidOperationException("All lanes settle together."));
        Same(network, solver, 1, "lane changed back");
    }

    [Fact]
    public void Drawn_numbers_are_those_of_the_drawn_parts()
    {
        var network = RandomNetwork.Of(8);
        var known = network.Elements.Select((e, i) => (e, i)).Where(x => x.e is LampElement { Law: LedLaw }).Take(3).Select(x => x.i).ToList();
        var spreads = Spreads.Usual with
        {
            Unknowns =
            [
                new UnknownPart(known[0], [network.Elements[known[0]], (LampElement)network.Elements[known[0]] with { ResistorOhms = 47 }]),
                new UnknownPart(known[1], [network.Elements[known[1]], (LampElement)network.Elements[known[1]] with { Law = UsualLamps.Amber }]),
                new UnknownPart(known[2], [new ResistorElement("bridge", network.Elements[known[2]].A, network.Elements[known[2]].B, 330), network.Elements[known[2]]]),
            ],
        };
        var parts = new DrawnParts(network, spreads, []);
        var draws = new StratifiedDraws(10, parts.Dimensions, 7);
        var solver = Lanes(network);
        for (var group = 0; group * LaneValues.Lanes < 10; group++)
        {
            parts.Fill(solver.Values, draws, group);
            solver.Solve(_ => throw new InvalidOperationException("All lanes settle together."));
            for (var lane = 0; lane < LaneValues.Lanes && (group * LaneValues.Lanes) + lane < 10; lane++)
            {
                Same(new Network(network.NodeCount, [.. parts.Of(draws, (group * LaneValues.Lanes) + lane)]), solver, lane, $"draw {(group * LaneValues.Lanes) + lane}");
            }
        }
    }

    private static LaneSolver Lanes(Network network)
    {
        var solution = OperatingPoint.Solve(network);
        Assert.Equal(SolveStatus.Solved, solution.Status);
        return new LaneSolver(SeriesParallel.Of(network), network, solution.NodeVolts);
    }

    private static Network Varied(Network network, int seed)
    {
        var chance = new Random(seed);
        double Share() => 0.7 + (0.6 * chance.NextDouble());
        return new Network(network.NodeCount, [.. network.Elements.Select<Element, Element>(e => e switch
        {
            ResistorElement wire => wire with { Ohms = wire.Ohms * Share() },
            SourceElement source => source with { OpenVolts = source.OpenVolts * Share(), Ohms = source.Ohms * Share() },
            LampElement { Law: LedLaw law } lamp when chance.Next(20) > 0 => lamp with { Law = law with { RefVolts = law.RefVolts * Share(), SeriesOhms = law.SeriesOhms * Share(), Ideality = law.Ideality * Share() }, ResistorOhms = lamp.ResistorOhms * Share() },
            LampElement { Law: LedLaw } => new ResistorElement("in its place", e.A, e.B, 100 * Share()),
            var other => other,
        })]);
    }

    // Two ways to the same root: a thousandth of a millionth of it, and a nanovolt.
    private static void Same(Network network, LaneSolver solver, int lane, string where)
    {
        var alone = OperatingPoint.Solve(network);
        Assert.Equal(SolveStatus.Solved, alone.Status);
        for (var node = 0; node < network.NodeCount; node++)
        {
            Assert.True(Math.Abs(alone.NodeVolts[node] - solver.NodeVolts[node][lane]) <= 1e-9, $"node {node}, {where}: {solver.NodeVolts[node][lane]:R} for {alone.NodeVolts[node]:R}");
        }

        for (var i = 0; i < network.Elements.Length; i++)
        {
            var (theirs, ours) = (alone.ElementAmps[i], solver.ElementAmps[i][lane]);
            Assert.True(Math.Abs(theirs - ours) <= 1e-10 + (1e-9 * Math.Abs(theirs)), $"{network.Elements[i].Name}, {where}: {ours:R} for {theirs:R}");
            if (network.Elements[i] is LampElement lamp)
            {
                var light = lamp.Law.At(alone.NodeVolts[lamp.A] - alone.NodeVolts[lamp.B], lamp.ResistorOhms).Light;
                Assert.Equal(light, solver.Lights(i)[lane], 1e-7 * Math.Max(1, light));
            }
        }
    }
}
