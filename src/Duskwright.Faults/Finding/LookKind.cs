namespace Duskwright.Faults.Finding;

/// <summary>A kind of look.</summary>
public enum LookKind
{
    /// <summary>See whether a lamp is lit, dim or dark.</summary>
    SeeLamp,

    /// <summary>Read the current of a pack with a meter.</summary>
    ReadPack,

    /// <summary>Take a pair off the bank, power off, and read the resistance between its ends with a meter.</summary>
    ReadPairOhms,
}
