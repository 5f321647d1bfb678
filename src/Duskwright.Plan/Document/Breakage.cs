namespace Duskwright.Plan.Document;

/// <summary>What breaks oftener or more seldom in this maker's work than in others'.</summary>
public sealed record Breakage
{
    /// <summary>What breaks.</summary>
    public required Breaks What { get; init; }

    /// <summary>How often, against the usual.</summary>
    public required HowOften How { get; init; }
}

/// <summary>What can break.</summary>
public enum Breaks
{
    /// <summary>A joint of a pair comes apart.</summary>
    PairJoint,

    /// <summary>The two wires of a pair touch.</summary>
    PairShort,

    /// <summary>A pair is joined the wrong way round.</summary>
    PairReversed,

    /// <summary>A wire of a pair is nicked, or a joint of it has gone bad.</summary>
    PairNicked,

    /// <summary>A joint of one lamp comes apart.</summary>
    LampJoint,

    /// <summary>The leads of one lamp touch.</summary>
    LampShort,

    /// <summary>One lamp is the wrong way round.</summary>
    LampReversed,

    /// <summary>One lamp is dead.</summary>
    LampDead,

    /// <summary>One cell is flat before its time.</summary>
    CellFlat,
}

/// <summary>How often something breaks, against the usual.</summary>
public enum HowOften
{
    /// <summary>More seldom.</summary>
    Seldom,

    /// <summary>Oftener.</summary>
    Often,
}
