using Duskwright.Circuits.Lamps;
using Duskwright.Circuits.Networks;

namespace Duskwright.Circuits.Solving;

/// <summary>How the solver treats the part at a place.</summary>
internal enum PartKind : byte
{
    /// <summary>A resistance.</summary>
    Wire,

    /// <summary>A plain LED, which is solved in closed form with all resistance in its chain. A resistance may stand in its place.</summary>
    Led,

    /// <summary>Anything else, straightened anew at every step.</summary>
    Other,
}

/// <summary>Sorts parts by how the solver treats them.</summary>
internal static class PartKinds
{
    internal static PartKind Of(Element element) => element switch
    {
        ResistorElement => PartKind.Wire,
        LampElement { Law: LedLaw } => PartKind.Led,
        _ => PartKind.Other,
    };

    /// <summary>Whether the solver can treat an element like the kind of part its plan was made for.</summary>
    internal static bool MayStandAt(Element element, PartKind kind) => kind switch
    {
        PartKind.Wire => element is ResistorElement,
        PartKind.Led => element is ResistorElement or LampElement { Law: LedLaw },
        _ => true,
    };
}
