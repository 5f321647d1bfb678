using Duskwright.Study;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>The town at night in the margin: how to photograph it, what flickers, how long its lamps live.</summary>
public partial class TownAtNight
{
    [Parameter, EditorRequired]
    public TownStudy Study { get; set; } = default!;
}
