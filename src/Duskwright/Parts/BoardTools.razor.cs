using System.Globalization;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;
using Duskwright.Towns;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>What a hand on the board may do beside dragging: come nearer, draw point by point, measure, and choose what positions snap to.</summary>
public partial class BoardTools
{
    private Length? _right;
    private Length? _back;
    private LengthField? _first;
    private bool _missing;
    private ElementReference _form;
    private DraftKind? _drawn;

    /// <summary>Whether holes, wireways and the bank can be chosen.</summary>
    [Parameter]
    public bool Ground { get; set; }

    [Parameter]
    public EventCallback<bool> GroundChanged { get; set; }

    /// <summary>What positions are rounded to.</summary>
    [Parameter]
    public Length Snap { get; set; }

    [Parameter]
    public EventCallback<Length> SnapChanged { get; set; }

    /// <summary>Whether a photograph lies under the board.</summary>
    [Parameter]
    public bool Photographed { get; set; }

    /// <summary>What is being drawn; none where nothing is.</summary>
    [Parameter]
    public BoardDraft? Draft { get; set; }

    [Parameter]
    public EventCallback<BoardDraft?> DraftChanged { get; set; }

    /// <summary>Hears a point that was typed.</summary>
    [Parameter]
    public EventCallback<Point> Put { get; set; }

    /// <summary>Hears that all points are put.</summary>
    [Parameter]
    public EventCallback Done { get; set; }

    [Inject]
    private OpenTown Open { get; set; } = default!;

    // Whoever begins to draw, perhaps far down in the margin, is brought to the board; where the focus goes from there the page keeps (focus.js).
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        var was = _drawn;
        _drawn = Draft?.Kind;
        if (_drawn is not null && _drawn != was)
        {
            await _form.FocusAsync(preventScroll: true);
        }
    }

    private Task Snapped(ChangeEventArgs e) => SnapChanged.InvokeAsync(Open.Lengths.Steps[int.Parse(e.Value?.ToString() ?? "0", CultureInfo.InvariantCulture)]);

    private async Task Begin(DraftKind kind)
    {
        if (!Ground && kind is not (DraftKind.House or DraftKind.Measure or DraftKind.Scale))
        {
            await GroundChanged.InvokeAsync(true);
        }

        await DraftChanged.InvokeAsync(Draft?.Kind == kind ? null : new BoardDraft(kind, []));
    }

    private async Task PutTyped()
    {
        if (Draft is not { TakesMore: true })
        {
            return;
        }

        _missing = _right is null || _back is null;
        if (_right is { } right && _back is { } back)
        {
            (_right, _back) = (null, null);
            await Put.InvokeAsync(new Point { X = right, Y = back });
        }

        // The next point can be typed at once.
        if (_first is { } field && Draft is { TakesMore: true })
        {
            await field.FocusAsync();
        }
    }
}
