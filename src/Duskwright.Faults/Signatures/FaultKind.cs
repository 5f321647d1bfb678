namespace Duskwright.Faults.Signatures;

/// <summary>What can be wrong at one place.</summary>
public enum FaultKind
{
    /// <summary>A joint of a pair is open, in either conductor.</summary>
    PairOpen,

    /// <summary>The two wires of a pair touch at its far end.</summary>
    PairShorted,

    /// <summary>A pair is joined the wrong way round.</summary>
    PairReversed,

    /// <summary>A wire of a pair hangs by a strand, or a joint of it has gone bad, so that it lets too little through.</summary>
    PairNicked,

    /// <summary>A joint in one lamp's own branch is open.</summary>
    LampJointOpen,

    /// <summary>The leads of one lamp touch, behind its resistor where it has one.</summary>
    LampShorted,

    /// <summary>One lamp is the wrong way round.</summary>
    LampReversed,

    /// <summary>One lamp is dead; it looks like an open joint and is rarer.</summary>
    LampDead,

    /// <summary>One cell of a pack is flat.</summary>
    CellFlat,
}
