using Duskwright.Plan;

namespace Duskwright.Book.Drawings;

/// <summary>One mark of a drawing; coordinates in the drawing's units, x to the right, y down.</summary>
public abstract record Mark;

/// <summary>A line or an area.</summary>
/// <param name="Path">Its outline as path data of SVG 2, chapter 9; made by <see cref="Trace"/>.</param>
/// <param name="Ink">How it is drawn.</param>
public sealed record Stroke(string Path, Ink Ink) : Mark
{
    /// <summary>How lit it is, 0 dark to 1 as fresh; counts only where the ink is <see cref="Tone.Lit"/>.</summary>
    public double Lit { get; init; } = 1;

    /// <summary>Line width in the drawing's units, for things that have a width of their own; none for the ink's weight.</summary>
    public double? Width { get; init; }
}

/// <summary>Words.</summary>
/// <param name="X">Where they are anchored.</param>
/// <param name="Y">Their base line.</param>
/// <param name="Text">The words.</param>
/// <param name="Hand">How they are lettered.</param>
/// <param name="Anchor">Which end X is.</param>
public sealed record Lettering(double X, double Y, string Text, Hand Hand, Anchor Anchor = Anchor.Start) : Mark;

/// <summary>Light spreading from a point, by night only.</summary>
/// <param name="X">Middle.</param>
/// <param name="Y">Middle.</param>
/// <param name="Radius">How far it reaches.</param>
/// <param name="Strength">0 to 1.</param>
public sealed record Halo(double X, double Y, double Radius, double Strength) : Mark;

/// <summary>A picture that lies faint under a drawing on the screen; paper leaves it out.</summary>
/// <param name="X">Its left edge.</param>
/// <param name="Y">Its upper edge.</param>
/// <param name="Width">Its breadth.</param>
/// <param name="Height">Its height.</param>
/// <param name="Address">Where the page finds it.</param>
public sealed record Underlay(double X, double Y, double Width, double Height, string Address) : Mark;

/// <summary>Marks drawn about a place of their own.</summary>
/// <param name="X">Where their origin lies.</param>
/// <param name="Y">Where their origin lies.</param>
/// <param name="Turn">Turned by, degrees, clockwise as seen.</param>
/// <param name="Marks">The marks.</param>
public sealed record Placed(double X, double Y, double Turn, ItemList<Mark> Marks) : Mark;

/// <summary>Which end of words is anchored.</summary>
public enum Anchor
{
    /// <summary>The first letter.</summary>
    Start,

    /// <summary>The middle.</summary>
    Middle,

    /// <summary>The last letter.</summary>
    End,
}
