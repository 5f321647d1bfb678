using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Duskwright.Pictures;

/// <summary>The script that moves what the hand moves over a drawing, and tells where it was put down.</summary>
/// <param name="moved">Hears what was moved: its key, to the right and up in the drawing's units, and turned by, degrees.</param>
/// <param name="removed">Hears the key of what is to be taken away.</param>
public sealed class HandScript(Func<string, double, double, double, Task> moved, Func<string, Task> removed) : IAsyncDisposable
{
    private IJSObjectReference? _script;
    private DotNetObjectReference<HandScript>? _self;

    /// <summary>Hears the keys of what is to be chosen beside what is chosen already.</summary>
    public Func<string[], Task> OnFramed { get; init; } = _ => Task.CompletedTask;

    /// <summary>Hears where a point was put down, in the drawing's units.</summary>
    public Func<double, double, Task> OnPlaced { get; init; } = (_, _) => Task.CompletedTask;

    /// <summary>Begins to listen, once.</summary>
    /// <param name="js">The page's scripts.</param>
    /// <param name="place">What holds the drawing.</param>
    /// <param name="coarse">How far an arrow key moves, units.</param>
    /// <param name="fine">How far it moves with Shift, units.</param>
    /// <param name="zoomed">Whether the drawing can be brought nearer.</param>
    /// <returns>When it listens.</returns>
    public async Task MountAsync(IJSRuntime js, ElementReference place, double coarse, double fine, bool zoomed = false)
    {
        if (_self is null)
        {
            _self = DotNetObjectReference.Create(this);
            _script = await js.InvokeAsync<IJSObjectReference>("import", "./board.js");
            await _script.InvokeVoidAsync("mount", place, _self, coarse, fine);
            if (zoomed)
            {
                await using var zoom = await js.InvokeAsync<IJSObjectReference>("import", "./zoom.js");
                await zoom.InvokeVoidAsync("zoomable", place);
            }
        }
    }

    /// <summary>Called by the script when something has been put down, or moved by a key.</summary>
    /// <param name="key">Its key.</param>
    /// <param name="right">To the right, units.</param>
    /// <param name="up">Up, or towards the back, units.</param>
    /// <param name="turn">Turned by, degrees, counter-clockwise.</param>
    /// <returns>When it has been heard.</returns>
    [JSInvokable]
    public Task Moved(string key, double right, double up, double turn) => moved(key, right, up, turn);

    /// <summary>Called by the script when something is to be taken away.</summary>
    /// <param name="key">Its key.</param>
    /// <returns>When it has been heard.</returns>
    [JSInvokable]
    public Task Removed(string key) => removed(key);

    /// <summary>Called by the script when something has been chosen with Shift, or framed.</summary>
    /// <param name="keys">Its keys.</param>
    /// <returns>When it has been heard.</returns>
    [JSInvokable]
    public Task Framed(string[] keys) => OnFramed(keys);

    /// <summary>Called by the script when a point has been put down.</summary>
    /// <param name="x">From the left, units.</param>
    /// <param name="y">Down, units.</param>
    /// <returns>When it has been heard.</returns>
    [JSInvokable]
    public Task Placed(double x, double y) => OnPlaced(x, y);

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        _self?.Dispose();
        try
        {
            if (_script is not null)
            {
                await _script.DisposeAsync();
            }
        }
        catch (JSDisconnectedException)
        {
            // The page is gone, and its script with it.
        }
    }
}
