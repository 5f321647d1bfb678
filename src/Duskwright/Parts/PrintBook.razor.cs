using Duskwright.Book.Sheets;
using Duskwright.Serve;
using Duskwright.Study;
using Duskwright.Towns;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>Prints the whole book while the page tells how far it is, and hands it over when it is done.</summary>
public sealed partial class PrintBook
{
    private CancellationTokenSource? _stop;
    private double? _share;
    private string? _ready;
    private int _pages;
    private TownStudy? _printed;
    private string? _paper;

    /// <summary>The paper's name.</summary>
    [Parameter, EditorRequired]
    public string Paper { get; set; } = "";

    [Inject]
    private OpenTown Open { get; set; } = default!;

    [Inject]
    private PrintRoom Room { get; set; } = default!;

    [Inject]
    private IServiceProvider Services { get; set; } = default!;

    /// <inheritdoc/>
    public void Dispose()
    {
        _stop?.Cancel();
        _stop?.Dispose();
        Forget();
    }

    private async Task PrintAsync()
    {
        Forget();
        _stop?.Dispose();
        _stop = new CancellationTokenSource();
        (_share, _printed, _paper) = (0, Open.Study, Paper);
        var (study, cancel) = (Open.Study, _stop.Token);
        var options = BookToday.Of(study.Town, Enum.Parse<PaperSize>(Paper, ignoreCase: true)) with { Address = Services.GetService<PhoneDoor>()?.Address };
        try
        {
            var name = await Task.Run(() => Room.Print(stream => _pages = BenchBook.WritePdf(study, options, stream, new Told(this), cancel)), cancel);
            if (cancel.IsCancellationRequested)
            {
                Room.Discard(name);
            }
            else
            {
                _ready = name;
            }
        }
        catch (OperationCanceledException)
        {
            // Stopped by the maker: nothing is kept.
            _printed = null;
        }
        finally
        {
            _share = null;
        }
    }

    private void Stop() => _stop?.Cancel();

    private void Forget()
    {
        if (_ready is { } name)
        {
            Room.Discard(name);
            _ready = null;
        }
    }

    // Redraws at whole hundredths, so that a book of thousands of sheets does not send thousands of changes.
    private sealed class Told(PrintBook page) : IProgress<double>
    {
        public void Report(double value)
        {
            if ((int)(100 * value) > (int)(100 * (page._share ?? 1)))
            {
                page._share = value;
                _ = page.InvokeAsync(page.StateHasChanged);
            }
        }
    }
}
