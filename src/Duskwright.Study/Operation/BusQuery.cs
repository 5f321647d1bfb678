using Duskwright.Circuits.Solving;
using Duskwright.Plan;
using Duskwright.Study.Results;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Operation;

/// <summary>One supply whose lamps hang on a pair of plugs and pieces instead of the pairs the town says.</summary>
internal static class BusQuery
{
    private const string Bus = "bus";

    internal static BusResult Of(ResolvedTown resolved, string supply, ItemList<BusPiece> pieces, ItemList<FeedHouse> houses)
    {
        var joint = resolved.Town.Wiring.JointResistance?.Ohms ?? Usual.JointOhms;
        var junctions = houses.ToDictionary(h => h.Building, h => h.Junction, StringComparer.Ordinal);
        var pack = CircuitInputs.Of(resolved, Corner.Typical).SelectMany(c => c.Packs).First(p => p.Supply == supply);
        var pairs = pack.Groups.SelectMany(g => g.Pairs)
            .Where(p => junctions.ContainsKey(p.Building))
            .GroupBy(p => p.Building)
            .Select(b => new PairInput(b.Key, joint, b.SelectMany(p => p.Lamps).ToItemList()) { Junction = junctions[b.Key] })
            .ToItemList();
        var group = new GroupInput(Bus, Usual.SwitchOhms, pairs) { Shared = pieces.Select(p => new SharedPairInput(p.From, p.To, p.ConductorOhms)).ToItemList() };
        var circuit = CircuitNetwork.Of(new CircuitInput([pack with { Groups = [group] }], 0, resolved.Town.Show.HoursPerDay.Hours, false));
        var solution = OperatingPoint.Solve(circuit.Network);
        if (solution.Status != SolveStatus.Solved)
        {
            throw new InvalidOperationException($"The circuit has no solution at {solution.FailedAt} ({solution.Status}).");
        }

        double Across(int element) => solution.NodeVolts[circuit.Network.Elements[element].A] - solution.NodeVolts[circuit.Network.Elements[element].B];
        var socket = solution.NodeVolts[circuit.Network.Elements.First(e => e.Name == $"switch {Bus}").B];
        return new BusResult(
            solution.ElementAmps[circuit.Packs[0].Source],
            socket,
            circuit.Lamps.GroupBy(l => l.Building).Select(house =>
            {
                var amps = house.Sum(l => solution.ElementAmps[l.Element]);
                return new BusBuilding(
                    house.Key,
                    Across(house.First().Element) + (2 * joint * amps),
                    amps,
                    house.Select(l => l.Law.At(Across(l.Element), l.Input.BranchOhms).Light).ToItemList());
            }).ToItemList());
    }
}
