namespace Duskwright.Circuits.Supplies;

/// <summary>What ends the life of a pack.</summary>
public enum EndCause
{
    /// <summary>The worst lamp looks too dim.</summary>
    LampDim,

    /// <summary>The cells have come to their end voltage.</summary>
    EndVoltage,
}
