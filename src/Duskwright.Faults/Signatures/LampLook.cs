namespace Duskwright.Faults.Signatures;

/// <summary>How a lamp looks beside how it should.</summary>
public enum LampLook
{
    /// <summary>It gives at least half of the light that it should.</summary>
    Lit,

    /// <summary>It gives less than half of the light that it should.</summary>
    Dim,

    /// <summary>It gives less than a hundredth of the light that it should.</summary>
    Dark,
}
