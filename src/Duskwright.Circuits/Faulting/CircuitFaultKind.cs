namespace Duskwright.Circuits.Faulting;

/// <summary>What can be wrong at one place of a circuit.</summary>
public enum CircuitFaultKind
{
    /// <summary>A joint of a wire is open.</summary>
    JointOpen,

    /// <summary>A wire hangs by a strand, or a joint has gone bad: its resistance has risen.</summary>
    WireNicked,

    /// <summary>The two wires of a pair are swapped.</summary>
    PairSwapped,

    /// <summary>The two wires of a pair touch at its far end.</summary>
    PairShorted,

    /// <summary>A lamp, or a joint in its own branch, is open.</summary>
    LampOpen,

    /// <summary>The leads of a lamp touch, behind its resistor where it has one.</summary>
    LampShorted,

    /// <summary>A lamp is the wrong way round.</summary>
    LampReversed,

    /// <summary>One cell of a pack is flat.</summary>
    CellFlat,
}
