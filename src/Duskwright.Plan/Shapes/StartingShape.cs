using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Shapes;

/// <summary>A building to begin from: footprint, storeys, windows, lamps and roof, all to be changed.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Building">The building, without a place on the board; its footprint is in <see cref="Placement.Width"/> and <see cref="Placement.Depth"/>.</param>
public sealed record StartingShape(string Name, Building Building)
{
    private const double Wall = 2;

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
