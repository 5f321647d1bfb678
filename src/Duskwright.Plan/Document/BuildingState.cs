namespace Duskwright.Plan.Document;

/// <summary>How far a building is built. What is fixed cannot be reached again and is a given for every proposal.</summary>
public enum BuildingState
{
    /// <summary>Only intended.</summary>
    Idea,

    /// <summary>Walls stand; no lamp is in yet.</summary>
    Shell,

    /// <summary>Lamps are in; the roof can still come off.</summary>
    Fitted,

    /// <summary>Roofed and glued down for good.</summary>
    Fixed,
}
