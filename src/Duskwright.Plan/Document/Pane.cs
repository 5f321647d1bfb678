namespace Duskwright.Plan.Document;

/// <summary>What a window is glazed with.</summary>
public sealed record Pane
{
    /// <summary>The material.</summary>
    public PaneMaterial Material { get; init; }

    /// <summary>Its tint.</summary>
    public PaneTint Tint { get; init; }

    /// <summary>Whether glazing bars divide it.</summary>
    public bool Bars { get; init; }
}

/// <summary>Materials of panes.</summary>
public enum PaneMaterial
{
    /// <summary>Clear sheet.</summary>
    Clear,

    /// <summary>Sheet frosted on both faces.</summary>
    Frosted,

    /// <summary>Tracing paper.</summary>
    Tracing,

    /// <summary>No pane: an open doorway or vent.</summary>
    Open,
}

/// <summary>Tints of panes.</summary>
public enum PaneTint
{
    /// <summary>None.</summary>
    None,

    /// <summary>Amber, as of old glass or varnish.</summary>
    Amber,

    /// <summary>Red.</summary>
    Red,

    /// <summary>Green.</summary>
    Green,

    /// <summary>Blue.</summary>
    Blue,
}
