using System.Globalization;
using Duskwright.Plan.Checks;
using Duskwright.Study.Figures;
using Duskwright.Towns;
using Microsoft.AspNetCore.Components.Routing;

namespace Duskwright.Parts;

public partial class Shell
{
    private static readonly Tick[] LuxTicks = [new(-1, "0.1"), new(0, "1"), new(1, "10"), new(2, "100"), new(3, "1 000"), new(4, "10 000")];

    private Problem? _refused;
    private int _refusals;
    private Plan.Document.Town? _seen;
    private int? _spoiling;
    private string? _undoing;
    private string _told = "";
    private string _place = "";

    private string Place => Navigation.ToBaseRelativePath(Navigation.Uri).Split('?', '#')[0];

    private double Hours => Open.Town.Show.HoursPerDay.Hours;

    private Viewpoint View => Viewpoint.Of(Navigation.Uri, Hours, Open.Town.Show.RoomIlluminance?.Lux ?? 300);

    private string HourWords => $"{Math.Floor(View.Hour):0}:{(int)Math.Round(View.Hour % 1 * 60) % 60:00}";

    private string LuxWords => FigureText.Of(View.Lux, "lx");

    private static bool IsOfOpening(Problem problem) => problem.Rule is "open-elsewhere" or "no-file" or "not-readable" or "not-a-town" or "cut-short" or "damaged" or "newer-version";

    private string FileWords => Open.FileName is { } name ? $"Kept in your file {name}" : "Your files";

    private Tick[] HourTicks
    {
        get
        {
            var step = Math.Max(1, Math.Ceiling(Hours / 12));
            return [.. Enumerable.Range(0, (int)(Hours / step) + 1).Select(i => new Tick(i * step, (i * step).ToString(CultureInfo.InvariantCulture)))];
        }
    }

    // Packs that dim within minutes of each other share a flag, or their words would lie over one another.
    private Tick[] Flags =>
    [
        .. Open.Study.Packs.Where(p => p.HoursToDim is { } dim && dim.Value < Hours)
            .GroupBy(p => Math.Round(p.HoursToDim!.Value / Hours * 5))
            .Select(g => new Tick(g.Min(p => p.HoursToDim!.Value), g.Count() == 1 ? $"pack {g.First().Number} dims" : $"packs {string.Join(", ", g.Select(p => p.Number))} dim")),
    ];

    protected override void OnInitialized()
    {
        (_seen, _place) = (Open.Town, Place);
        Open.Changed += Refresh;
        Navigation.LocationChanged += Moved;
    }

    public void Dispose()
    {
        Open.Changed -= Refresh;
        Navigation.LocationChanged -= Moved;
        GC.SuppressFinalize(this);
    }

    private static double Rounded(double decade)
    {
        var lux = Math.Pow(10, decade);
        var unit = Math.Pow(10, Math.Floor(decade) - 1);
        return Math.Round(lux / unit) * unit;
    }

    private void Look(Viewpoint view) => Navigation.NavigateTo(view.In(Place), replace: true);

    // What a looker chose or typed and was refused must not go on standing in its field: the page is drawn anew as the town is.
    private void Refresh() => InvokeAsync(() =>
    {
        if (Open.IsToLookAt && Open.Trouble is [var refused, ..] && !ReferenceEquals(refused, _refused))
        {
            (_refused, _refusals) = (refused, _refusals + 1);
        }

        Hear();
        StateHasChanged();
    });

    private void Undo()
    {
        _undoing = Open.UndoLabel;
        Open.Undo();
        Hear();
        _undoing = null;
    }

    // What is done is told once, in one place of the page; what comes of it follows when it has been worked out, and only where it is other than before.
    private void Hear()
    {
        if (_seen is { } before && !ReferenceEquals(before, Open.Town))
        {
            _seen = Open.Town;
            if ((_undoing is { } back ? $"Taken back: {back}" : Open.UndoLabel) is { } label)
            {
                Tell(SpokenChange.Of(before, Open.Town, label, Open.Lengths));
            }
        }

        if (Open.IsSettled && Open.Settled is { Packs.Count: > 0 } settled)
        {
            var spoils = settled.Findings.Count(f => f.Severity == Study.Findings.Severity.Spoils);
            if (_spoiling is { } was && was != spoils)
            {
                Tell(spoils switch { 0 => "Nothing spoils the show now.", 1 => "One thing now spoils the show or can do harm.", _ => $"{spoils} things now spoil the show or can do harm." });
            }

            _spoiling = spoils;
        }
    }

    // The same words twice are told twice.
    private void Tell(string words) => _told = words == _told ? words + "\u00A0" : words;

    private void Moved(object? sender, LocationChangedEventArgs e)
    {
        Open.GoOn();
        if (Place != _place)
        {
            _place = Place;
            Tell($"{(Place.Length == 0 ? "Town" : char.ToUpperInvariant(Place[0]) + Place[1..])} is open.");
        }

        Refresh();
    }
}
