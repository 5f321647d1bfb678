using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Document;

/// <summary>A roof.</summary>
public sealed record Roof
{
    /// <summary>Its shape.</summary>
    public RoofShape Shape { get; init; }

    /// <summary>From the eaves to the ridge.</summary>
    public Length? Rise { get; init; }

    /// <summary>Whether it lifts off.</summary>
    public bool LiftsOff { get; init; }

    /// <summary>What it is covered with, for the drawing.</summary>
    public RoofCovering Covering { get; init; }
}

/// <summary>Shapes of roofs.</summary>
public enum RoofShape
{
    /// <summary>Two slopes and a ridge along the front.</summary>
    Gable,

    /// <summary>Four slopes.</summary>
    Hip,

    /// <summary>A cone or pyramid.</summary>
    Point,

    /// <summary>Flat.</summary>
    Flat,
}

/// <summary>Coverings of roofs.</summary>
public enum RoofCovering
{
    /// <summary>Slate.</summary>
    Slate,

    /// <summary>Thatch or shingle.</summary>
    Thatch,

    /// <summary>Tile.</summary>
    Tile,
}
