using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;

namespace Duskwright.Book.Night;

/// <summary>A town with usual windows where none is described, so that every lamp can be seen at night.</summary>
/// <remarks>One window to a lamp, in the front; a lantern with four panes for street lamps and boats. Lamps, resistors and switches stay as they are, so currents do.</remarks>
internal static class NightTown
{
    /// <summary>Side and height of a lantern, mm: a choice of the drawing.</summary>
    internal const double Lantern = 6;

    internal static Town Of(Town town) => town with { Buildings = town.Buildings.Select(b => Described(b) ? b : Usual(b)).ToItemList() };

    internal static bool Described(Building building) => building.Storeys.Any(s => s.Rooms.Any(r => r.Windows.Count > 0)) || building.Leds is null or 0;

    private static Building Usual(Building building) => building.Kind switch
    {
        BuildingKind.StreetLamp or BuildingKind.Boat => building with { Storeys = [Lit(Lantern + 2, LanternRoom(building.Leds!.Value))] },
        BuildingKind.Hearth => building with { Storeys = [Lit(30, [Room(building.Leds!.Value, 50, Front(18, 14, new Pane { Material = PaneMaterial.Open }))])] },
        BuildingKind.Sign => building with { Storeys = [Lit(30, [Room(building.Leds!.Value, 50, Front(36, 14, new Pane { Material = PaneMaterial.Frosted }))])] },
        _ => House(building),
    };

    private static Building House(Building building)
    {
        var count = building.Leds!.Value;
        var along = building.Place?.Width?.Millimetres ?? 60;
        var wide = Math.Max(12, along / count);
        var pane = Math.Min(10, 0.6 * wide);
        var rooms = Enumerable.Range(0, count).Select(i => Room(1, wide, Front(pane, 12, new Pane { Bars = true }) with { FromLeft = Length.FromMillimetres((along * (i + 0.5) / count) - (pane / 2)) }));
        return building with { Storeys = [Lit(32, rooms.ToItemList())] };
    }

    private static Storey Lit(double height, ItemList<Room> rooms) => new() { Height = Length.FromMillimetres(height), Rooms = rooms };

    private static Room Room(int lamps, double width, params Window[] windows) => new()
    {
        Width = Length.FromMillimetres(width),
        Lamps = Enumerable.Range(0, lamps).Select(_ => new Lamp()).ToItemList(),
        Windows = windows.ToItemList(),
    };

    private static ItemList<Room> LanternRoom(int lamps) =>
    [
        Room(lamps, Lantern, [.. Enum.GetValues<WallSide>().Select(wall => Front(Lantern - 1, Lantern, new Pane { Material = PaneMaterial.Frosted }) with { Wall = wall })]) with
        {
            Depth = Length.FromMillimetres(Lantern),
            Finish = InteriorFinish.White,
            Lamps = Enumerable.Range(0, lamps).Select(_ => new Lamp { BehindPane = Length.FromMillimetres(Lantern / 2) }).ToItemList(),
        },
    ];

    private static Window Front(double width, double height, Pane pane) => new() { Width = Length.FromMillimetres(width), Height = Length.FromMillimetres(height), Sill = Length.FromMillimetres(pane.Material == PaneMaterial.Frosted && height < 8 ? 1 : 9), Pane = pane };
}
