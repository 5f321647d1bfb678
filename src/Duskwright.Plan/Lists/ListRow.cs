using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Lists;

/// <summary>What one line of a list says of a building.</summary>
internal sealed record ListRow
{
    public string Name { get; init; } = "";

    public int? Leds { get; init; }

    public string? Led { get; init; }

    public Length? Distance { get; init; }

    public int? Storeys { get; init; }

    public Length? Width { get; init; }

    public Length? Depth { get; init; }

    public int? Windows { get; init; }

    public ResistorChoice? Resistor { get; init; }

    public string? SwitchGroup { get; init; }

    public BuildingState State { get; init; }

    public string? Note { get; init; }
}
