namespace Duskwright.Plan.Document;

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

    /// <summary>A step of the work was done.</summary>
    StepDone,

    /// <summary>A test was made.</summary>
    Test,

    /// <summary>The lamps of a supply burnt for a while.</summary>
    Burnt,

    /// <summary>The cells were taken out, for storage.</summary>
    CellsOut,

    /// <summary>An earlier entry was wrong and counts no more.</summary>
    Withdrawn,
}
