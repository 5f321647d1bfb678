using Duskwright.Plan;

namespace Duskwright.Book.Drawings;

/// <summary>A drawing, the same on screen and on paper: measured and laid out, ready for any writer.</summary>
/// <param name="Title">What it shows, in a sentence a screen reader speaks.</param>
/// <param name="Left">Left edge of its frame, units.</param>
/// <param name="Top">Top edge.</param>
/// <param name="Width">Width of its frame.</param>
/// <param name="Height">Height of its frame.</param>
/// <param name="Pen">Units to a millimetre of paper: line weights and lettering are multiplied by it. 1 for drawings at true size.</param>
/// <param name="Parts">What it is made of, the farthest first.</param>
public sealed record Drawing(string Title, double Left, double Top, double Width, double Height, double Pen, ItemList<Part> Parts);

/// <summary>Marks that belong to one thing.</summary>
/// <param name="Marks">The marks.</param>
public sealed record Part(ItemList<Mark> Marks)
{
    /// <summary>The thing it stands for, where it can be chosen.</summary>
    public string? Key { get; init; }

    /// <summary>The thing in words.</summary>
    public string? Words { get; init; }

    /// <summary>Whether it is chosen.</summary>
    public bool Chosen { get; init; }

    /// <summary>Path data that the marks are cut to; none to leave them whole.</summary>
    public string? Clip { get; init; }
}
