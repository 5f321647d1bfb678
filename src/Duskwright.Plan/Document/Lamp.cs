using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Document;

/// <summary>Any light source placed at a point.</summary>
public sealed record Lamp
{
    /// <summary>A short name within the building, L1 to Ln where nothing is said.</summary>
    public string? Name { get; init; }

    /// <summary>The part: its id, or <see cref="PartId.Unknown"/>; the building's where nothing is said.</summary>
    public string? Led { get; init; }

    /// <summary>The resistor in its lead; the building's where nothing is said.</summary>
    public ResistorChoice? Resistor { get; init; }

    /// <summary>The switch group that lights it; the building's where nothing is said.</summary>
    public string? SwitchGroup { get; init; }

    /// <summary>How far behind the pane it sits.</summary>
    public Length? BehindPane { get; init; }

    /// <summary>From the left inner wall of the room.</summary>
    public Length? FromLeft { get; init; }

    /// <summary>Above the floor of the storey.</summary>
    public Length? AboveFloor { get; init; }

    /// <summary>Whether it points at the pane, or at a wall or ceiling.</summary>
    public LampAim Aim { get; init; }
}

/// <summary>Where a lamp points.</summary>
public enum LampAim
{
    /// <summary>Away from the pane: at the back wall or the ceiling.</summary>
    Away,

    /// <summary>At the pane.</summary>
    AtPane,
}
