using Duskwright.Book.Lists;

namespace Duskwright.Places;

/// <summary>The book on the screen: labels, and every list as it is printed and taken away.</summary>
public partial class BookPlace
{
    // Labels stand above as labels; tests are read at the bench.
    private static IEnumerable<TownList> Shown(IEnumerable<TownList> lists) => lists.Where(l => l.Id is not ("label" or "test"));
}
