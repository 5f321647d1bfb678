using Duskwright.Plan;

namespace Duskwright.Book.Lists;

/// <summary>One of a town's lists as it stands on the screen and in the files a maker takes away.</summary>
/// <param name="Id">A short word for files and addresses: <c>cut</c>.</param>
/// <param name="Title">What the maker calls it: "Cut list".</param>
/// <param name="Headings">The columns' headings, no two alike.</param>
/// <param name="Rows">The rows, each with a cell for each heading.</param>
public sealed record TownList(string Id, string Title, ItemList<string> Headings, ItemList<ItemList<ListCell>> Rows)
{
    /// <summary>The name of its file: <c>cut-list.csv</c>.</summary>
    public string FileName => $"{Id}-list.csv";
}
