using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Study.Figures;

namespace Duskwright.Study.Results;

/// <summary>What one building holds and does.</summary>
public sealed record BuildingResult
{
    /// <summary>The building.</summary>
    public required Building Building { get; init; }

    /// <summary>Its place in the document, from 1.</summary>
    public required int Number { get; init; }

    /// <summary>Its code on labels, unique in the town: "CH".</summary>
    public required string Code { get; init; }

    /// <summary>Its lamps.</summary>
    public required ItemList<LampResult> Lamps { get; init; }

    /// <summary>Its panes with a lamp behind them, storey by storey, room by room; a room solved for its windows as described.</summary>
    public ItemList<PaneResult> Panes => PanesLater.Value;

    /// <summary>The supply that feeds it; none where it is not shared out, or where its lamps hang on several.</summary>
    public string? Supply { get; init; }

    /// <summary>The number of its circuit on every drawing; 0 where it is not shared out.</summary>
    public int Circuit { get; init; }

    /// <summary>Its current at the bank with all its lamps on, A.</summary>
    public Figure? Current { get; init; }

    /// <summary>The wire of its pair; a stand-in where it is not known.</summary>
    public required WirePart Wire { get; init; }

    /// <summary>Length of its pair, m.</summary>
    public required Figure PairLength { get; init; }

    /// <summary>Voltage lost in its pair and joints, V.</summary>
    public Figure? PairDrop { get; init; }

    /// <summary>What to touch to what and what should light, in order of the work.</summary>
    public ItemList<TestPoint> Tests => TestsLater.Value;

    /// <summary>A town is drawn and answers to the hand before the light of its rooms is worked out.</summary>
    internal Later<ItemList<PaneResult>> PanesLater { get; init; } = new(() => []);

    /// <summary>They are asked for at the bench and on paper, and not by what follows the hand.</summary>
    internal Later<ItemList<TestPoint>> TestsLater { get; init; } = new(() => []);
}
