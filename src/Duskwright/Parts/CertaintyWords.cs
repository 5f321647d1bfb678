using Duskwright.Plan.Parts;

namespace Duskwright.Parts;

/// <summary>How sure a number is, in words.</summary>
public static class CertaintyWords
{
    /// <summary>The word.</summary>
    /// <param name="certainty">How sure.</param>
    /// <returns>One word with a stop.</returns>
    public static string Of(Certainty certainty) => certainty switch
    {
        Certainty.Measured => "Measured.",
        Certainty.Catalogue => "Catalogue.",
        Certainty.Typical => "Typical.",
        Certainty.Assumed => "Assumed.",
        _ => "Computed.",
    };
}
