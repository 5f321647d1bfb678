using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Document;

/// <summary>The maker's usual parts and rules of wiring, used wherever a building says nothing else.</summary>
public sealed record WiringChoices
{
    /// <summary>The usual lamp: a part's id.</summary>
    public string? Led { get; init; }

    /// <summary>The usual resistor.</summary>
    public ResistorChoice? Resistor { get; init; }

    /// <summary>The current wished for in each lamp where the tool chooses the resistor.</summary>
    public Current? LampCurrent { get; init; }

    /// <summary>The usual wire of a pair: a part's id.</summary>
    public string? Wire { get; init; }

    /// <summary>The usual wire of a lamp's own leads: a part's id.</summary>
    public string? TailWire { get; init; }

    /// <summary>The usual length of a lamp's own leads.</summary>
    public Length? TailLength { get; init; }

    /// <summary>Added to every pair for joining and a service loop.</summary>
    public Length? Slack { get; init; }

    /// <summary>How many times longer a pair is than the straight distance, where no route is known.</summary>
    public double? DetourFactor { get; init; }

    /// <summary>Resistance of one joint or screw terminal.</summary>
    public Resistance? JointResistance { get; init; }

    /// <summary>Share of each part bought to spare, 0 to 1.</summary>
    public double? SpareShare { get; init; }

    /// <summary>The wire of the common return from the switches' terminal strip to the packs; none means so short that it does not count.</summary>
    public string? ReturnWire { get; init; }

    /// <summary>Length of that common return.</summary>
    public Length? ReturnLength { get; init; }
}
