using Duskwright.Study.Figures;
using Duskwright.Towns;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>A number that can be asked why: opened, it shows its formula, its inputs (each again to be asked), its source and how sure it is.</summary>
public partial class Why
{
    private bool _open;

    [Inject]
    private OpenTown Open { get; set; } = default!;

    [Parameter, EditorRequired]
    public Figure Figure { get; set; } = default!;
}
