using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;

namespace Duskwright.Plan.Checks;

/// <summary>Parts the maker has described.</summary>
internal static class OwnPartChecks
{
    internal static IEnumerable<Problem> Of(Town town)
    {
        var parts = town.OwnParts;
        foreach (var problem in Twice.In(parts.Lamps.Select(p => p.Id), "own_parts.lamps", "lamp")
            .Concat(Twice.In(parts.Supplies.Select(p => p.Id), "own_parts.supplies", "supply part"))
            .Concat(Twice.In(parts.Wires.Select(p => p.Id), "own_parts.wires", "wire"))
            .Concat(Twice.In(parts.Fuses.Select(p => p.Id), "own_parts.fuses", "fuse")))
        {
            yield return problem;
        }

        for (var i = 0; i < parts.Lamps.Count; i++)
        {
            var lamp = parts.Lamps[i];
            if (lamp.ReferenceVoltage.Volts > SupplyChecks.TouchableVolts || MainsMarks.On(lamp.Name, lamp.Id))
            {
                yield return SupplyChecks.Mains($"own_parts.lamps[{i}]", $"{lamp.Name} is marked as mains or has {lamp.ReferenceVoltage.Volts} V");
            }

            foreach (var (field, value) in new[]
            {
                ("reference_voltage_v", lamp.ReferenceVoltage.Volts), ("reference_current_ma", lamp.ReferenceCurrent.Milliamperes), ("ideality", lamp.Ideality),
                ("most_current_ma", lamp.MostCurrent?.Milliamperes ?? 1), ("intensity_current_ma", lamp.IntensityCurrent?.Milliamperes ?? 1), ("off_current_ma", lamp.OffCurrent?.Milliamperes ?? 1),
            })
            {
                if (!(value > 0))
                {
                    yield return Figure($"own_parts.lamps[{i}].{field}", lamp.Name, field, value);
                }
            }

            if (lamp.OnShare is { } share && !(share is > 0 and <= 1))
            {
                yield return new Problem($"own_parts.lamps[{i}].on_share", "share", $"{lamp.Name} is lit {share} of the time; more than 0 and at most 1 is allowed.", "Write 0.65 for 65 %.");
            }
        }

        for (var i = 0; i < parts.Supplies.Count; i++)
        {
            var supply = parts.Supplies[i];
            var path = $"own_parts.supplies[{i}]";
            if (supply.NominalVoltage.Volts > SupplyChecks.TouchableVolts || MainsMarks.On(supply.Name, supply.Id))
            {
                yield return SupplyChecks.Mains(path, $"{supply.Name} is marked as mains or has {supply.NominalVoltage.Volts} V");
            }

            if (!(supply.NominalVoltage.Volts > 0))
            {
                yield return Figure($"{path}.nominal_voltage_v", supply.Name, "nominal_voltage_v", supply.NominalVoltage.Volts);
            }

            var isCell = supply.Kind is SupplyKind.Alkaline or SupplyKind.NickelMetalHydride or SupplyKind.LithiumCoin;
            if (isCell && (supply.Curve.Count < 2 || supply.Charge is not { AmpereHours: > 0 } || supply.AvailableShare is not (> 0 and < 1) || supply.FollowRatePerHour is not > 0
                || supply.Curve.Any(p => p.Inside.Ohms <= 0 || p.Left is < 0 or > 1) || supply.Curve.Zip(supply.Curve.Skip(1)).Any(p => p.First.Left <= p.Second.Left)))
            {
                yield return new Problem(path, "cell-figures", $"{supply.Name} is a cell and lacks a charge, wells or a curve of at least two points from full to empty.", "Copy the figures of the nearest cell in the catalogue and change what you measured.");
            }

            if (!isCell && supply.SourceResistance is not { Ohms: > 0 })
            {
                yield return Figure($"{path}.source_resistance_ohm", supply.Name, "source_resistance_ohm", supply.SourceResistance?.Ohms ?? 0);
            }
        }

        foreach (var (path, name, id) in parts.Wires.Select((p, i) => ($"own_parts.wires[{i}]", p.Name, p.Id))
            .Concat(parts.Fuses.Select((p, i) => ($"own_parts.fuses[{i}]", p.Name, p.Id)))
            .Concat(parts.Sundries.Select((p, i) => ($"own_parts.sundries[{i}]", p.Name, p.Id))))
        {
            if (MainsMarks.On(name, id))
            {
                yield return SupplyChecks.Mains(path, $"{name} is marked as mains");
            }
        }

        for (var i = 0; i < parts.Wires.Count; i++)
        {
            if (parts.Wires[i].PerMetre.Ohms <= 0 || parts.Wires[i].CopperDiameter.Millimetres <= 0)
            {
                yield return Figure($"own_parts.wires[{i}]", parts.Wires[i].Name, "its resistance or diameter", Math.Min(parts.Wires[i].PerMetre.Ohms, parts.Wires[i].CopperDiameter.Millimetres));
            }
        }

        for (var i = 0; i < parts.Fuses.Count; i++)
        {
            var fuse = parts.Fuses[i];
            if (fuse.Hold.Milliamperes <= 0 || fuse.Trip.Milliamperes <= fuse.Hold.Milliamperes || fuse.LeastResistance.Ohms <= 0)
            {
                yield return new Problem($"own_parts.fuses[{i}]", "fuse-figures", $"{fuse.Name} must hold more than 0 mA, trip above that, and have more than 0 Ω.", "Look at its data sheet.");
            }
        }
    }

    private static Problem Figure(string path, string name, string field, double value) =>
        new(path, "part-figures", $"{name}: {field} is {value}; more than 0 is allowed.", "Look at the part's data sheet, or measure it.");
}
