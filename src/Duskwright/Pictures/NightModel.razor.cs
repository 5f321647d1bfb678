using Duskwright.Book.Night;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Duskwright.Pictures;

/// <summary>The town at night in space; where the browser cannot draw that, what lies within is shown instead.</summary>
public sealed partial class NightModel : IAsyncDisposable
{
    private ElementReference _place;
    private IJSObjectReference? _script;
    private IJSObjectReference? _model;
    private DotNetObjectReference<NightModel>? _self;
    private object? _shown;
    private NightScene? _of;
    private int _version;

    [Parameter, EditorRequired]
    public RenderFragment ChildContent { get; set; } = default!;

    /// <summary>The scene; another one makes the page read it anew.</summary>
    [Parameter, EditorRequired]
    public NightScene Scene { get; set; } = default!;

    [Parameter]
    public double Hour { get; set; }

    [Parameter]
    public double Lux { get; set; }

    /// <summary>Switches that are off, with commas between.</summary>
    [Parameter]
    public string Off { get; set; } = "";

    /// <summary>Where one stands, by name.</summary>
    [Parameter]
    public string Eye { get; set; } = "";

    /// <summary>Whether it is shown as a photograph exposed for the windows.</summary>
    [Parameter]
    public bool Camera { get; set; }

    /// <summary>Key of the chosen building.</summary>
    [Parameter]
    public string? Building { get; set; }

    /// <summary>Hears what is pointed at: a building's key and the place of one of its panes in the scene, -1 for none.</summary>
    [Parameter]
    public EventCallback<(string Building, int Pane)> Chosen { get; set; }

    [Inject]
    private IJSRuntime Js { get; set; } = default!;

    /// <summary>Called by the script.</summary>
    /// <param name="building">A building's key.</param>
    /// <param name="pane">The place of a pane; -1 for none.</param>
    /// <returns>When it has been heard.</returns>
    [JSInvokable]
    public Task Picked(string building, int pane) => Chosen.InvokeAsync((building, pane));

    public async ValueTask DisposeAsync()
    {
        try
        {
            if (_model is not null)
            {
                await _model.InvokeVoidAsync("dispose");
                await _model.DisposeAsync();
            }

            if (_script is not null)
            {
                await _script.DisposeAsync();
            }
        }
        catch (JSDisconnectedException)
        {
            // The page is gone, and its script with it.
        }

        _self?.Dispose();
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
        {
            _script = await Js.InvokeAsync<IJSObjectReference>("import", "./night.js");
            _self = DotNetObjectReference.Create(this);
            _model = await _script.InvokeAsync<IJSObjectReference?>("mount", _place, _self);
        }

        if (!ReferenceEquals(Scene, _of))
        {
            (_of, _version) = (Scene, _version + 1);
        }

        var wished = new { Version = _version, Hour, Lux, Off, Eye, Camera, Building };
        if (_model is not null && !wished.Equals(_shown))
        {
            _shown = wished;
            await _model.InvokeVoidAsync("show", wished);
        }
    }
}
