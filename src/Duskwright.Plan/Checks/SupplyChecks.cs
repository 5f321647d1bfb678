using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;

namespace Duskwright.Plan.Checks;

/// <summary>Supplies and switches. Mains is the one thing that is refused.</summary>
public static class SupplyChecks
{
    /// <summary>The highest direct voltage that may be touched without insulation, V (IEC 61140).</summary>
    public const double TouchableVolts = 60;

    private const int MostCells = 24;

    internal static IEnumerable<Problem> Of(Town town)
    {
        foreach (var problem in Twice.In(town.Supplies.Select(s => s.Id), "supplies", "supply")
            .Concat(Twice.In(town.SwitchGroups.Select(g => g.Id), "switch_groups", "switch group"))
            .Concat(Twice.In(town.Scenes.Select(s => s.Name), "scenes", "scene")))
        {
            yield return problem;
        }

        for (var i = 0; i < town.Supplies.Count; i++)
        {
            var supply = town.Supplies[i];
            foreach (var (field, count) in new[] { ("series", supply.Series), ("parallel", supply.Parallel) })
            {
                if (count is < 1 or > MostCells)
                {
                    yield return new Problem($"supplies[{i}].{field}", "cell-count", $"Supply {supply.Id} has {count} cells in {field}; 1 to {MostCells} are allowed.", "Count the cells in the holder.");
                }
            }

            if (!(supply.ChargeLeft is >= 0 and <= 1))
            {
                yield return new Problem($"supplies[{i}].charge_left", "share", $"Supply {supply.Id} has {supply.ChargeLeft} of its charge left; 0 (empty) to 1 (fresh) is allowed.", "Write 0.5 for half.");
            }

            if (Catalogue.FindSupply(town, supply.Part) is { } part && part.NominalVoltage.Volts * supply.Series > TouchableVolts)
            {
                yield return Mains($"supplies[{i}]", $"Supply {supply.Id} gives {part.NominalVoltage.Volts * supply.Series} V");
            }
        }
    }

    /// <summary>The refusal of more than may be touched.</summary>
    /// <param name="path">Where it is said.</param>
    /// <param name="what">What gives how much: "Supply 1 gives 230 V".</param>
    /// <returns>The problem, with its remedy.</returns>
    public static Problem Mains(string path, string what) => new(
        path,
        "mains",
        $"{what}; at most {TouchableVolts} V direct current is computed here, and mains never.",
        "Use cells or a sealed, certified low-voltage adaptor; mains wiring belongs to a licensed electrician and the local code.");
}
