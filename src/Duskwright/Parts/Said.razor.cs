using Duskwright.Study.Figures;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>A sentence with its numbers as chips.</summary>
public partial class Said
{
    [Parameter, EditorRequired]
    public string Words { get; set; } = "";

    [Parameter, EditorRequired]
    public IReadOnlyList<Figure> Figures { get; set; } = [];
}
