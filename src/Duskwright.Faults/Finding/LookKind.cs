namespace Duskwright.Faults.Finding;

/// <summary>A kind of look.</summary>
public enum LookKind
{
    /// <summary>See whether a lamp is lit, dim or dark.</summary>
    SeeLamp,

    /// <summary>Read the current of a pack with a meter.</summary>
    ReadPack,
}
