using Duskwright.Book.Lists;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>A list as a table, cell by cell as in the files a maker takes away.</summary>
public partial class ListTable
{
    [Parameter, EditorRequired]
    public TownList List { get; set; } = default!;
}
