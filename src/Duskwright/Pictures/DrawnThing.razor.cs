using Duskwright.Book.Drawings;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;

namespace Duskwright.Pictures;

/// <summary>What stands for a thing in a drawing. It is drawn anew only when it looks otherwise than before, so that a change of one house leaves hundreds alone.</summary>
public partial class DrawnThing
{
    private string _marks = "";
    private (Part? Part, bool Movable) _drawn;
    private bool _changed;

    [Parameter, EditorRequired]
    public Part Part { get; set; } = default!;

    /// <summary>Whether it may be moved by hand.</summary>
    [Parameter]
    public bool Movable { get; set; }

    /// <summary>Hears its key when it is chosen.</summary>
    [Parameter]
    public EventCallback<string> Picked { get; set; }

    protected override void OnParametersSet()
    {
        _changed = (Part, Movable) != _drawn;
        if (_changed)
        {
            (_marks, _drawn) = (SvgFragment.Of(Part), (Part, Movable));
        }
    }

    protected override bool ShouldRender() => _changed;

    private Task Press() => Picked.InvokeAsync(Part.Key!);

    private Task Pressed(KeyboardEventArgs e) => e.Key is "Enter" or " " ? Press() : Task.CompletedTask;
}
