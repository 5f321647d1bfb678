namespace Duskwright.Study.Wiring;

/// <summary>Which end of the tolerances and unknowns a town is wired up at.</summary>
internal enum Corner
{
    /// <summary>Everything that lowers the current at once.</summary>
    Low,

    /// <summary>Everything as stated or usual.</summary>
    Typical,

    /// <summary>Everything that raises the current at once.</summary>
    High,
}
