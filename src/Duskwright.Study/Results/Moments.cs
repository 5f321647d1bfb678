using Duskwright.Light.Perception;
using Duskwright.Plan;

namespace Duskwright.Study.Results;

/// <summary>The town at one hour, read off its fades.</summary>
internal static class Moments
{
    internal static Moment Of(TownStudy study, double hour, double? roomLux)
    {
        var fades = study.Packs.Where(p => p.Fade is not null).ToDictionary(p => p.Supply.Id, p => p.Fade!, StringComparer.Ordinal);
        var lamps = study.Lamps.Where(l => l.Supply is not null && fades.ContainsKey(l.Supply)).Select(lamp =>
        {
            var share = fades[lamp.Supply!].At(lamp.LightShares, hour);
            bool? lit = roomLux is { } lux && lamp.PaneLuminance is { } pane ? ReadsAsLit.Of(pane.Value * share, lux) : null;
            return new LampAtMoment(lamp.Building, lamp.Name, share, Lightness.OfShare(share), lit);
        });
        var packs = study.Packs.Where(p => p.Fade is not null).Select(p => new PackAtMoment(
            p.Supply.Id,
            p.Fade!.At(p.Fade.Volts, hour),
            p.Fade.At(p.Fade.Amperes, hour),
            p.Fade.At(p.Fade.ChargeLeft, hour),
            p.Fade.At(p.Fade.WorstLightness, hour)));
        return new Moment(hour, lamps.ToItemList(), packs.ToItemList())
        {
            PanesLater = new(() => study.Buildings.SelectMany(b => b.Panes.Select(pane => AtHour(pane, b, fades, hour, roomLux))).ToItemList()),
        };
    }

    private static PaneAtMoment AtHour(PaneResult pane, BuildingResult building, Dictionary<string, Fade> fades, double hour, double? roomLux)
    {
        var luminance = pane.Lamps.Sum(share =>
        {
            var lamp = building.Lamps.First(l => l.Name == share.Lamp);
            return share.Luminance * (lamp.Supply is { } supply && fades.TryGetValue(supply, out var fade) ? fade.At(lamp.LightShares, hour) : 0);
        });
        var limit = ReadsAsLit.RoomLuxLimit(luminance);
        return new PaneAtMoment(pane.Building, pane.Storey, pane.Room, pane.Window, luminance, limit, roomLux is { } lux ? lux <= limit : null);
    }
}
