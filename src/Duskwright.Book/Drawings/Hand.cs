namespace Duskwright.Book.Drawings;

/// <summary>How words in a drawing are lettered.</summary>
/// <param name="Name">A word of its own, unique among the hands.</param>
/// <param name="Face">The face.</param>
/// <param name="Size">Height of the em, mm on paper.</param>
/// <param name="Tone">Its tone.</param>
/// <param name="Behind">Tone of a halo that keeps it clear of lines; none for no halo.</param>
public sealed record Hand(string Name, FaceName Face, double Size, Tone Tone = Tone.Ink, Tone Behind = Tone.None);

/// <summary>The faces of print and screen.</summary>
public enum FaceName
{
    /// <summary>Fraunces 600, for names and headings.</summary>
    Speaks,

    /// <summary>Fraunces 500 italic, for what stands on a drawing in the maker's words.</summary>
    Murmurs,

    /// <summary>Inter 400, for everything else.</summary>
    Reports,

    /// <summary>Inter 600, for numbers and labels.</summary>
    Strong,
}
