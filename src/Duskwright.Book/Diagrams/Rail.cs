namespace Duskwright.Book.Diagrams;

/// <summary>An upright conductor of a circuit diagram: one end of everything that hangs on it.</summary>
/// <param name="X">Where it stands, mm.</param>
/// <param name="Tag">What it is called where it goes on over a page: "+ of switch A".</param>
/// <param name="Positive">Whether it is on the plus side.</param>
/// <param name="At">The lines that meet it, by number; -1 for the way back along the top.</param>
internal sealed record Rail(double X, string Tag, bool Positive, IReadOnlyList<int> At)
{
    internal int First => At[0];

    internal int Last => At[^1];
}
