namespace Duskwright.Plan.Parts;

/// <summary>How sure a figure is.</summary>
public enum Certainty
{
    /// <summary>Usual for such parts; may differ from yours.</summary>
    Typical,

    /// <summary>From a published table or standard.</summary>
    Catalogue,

    /// <summary>Measured by the maker.</summary>
    Measured,

    /// <summary>Computed from other figures.</summary>
    Computed,

    /// <summary>Assumed because nothing was said.</summary>
    Assumed,
}
