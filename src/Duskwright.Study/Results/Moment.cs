using Duskwright.Plan;

namespace Duskwright.Study.Results;

/// <summary>The town at one hour of the show.</summary>
/// <param name="Hour">Hours burnt.</param>
/// <param name="Lamps">Each lamp fed by a supply, in the order of the lamps.</param>
/// <param name="Packs">Each supply with lamps.</param>
public sealed record Moment(double Hour, ItemList<LampAtMoment> Lamps, ItemList<PackAtMoment> Packs)
{
    /// <summary>Each pane, in the order of <see cref="TownStudy.Panes"/>.</summary>
    public ItemList<PaneAtMoment> Panes => PanesLater.Value;

    internal Later<ItemList<PaneAtMoment>> PanesLater { get; init; } = new(() => []);
}

/// <summary>A pane at one hour; its colour and its map's shape are those of its result.</summary>
/// <param name="Building">Its building.</param>
/// <param name="Storey">Its storey, from 0.</param>
/// <param name="Room">Its room, from 0.</param>
/// <param name="Window">Its window, from 0.</param>
/// <param name="Luminance">Mean luminance, cd/m².</param>
/// <param name="RoomLuxLimit">Light in the room up to which it reads as lit, lx.</param>
/// <param name="ReadsAsLit">Whether it reads as lit in the room's light; none where that is left open.</param>
public sealed record PaneAtMoment(string Building, int Storey, int Room, int Window, double Luminance, double RoomLuxLimit, bool? ReadsAsLit);

/// <summary>A lamp at one hour.</summary>
/// <param name="Building">Its building.</param>
/// <param name="Lamp">Its name.</param>
/// <param name="LightShare">Its light as a share of its own at the start.</param>
/// <param name="Lightness">That share as lightness L*.</param>
/// <param name="ReadsAsLit">Whether its pane reads as lit in the room's light; none where it has no window described.</param>
public sealed record LampAtMoment(string Building, string Lamp, double LightShare, double Lightness, bool? ReadsAsLit);

/// <summary>A supply at one hour.</summary>
/// <param name="Supply">Its id.</param>
/// <param name="Volts">Voltage under load.</param>
/// <param name="Amperes">Current.</param>
/// <param name="ChargeLeft">Share of its charge left, 0 to 1.</param>
/// <param name="WorstLightness">Lightness of its worst lamp.</param>
public sealed record PackAtMoment(string Supply, double Volts, double Amperes, double ChargeLeft, double WorstLightness);
