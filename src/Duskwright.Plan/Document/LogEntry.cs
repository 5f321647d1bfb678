using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Document;

/// <summary>Something done, seen or read at the bench.</summary>
public sealed record LogEntry
{
    /// <summary>The day.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>What it was.</summary>
    public required LogKind Kind { get; init; }

    /// <summary>The building it concerns; none means the town or a supply.</summary>
    public string? Building { get; init; }

    /// <summary>The supply it concerns.</summary>
    public string? Supply { get; init; }

    /// <summary>The current read.</summary>
    public Current? Current { get; init; }

    /// <summary>The voltage read.</summary>
    public Voltage? Voltage { get; init; }

    /// <summary>How many lamps were seen lit.</summary>
    public int? Lit { get; init; }

    /// <summary>What the maker wrote.</summary>
    public string? Note { get; init; }
}

/// <summary>Kinds of log entries.</summary>
public enum LogKind
{
    /// <summary>A note.</summary>
    Note,

    /// <summary>A reading or a look at what lights.</summary>
    Reading,

    /// <summary>Something was closed for good.</summary>
    Seal,

    /// <summary>A fault was seen.</summary>
    Fault,

    /// <summary>Cells were changed.</summary>
    CellsChanged,
}
