using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Parts;

/// <summary>Something bought that the circuit does not see, or sees only as a contact: holder, switch, strip, sleeve, connector, resistor.</summary>
public sealed record SundryPart
{
    /// <summary>How the part is referred to.</summary>
    public required string Id { get; init; }

    /// <summary>What it is, in plain words.</summary>
    public required string Name { get; init; }

    /// <summary>What it is bought for.</summary>
    public required SundryUse Use { get; init; }

    /// <summary>Resistance of its contact, where current passes through it.</summary>
    public Resistance? ContactResistance { get; init; }

    /// <summary>Power it may give off, for a resistor.</summary>
    public Power? Rating { get; init; }

    /// <summary>Price of one pack.</summary>
    public Price? Price { get; init; }

    /// <summary>Pieces in a pack.</summary>
    public int SoldBy { get; init; } = 1;

    /// <summary>Where the figures come from.</summary>
    public required string Source { get; init; }

    /// <summary>How sure they are.</summary>
    public Certainty Certainty { get; init; }
}

/// <summary>What a sundry is bought for.</summary>
public enum SundryUse
{
    /// <summary>One in each lamp's lead.</summary>
    Resistor,

    /// <summary>One for each pack, for its cells.</summary>
    Holder,

    /// <summary>One for each switch group.</summary>
    Switch,

    /// <summary>Terminals at the bank.</summary>
    Terminal,

    /// <summary>Sleeves over joints.</summary>
    Sleeve,

    /// <summary>A plug and socket for what lifts off.</summary>
    Connector,

    /// <summary>Labels.</summary>
    Label,
}
