namespace Duskwright.Book.Sheets;

/// <summary>One sheet of the book, of as many pages as it needs.</summary>
/// <param name="Id">A short name that stays the same from printing to printing: <c>cut</c>, <c>house:chandlery</c>.</param>
/// <param name="Title">What the maker calls it.</param>
/// <param name="Draw">Draws it; draws nothing where there is nothing to show.</param>
internal sealed record BookSheet(string Id, Func<string> Title, Action<PageFlow> Draw)
{
    /// <summary>Key of the building it speaks of; none for the town's own.</summary>
    internal string? Building { get; init; }
}
