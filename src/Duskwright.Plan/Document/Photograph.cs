using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Document;

/// <summary>A photograph or sketch of the board, seen from above, that lies to scale under the drawing.</summary>
public sealed record Photograph
{
    /// <summary>The id of a picture in the working file, 64 hexadecimal digits; the exchange form names it and does not carry it.</summary>
    public required string Picture { get; init; }

    /// <summary>Where its front left corner lies; it may lie off the board, where the picture shows more than the board.</summary>
    public required Point At { get; init; }

    /// <summary>How much of the board its breadth shows.</summary>
    public required Length Width { get; init; }

    /// <summary>How much of the board its height shows.</summary>
    public required Length Depth { get; init; }

    /// <summary>Whether it is kept and not shown.</summary>
    public bool Hidden { get; init; }
}
