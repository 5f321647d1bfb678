using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Parts;

/// <summary>A kind of wire: one conductor.</summary>
public sealed record WirePart
{
    /// <summary>How the part is referred to.</summary>
    public required string Id { get; init; }

    /// <summary>What it is, in plain words.</summary>
    public required string Name { get; init; }

    /// <summary>Diameter of the copper, of a solid wire of the same section for a stranded one.</summary>
    public required Length CopperDiameter { get; init; }

    /// <summary>Resistance of a metre of one conductor at 20 °C.</summary>
    public required Resistance PerMetre { get; init; }

    /// <summary>Outer diameter with its insulation.</summary>
    public required Length OuterDiameter { get; init; }

    /// <summary>Price of a metre of one conductor.</summary>
    public Price? PricePerMetre { get; init; }

    /// <summary>Metres sold together.</summary>
    public double? SoldByMetres { get; init; }

    /// <summary>Where the figures come from.</summary>
    public required string Source { get; init; }

    /// <summary>How sure they are.</summary>
    public Certainty Certainty { get; init; }
}
