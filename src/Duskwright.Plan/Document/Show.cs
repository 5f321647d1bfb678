using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Document;

/// <summary>When, how long and in what light the town is shown, and what counts as dim.</summary>
public sealed record Show
{
    /// <summary>Hours the lamps burn in a day.</summary>
    public Duration HoursPerDay { get; init; } = Duration.FromHours(8);

    /// <summary>Days without changing cells.</summary>
    public int Days { get; init; } = 1;

    /// <summary>Light in the room on the facades.</summary>
    public Illuminance? RoomIlluminance { get; init; }

    /// <summary>Temperature of the room.</summary>
    public double? RoomTemperatureC { get; init; }

    /// <summary>Where people stand to look.</summary>
    public ItemList<ViewingPosition> ViewingPositions { get; init; } = [];

    /// <summary>Share of its own fresh light at which a window counts as dim.</summary>
    public double DimShare { get; init; } = 0.5;

    /// <summary>Share of its own fresh light at which a window counts as spoiled.</summary>
    public double SpoiledShare { get; init; } = 1.0 / 3.0;

    /// <summary>Difference of lightness L* at which neighbouring windows differ visibly.</summary>
    public double VisibleStep { get; init; } = 5;
}
