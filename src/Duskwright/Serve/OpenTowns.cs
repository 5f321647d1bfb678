using Duskwright.Plan;
using Duskwright.Plan.Checks;
using Duskwright.Towns;

namespace Duskwright.Serve;

/// <summary>The towns that are open in this process, each at an address of its own: one file has one open town, which all its tabs share.</summary>
/// <param name="options">Arguments and paths of the host.</param>
/// <param name="home">The folder of the maker's towns; none to hold what has no file in memory.</param>
/// <remarks>An address is a port of this machine, so that no page, form or cache of one town can be taken for another's.</remarks>
public sealed class OpenTowns(WebApplicationOptions options, string? home = null) : IAsyncDisposable
{
    private readonly SemaphoreSlim _oneAtATime = new(1, 1);
    private readonly Lock _gate = new();
    private readonly List<(OpenTown Town, string Address, WebApplication? App)> _all = [];

    /// <summary>Raised when a town is opened or closed.</summary>
    public event Action? Changed;

    /// <summary>The towns other than one of them.</summary>
    /// <param name="town">The one.</param>
    /// <returns>Each with its address, in the order in which they were opened.</returns>
    public ItemList<(OpenTown Town, string Address)> Beside(OpenTown town)
    {
        lock (_gate)
        {
            return _all.Where(t => t.Town != town).Select(t => (t.Town, t.Address)).ToItemList();
        }
    }

    /// <summary>Where a file is open in this process.</summary>
    /// <param name="path">The file.</param>
    /// <returns>The address; none where it is not.</returns>
    public string? AddressOf(string path)
    {
        lock (_gate)
        {
            return _all.FirstOrDefault(t => t.Town.FilePath == Path.GetFullPath(path)).Address;
        }
    }

    /// <summary>Opens a town beside those that are open.</summary>
    /// <param name="path">Its file.</param>
    /// <returns>Its address, also where it was open already; or what kept it from being opened.</returns>
    public async Task<(string? Address, ItemList<Problem> Problems)> OpenAsync(string path)
    {
        await _oneAtATime.WaitAsync();
        try
        {
            if (AddressOf(path) is { } there)
            {
                return (there, []);
            }

            var opened = OpenTown.FromFile(path, home);
            if (opened.Town is not { } town)
            {
                return (null, opened.Problems);
            }

            var app = ServeApp.Build(options, town, this);
            app.Urls.Add(ServeApp.AnyPort);
            await app.StartAsync();
            return (AddressOf(path), []);
        }
        finally
        {
            _oneAtATime.Release();
        }
    }

    /// <summary>Closes a town that was opened beside another; its file is then free.</summary>
    /// <param name="address">Its address.</param>
    /// <returns>When it is closed; nothing happens where no such town is open, or it is the one that the program began with.</returns>
    public async Task CloseAsync(string address)
    {
        (OpenTown Town, string Address, WebApplication? App) found;
        lock (_gate)
        {
            found = _all.FirstOrDefault(t => t.Address == address && t != _all[0]);
            _all.Remove(found);
        }

        if (found.App is { } app)
        {
            await ServeApp.EndAsync(app);
            found.Town.Dispose();
            Changed?.Invoke();
        }
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        while (_all is [_, var next, ..])
        {
            await CloseAsync(next.Address);
        }

        _oneAtATime.Dispose();
    }

    /// <summary>Hears that a town answers.</summary>
    /// <param name="town">The town.</param>
    /// <param name="app">Its app.</param>
    internal void Stands(OpenTown town, WebApplication app)
    {
        var address = app.Urls.First();
        lock (_gate)
        {
            _all.Add((town, address, app));
        }

        town.StandsAt(address);
        Changed?.Invoke();
    }
}
