using System.Globalization;
using Duskwright.Book.Drawings;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Pictures;

/// <summary>A drawing on the screen, the same as on paper; what stands for a thing can be chosen by pointer or key.</summary>
public partial class DrawnPicture
{
    // Clip paths are found by id, and two pictures may share a page.
    private readonly string _id = $"d{Guid.NewGuid():N}";

    [Parameter, EditorRequired]
    public Drawing Drawing { get; set; } = default!;

    /// <summary>Classes for the stylesheet; "dusk" where lamps glow.</summary>
    [Parameter]
    public string Class { get; set; } = "";

    /// <summary>Hears the key of what is chosen; without a hearer nothing can be.</summary>
    [Parameter]
    public EventCallback<string> Picked { get; set; }

    /// <summary>The id of what tells how it is worked by keys; none where nothing can be.</summary>
    [Parameter]
    public string? DescribedBy { get; set; }

    /// <summary>Tells whether what has a key may be moved by hand; the page's script does the moving.</summary>
    [Parameter]
    public Func<string, bool>? Movable { get; set; }

    private string ViewBox => $"{N(Drawing.Left)} {N(Drawing.Top)} {N(Drawing.Width)} {N(Drawing.Height)}";

    private static string N(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
