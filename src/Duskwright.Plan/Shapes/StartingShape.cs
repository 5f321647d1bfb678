using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Shapes;

/// <summary>A building to begin from: footprint, storeys, windows, lamps and roof, all to be changed.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Building">The building, without a place on the board; its footprint is in <see cref="Placement.Width"/> and <see cref="Placement.Depth"/>.</param>
public sealed record StartingShape(string Name, Building Building)
{
    private const double Wall = 2;
    private const double LeastSide = 4;
    private const double LeastWindow = 2;

    /// <summary>The shapes there are, in usual sizes of card houses.</summary>
    public static ItemList<StartingShape> All { get; } =
    [
        Shape("Cottage", 62, 46, new Roof { Covering = RoofCovering.Thatch, Rise = Mm(24) }, Storey(32, Room(62, 46, 1, Window(12, 12), Window(12, 12)))),
        Shape("Tall house", 46, 50, new Roof { Shape = RoofShape.Hip, Rise = Mm(22) }, Storey(30, Room(46, 50, 1, Window(9, 14), Window(9, 14))), Storey(28, Room(46, 50, 1, Window(9, 12), Window(9, 12))), Storey(26, Room(46, 50, 1, Window(9, 10)))),
        Shape("Tower", 44, 44, new Roof { Shape = RoofShape.Point, Rise = Mm(30) }, Storey(45, Room(44, 44, 1, Window(7, 14))), Storey(35, Room(44, 44, 1, Window(7, 12)))) is var tower
            ? tower with { Building = tower.Building with { Place = tower.Building.Place! with { Round = true } } }
            : tower,
        Shape("Hall", 112, 52, new Roof { Rise = Mm(30) }, Storey(46, Room(112, 52, 2, Window(9, 22), Window(9, 22), Window(9, 22), Window(9, 22)))),
        Shape("Shed", 50, 36, new Roof { Covering = RoofCovering.Tile, Rise = Mm(12) }, Storey(26, Room(50, 36, 1, Window(10, 9)))),
        Shape("Shop", 60, 50, new Roof { Covering = RoofCovering.Tile, Rise = Mm(24) }, Storey(34, Room(60, 50, 1, Window(32, 20))), Storey(28, Room(60, 50, 1, Window(9, 12), Window(9, 12)))),
    ];

    /// <summary>A building that is known by its ground alone, in this shape: as many windows to a wall's length as the shape has, storeys as high, the roof as steep, and the LEDs that were counted shared over its storeys.</summary>
    /// <param name="house">The building; its name, ground and everything electrical are kept.</param>
    /// <returns>The building with storeys, rooms, windows, lamps and roof.</returns>
    public Building On(Building house)
    {
        var (usualWide, usualDeep) = (Building.Place!.Width!.Value.Millimetres, Building.Place.Depth!.Value.Millimetres);
        var wide = house.Place?.Width?.Millimetres ?? usualWide;
        var deep = house.Place is { Round: true } ? wide : house.Place?.Depth?.Millimetres ?? usualDeep;
        var storeys = Building.Storeys.Select((storey, i) => storey with { Rooms = storey.Rooms.Select(r => Fitted(r, wide, deep, usualWide, Lamps(r, house.Leds, i))).ToItemList() }).ToItemList();
        var roof = Building.Roof! with { Rise = Building.Roof!.Rise is { } rise ? Mm(Math.Round(rise.Millimetres * deep / usualDeep)) : null };
        var shaped = house with { Storeys = storeys, Roof = roof };
        return shaped.DescribedLamps().Any() ? shaped with { Leds = null } : shaped;
    }

    private ItemList<Lamp> Lamps(Room room, int? counted, int storey) => counted is not { } leds
        ? room.Lamps
        : Enumerable.Range(0, leds).Where(i => i % Building.Storeys.Count == storey).Select(_ => new Lamp()).ToItemList();

    private static Room Fitted(Room room, double wide, double deep, double usualWide, ItemList<Lamp> lamps)
    {
        var inside = Math.Max(LeastSide, wide - (2 * Wall));
        var count = Math.Max(1, (int)Math.Round(room.Windows.Count * wide / usualWide));
        var most = Math.Max(LeastWindow, Math.Floor((inside / count) - Wall));
        return room with
        {
            Width = Mm(inside),
            Depth = Mm(Math.Max(LeastSide, deep - (2 * Wall))),
            Lamps = lamps,
            Windows = Enumerable.Repeat(room.Windows[0] with { Width = Mm(Math.Min(room.Windows[0].Width.Millimetres, most)) }, count).ToItemList(),
        };
    }

    private static Length Mm(double millimetres) => Length.FromMillimetres(millimetres);

    private static StartingShape Shape(string name, double width, double depth, Roof roof, params Storey[] storeys) => new(name, new Building
    {
        Name = name,
        Roof = roof,
        Storeys = storeys.ToItemList(),
        Place = new Placement { At = Point.At(0, 0), Width = Mm(width), Depth = Mm(depth) },
    });

    private static Storey Storey(double height, Room room) => new() { Height = Mm(height), Rooms = [room] };

    private static Room Room(double width, double depth, int lamps, params Window[] windows) => new()
    {
        Width = Mm(width - (2 * Wall)),
        Depth = Mm(depth - (2 * Wall)),
        Lamps = Enumerable.Range(0, lamps).Select(_ => new Lamp()).ToItemList(),
        Windows = windows.ToItemList(),
    };

    private static Window Window(double width, double height) => new() { Width = Mm(width), Height = Mm(height), Sill = Mm(9), Pane = new Pane { Material = PaneMaterial.Tracing, Bars = true } };
}
