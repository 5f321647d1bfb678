using System.Collections.Immutable;
using System.Text.Json;
using Duskwright.Circuits.Supplies;

namespace Duskwright.Circuits.Tests.Supplies;

/// <summary>The cells of the catalogue that the product ships.</summary>
internal static class UsualCells
{
    private const double SecondsPerHour = 3600;

    internal static CellLaw Of(string id)
    {
        using var catalogue = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "catalogue.json")));
        var part = catalogue.RootElement.EnumerateObject().Where(p => p.Value.ValueKind == JsonValueKind.Array)
            .SelectMany(p => p.Value.EnumerateArray())
            .Single(p => p.GetProperty("id").GetString() == id);
        double Number(string name) => part.GetProperty(name).GetDouble();
        return new CellLaw(
            Number("charge_ah") * SecondsPerHour,
            Number("available_share"),
            Number("follow_rate_per_hour") / SecondsPerHour,
            part.GetProperty("curve").EnumerateArray()
                .Select(p => new CellCurvePoint(p.GetProperty("left").GetDouble(), p.GetProperty("open_v").GetDouble(), p.GetProperty("inside_ohm").GetDouble()))
                .ToImmutableArray(),
            Number("end_voltage_v"))
        {
            Rechargeable = part.GetProperty("kind").GetString() == "nickel_metal_hydride",
        };
    }
}
