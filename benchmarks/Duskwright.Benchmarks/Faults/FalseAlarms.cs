using Duskwright.Circuits.Faulting;
using Duskwright.Circuits.Metering;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Solving;
using Duskwright.Faults.Testing;
using Duskwright.Plan.Document;
using Duskwright.Study;
using Spectre.Console;

namespace Duskwright.Benchmarks.Faults;

/// <summary>How often sound houses fail their test at the bank, and how often a missing lamp passes where the test is said to tell.</summary>
internal static class FalseAlarms
{
    private const int DrawsOfEach = 400;
    private const double LitLampAmps = 1e-6;

    internal static bool Run(Table table, TownStudy study)
    {
        var chance = new Random(11);
        var (failed, sound, passed, missing) = (0, 0, 0, 0);
        foreach (var pack in TrialPack.Of(study))
        {
            foreach (var house in pack.Houses)
            {
                var building = study.Buildings.Single(b => b.Building.Key == house.Name);
                var test = building.Tests.Single(t => t.Key == "fed-at-the-bank");
                var alone = pack with { Houses = [house] };
                for (var d = 0; d < DrawsOfEach && test.Reading is not null; d++)
                {
                    // Cells as the plan says, lengths and parts as they come.
                    var network = alone.Build(TrialDraw.Of(alone, chance) with { ChargeLeft = building.Building.State == BuildingState.Idea ? 1 : 0.95 + (0.05 * chance.NextDouble()) }).Network;
                    var range = OneOut.RangeFor(Meter.Usual, test.Reading.Value);
                    bool Passes(Network n) => test.Reading.Low <= Read(n, range, chance) && Read(n, range, chance) <= test.Reading.High;
                    (failed, sound) = (failed + (Passes(network) ? 0 : 1), sound + 1);
                    if (test.MeterTells)
                    {
                        var lamps = Enumerable.Range(0, network.Elements.Length).Where(i => network.Elements[i] is LampElement).ToArray();
                        (passed, missing) = (passed + (Passes(FaultyPart.Open(network, lamps[chance.Next(lamps.Length)]).In(network)) ? 1 : 0), missing + 1);
                    }
                }
            }
        }

        var houses = study.Buildings.Where(b => b.Lamps.Count > 0).ToList();
        var ahead = houses.Count(b => b.Building.State == BuildingState.Fixed ? b.Tests[^1].CanTell : b.Tests.Any(t => t.CanTell && t.ShouldLight > 0));
        var closed = houses.Count(b => b.Tests[^1].CanTell);
        return FaultsBenchmark.Row(table, $"sound houses that fail at the bank, of {sound}", "under 1 %", Percent(failed, sound), failed < 0.01 * sound)
            & FaultsBenchmark.Row(table, $"missing lamps that pass where the meter tells, of {missing}", "under 1 %", Percent(passed, missing), passed < 0.01 * missing)
            & FaultsBenchmark.Row(table, "houses with a test ahead that can tell", "95 %", Percent(ahead, houses.Count), ahead >= 0.95 * houses.Count)
            & FaultsBenchmark.Row(table, "houses with a test that can tell with the roof on", "stated", Percent(closed, houses.Count), true);
    }

    private static double Read(Network network, MeterRange range, Random chance)
    {
        var source = (SourceElement)network.Elements[0];
        var amps = OperatingPoint.Solve(new Network(network.NodeCount, network.Elements.SetItem(0, source with { Ohms = source.Ohms + range.Ohms }))).ElementAmps[0];
        return amps < LitLampAmps ? 0 : amps * (1 + (range.AccuracyShare * ((2 * chance.NextDouble()) - 1)));
    }

    private static string Percent(int part, int whole) => $"{FaultsBenchmark.Text(100.0 * part / whole, "0.00")} %";
}
