using Duskwright.Study;
using Duskwright.Study.Results;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Routing;

namespace Duskwright.Towns;

/// <summary>What every place shares: the open town, where it is looked at from, and being told of changes.</summary>
public abstract class PlaceBase : ComponentBase, IDisposable
{
    // A page asks for its hour many times over while it is drawn.
    private (TownStudy? Study, double Hour, double? Lux) _asked;
    private Moment? _moment;

    [Inject]
    protected OpenTown Open { get; set; } = default!;

    [Inject]
    protected NavigationManager Navigation { get; set; } = default!;

    protected Viewpoint View => Viewpoint.Of(Navigation.Uri, Hours, Open.Town.Show.RoomIlluminance?.Lux ?? 300);

    protected double Hours => Open.Town.Show.HoursPerDay.Hours;

    // What reads as lit is left open where the place can do without it: it takes the light of every room.
    protected virtual double? RoomLux => View.Lux;

    protected Moment Moment
    {
        get
        {
            var asked = (Open.Study, View.Hour, Lux: RoomLux);
            if (_moment is null || asked != _asked)
            {
                (_asked, _moment) = (asked, asked.Study.At(asked.Hour, asked.Lux));
            }

            return _moment;
        }
    }

    protected string Place => Navigation.ToBaseRelativePath(Navigation.Uri).Split('?')[0];

    /// <summary>How lit the panes of a building are at the hour, 0 to 1.</summary>
    protected double LitNow(BuildingResult house) => Moment.Lamps.Where(l => l.Building == house.Building.Key).Select(l => l.Lightness / 100).DefaultIfEmpty(0).Average();

    protected void Look(Viewpoint view) => Navigation.NavigateTo(view.In(Place), replace: true);

    protected override void OnInitialized()
    {
        Open.Changed += Refresh;
        Navigation.LocationChanged += Moved;
    }

    public void Dispose()
    {
        Open.Changed -= Refresh;
        Navigation.LocationChanged -= Moved;
        GC.SuppressFinalize(this);
    }

    private void Refresh() => InvokeAsync(StateHasChanged);

    private void Moved(object? sender, LocationChangedEventArgs e) => Refresh();
}
