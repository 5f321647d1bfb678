namespace Duskwright.Plan.Document;

/// <summary>What one lamp was seen to do.</summary>
public sealed record LampSeen
{
    /// <summary>The lamp's name within its building.</summary>
    public required string Lamp { get; init; }

    /// <summary>What it did.</summary>
    public required SeenAs As { get; init; }
}

/// <summary>What a lamp can be seen to do.</summary>
public enum SeenAs
{
    /// <summary>Lit as it should be.</summary>
    Lit,

    /// <summary>Lit, and dimmer than its neighbours.</summary>
    Dim,

    /// <summary>Dark.</summary>
    Dark,

    /// <summary>It goes on and off.</summary>
    Flickers,
}
