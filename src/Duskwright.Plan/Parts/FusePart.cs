using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Parts;

/// <summary>A kind of fuse.</summary>
public sealed record FusePart
{
    /// <summary>How the part is referred to.</summary>
    public required string Id { get; init; }

    /// <summary>What it is, in plain words.</summary>
    public required string Name { get; init; }

    /// <summary>Whether it resets itself.</summary>
    public bool Resettable { get; init; }

    /// <summary>The current it carries for ever.</summary>
    public required Current Hold { get; init; }

    /// <summary>The current at which it is sure to open.</summary>
    public required Current Trip { get; init; }

    /// <summary>Its least resistance when new.</summary>
    public required Resistance LeastResistance { get; init; }

    /// <summary>Its most resistance, for a resettable fuse one hour after it tripped.</summary>
    public required Resistance MostResistance { get; init; }

    /// <summary>The most voltage.</summary>
    public Voltage? MostVoltage { get; init; }

    /// <summary>Price of one.</summary>
    public Price? Price { get; init; }

    /// <summary>Where the figures come from.</summary>
    public required string Source { get; init; }

    /// <summary>How sure they are.</summary>
    public Certainty Certainty { get; init; }
}
