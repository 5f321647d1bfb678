namespace Duskwright.Plan.Parts;

/// <summary>Parts by kind: the built-in catalogue is one such list, a maker's own parts another.</summary>
public sealed record PartList
{
    /// <summary>Lamps.</summary>
    public ItemList<LampPart> Lamps { get; init; } = [];

    /// <summary>Cells, adaptors and power banks.</summary>
    public ItemList<SupplyPart> Supplies { get; init; } = [];

    /// <summary>Wires.</summary>
    public ItemList<WirePart> Wires { get; init; } = [];

    /// <summary>Fuses.</summary>
    public ItemList<FusePart> Fuses { get; init; } = [];

    /// <summary>Everything bought that the circuit does not see: holders, switches, strips, sleeves.</summary>
    public ItemList<SundryPart> Sundries { get; init; } = [];
}
