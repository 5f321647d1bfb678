using System.Text.Json;
using Duskwright.Plan.Document;
using Duskwright.Plan.Format;

namespace Duskwright.Plan.Parts;

/// <summary>The built-in generic parts, and parts found by their ids.</summary>
public static class Catalogue
{
    /// <summary>All built-in parts.</summary>
    public static PartList Parts { get; } = Load();

    /// <summary>A lamp, the maker's own before the built-in one.</summary>
    /// <param name="town">The town with the maker's own parts.</param>
    /// <param name="id">The part's id.</param>
    /// <returns>The part; none where there is no such part.</returns>
    public static LampPart? FindLamp(Town town, string id) =>
        town.OwnParts.Lamps.FirstOrDefault(p => p.Id == id) ?? Lamps.GetValueOrDefault(id);

    /// <summary>A cell or supply, the maker's own before the built-in one.</summary>
    /// <param name="town">The town with the maker's own parts.</param>
    /// <param name="id">The part's id.</param>
    /// <returns>The part; none where there is no such part.</returns>
    public static SupplyPart? FindSupply(Town town, string id) =>
        town.OwnParts.Supplies.FirstOrDefault(p => p.Id == id) ?? Supplies.GetValueOrDefault(id);

    /// <summary>A wire, the maker's own before the built-in one.</summary>
    /// <param name="town">The town with the maker's own parts.</param>
    /// <param name="id">The part's id.</param>
    /// <returns>The part; none where there is no such part.</returns>
    public static WirePart? FindWire(Town town, string id) =>
        town.OwnParts.Wires.FirstOrDefault(p => p.Id == id) ?? Wires.GetValueOrDefault(id);

    /// <summary>A fuse, the maker's own before the built-in one.</summary>
    /// <param name="town">The town with the maker's own parts.</param>
    /// <param name="id">The part's id.</param>
    /// <returns>The part; none where there is no such part.</returns>
    public static FusePart? FindFuse(Town town, string id) =>
        town.OwnParts.Fuses.FirstOrDefault(p => p.Id == id) ?? Fuses.GetValueOrDefault(id);

    private static readonly Dictionary<string, LampPart> Lamps = Parts.Lamps.ToDictionary(p => p.Id, StringComparer.Ordinal);
    private static readonly Dictionary<string, SupplyPart> Supplies = Parts.Supplies.ToDictionary(p => p.Id, StringComparer.Ordinal);
    private static readonly Dictionary<string, WirePart> Wires = Parts.Wires.ToDictionary(p => p.Id, StringComparer.Ordinal);
    private static readonly Dictionary<string, FusePart> Fuses = Parts.Fuses.ToDictionary(p => p.Id, StringComparer.Ordinal);

    private static PartList Load()
    {
        using var stream = typeof(Catalogue).Assembly.GetManifestResourceStream("Duskwright.Plan.Parts.catalogue.json")
            ?? throw new InvalidOperationException("The catalogue is missing from the program.");
        return JsonSerializer.Deserialize<PartList>(stream, TownJsonOptions.Shared)!;
    }
}
