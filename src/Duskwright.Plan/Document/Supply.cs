namespace Duskwright.Plan.Document;

/// <summary>Anything that feeds lamps: a pack of cells, an adaptor, a power bank.</summary>
public sealed record Supply
{
    /// <summary>How the supply is referred to: "1".</summary>
    public required string Id { get; init; }

    /// <summary>What the maker calls it: quay west.</summary>
    public string? Name { get; init; }

    /// <summary>The cell or supply part: its id.</summary>
    public required string Part { get; init; }

    /// <summary>Cells in a row; 1 for an adaptor.</summary>
    public int Series { get; init; } = 1;

    /// <summary>Rows side by side.</summary>
    public int Parallel { get; init; } = 1;

    /// <summary>Share of its charge that is left at the start of the show, 0 to 1.</summary>
    public double ChargeLeft { get; init; } = 1;

    /// <summary>The fuse at the pack: a part's id; none where nothing is said.</summary>
    public string? Fuse { get; init; }
}
