using Duskwright.Plan;
using Duskwright.Study.Figures;
using Duskwright.Study.Operation;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Lists;

/// <summary>Makes the switch list: each switch is solved alone on its pack, as a meter at the bank would find it.</summary>
internal static class SwitchRows
{
    internal static ItemList<SwitchRow> Of(ResolvedTown resolved, Memo memo)
    {
        var alone = new[] { Corner.Low, Corner.Typical, Corner.High }.Select(c => Alone(resolved, c, memo)).ToList();
        return resolved.Town.SwitchGroups.Select(group =>
        {
            var buildings = resolved.Buildings.Where(b => b.Lamps.Any(l => l.SwitchGroup == group.Id)).ToList();
            return new SwitchRow(
                group.Id,
                group.Name,
                group.Supply,
                buildings.Select(b => b.Building.Name).ToItemList(),
                buildings.Sum(b => b.Lamps.Count(l => l.SwitchGroup == group.Id)),
                alone[1].TryGetValue(group.Id, out var lamps)
                    ? Figure.From(Laws.Sum, $"switch {group.Id} alone", "A", [.. lamps]).Between(alone[0][group.Id].Sum(f => f.Value), alone[2][group.Id].Sum(f => f.Value))
                    : null,
                resolved.Town.Scenes.Where(s => s.On.Contains(group.Id)).Select(s => s.Name).ToItemList());
        }).ToItemList();
    }

    private static Dictionary<string, IReadOnlyList<Figure>> Alone(ResolvedTown resolved, Corner corner, Memo memo) =>
        (from circuit in CircuitInputs.Of(resolved, corner)
         from pack in circuit.Packs
         from @group in pack.Groups
         let input = circuit with { Packs = [pack with { Groups = [@group] }] }
         select (@group.Id, Lamps: memo.Get(new SwitchAlone(input), s => s.Answer())))
        .ToDictionary(x => x.Id, x => x.Lamps.Currents, StringComparer.Ordinal);
}
