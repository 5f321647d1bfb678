using System.Globalization;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Quantities;

namespace Duskwright.Towns;

/// <summary>Something that is being drawn on the board point by point, before it is an edit.</summary>
/// <param name="Kind">What it is to be.</param>
/// <param name="Points">The points so far.</param>
public sealed record BoardDraft(DraftKind Kind, ItemList<Point> Points)
{
    private const double Opening = 2;

    // So near the first corner, a hand that points means the corner itself: about five points of the screen, the whole board in sight.
    private const double MeetsWithin = 0.006;

    /// <summary>How many points it needs before it is anything.</summary>
    public int Least => Kind switch { DraftKind.Hole or DraftKind.View => 1, DraftKind.Wireway or DraftKind.Measure or DraftKind.Scale => 2, _ => 3 };

    /// <summary>How far apart its two points are in truth, where it sets a scale.</summary>
    public Length? Apart { get; init; }

    /// <summary>Whether it takes a point more.</summary>
    public bool TakesMore => Kind != DraftKind.Scale || Points.Count < 2;

    /// <summary>Whether it can be said that it is done.</summary>
    public bool IsWhole => Points.Count >= Least && (Kind != DraftKind.Scale || Apart is not null);

    /// <summary>Whether the next point makes it whole.</summary>
    public bool IsOnePoint => Least == 1;

    /// <summary>Whether it has an inside, so that its last corner joins its first.</summary>
    public bool IsClosed => Kind is DraftKind.Obstacle or DraftKind.Hatch or DraftKind.Free or DraftKind.Level or DraftKind.House;

    /// <summary>Whether a point is its first corner again, which says that it is done.</summary>
    /// <param name="point">Where the hand pointed.</param>
    /// <param name="board">The board it is drawn on.</param>
    public bool IsClosedBy(Point point, Board board) => IsClosed && IsWhole && Way(Points[0], point) <= MeetsWithin * board.Width.Millimetres;

    /// <summary>The same with a point more; unchanged where the hand came down twice on its last one.</summary>
    /// <param name="point">The point.</param>
    public BoardDraft With(Point point) => Points.Count > 0 && Points[^1] == point ? this : this with { Points = Points.Add(point) };

    /// <summary>The same without its last point.</summary>
    public BoardDraft WithoutLast() => this with { Points = Points.Take(Points.Count - 1).ToItemList() };

    /// <summary>What it is called.</summary>
    public string Name => Called(Kind);

    /// <summary>How far it has come, in words.</summary>
    /// <param name="lengths">The unit in which the maker measures.</param>
    /// <returns>A sentence.</returns>
    public string Words(LengthRule lengths) => Kind == DraftKind.Scale && Points.Count == 2
        ? "How far apart are the two points on the board itself?"
        : Points.Count < 2
        ? $"{Name}: point by point, on the board or typed; {Least} {(Least == 1 ? "is" : "are")} needed."
        : $"{Name}: {Points.Count} points, {lengths.Words(Along(Points))} along{(Points.Count > 2 ? $", the last side {lengths.Words(Along(Points.Skip(Points.Count - 2)))}" : "")}.{(IsClosed && IsWhole ? " Point at the first corner again, or say that it is done." : "")}";

    /// <summary>What a kind is called.</summary>
    /// <param name="kind">The kind.</param>
    /// <returns>Plain words.</returns>
    public static string Called(DraftKind kind) => kind switch
    {
        DraftKind.Hole => "Hole",
        DraftKind.Wireway => "Wireway",
        DraftKind.Obstacle => "Obstacle",
        DraftKind.Hatch => "Hatch",
        DraftKind.Free => "Free area",
        DraftKind.Level => "Level",
        DraftKind.View => "Place to look from",
        DraftKind.House => "House",
        DraftKind.Scale => "Scale of the photograph",
        _ => "Measure",
    };

    /// <summary>The edit it becomes.</summary>
    /// <param name="town">A town with a board.</param>
    /// <returns>The edit; none while points are missing, and for a measure.</returns>
    public TownEdit? Edit(Town town)
    {
        if (Points.Count < Least || town.Board is not { } board)
        {
            return null;
        }

        return Kind switch
        {
            DraftKind.Hole => new DrawGround(board with { FeedHoles = board.FeedHoles.Add(new FeedHole { Id = Free("h", board.FeedHoles.Select(h => h.Id)), At = Points[0], Bore = Length.FromMillimetres(Opening) }) }, "One hole more"),
            DraftKind.Wireway => new DrawGround(board with { Wireways = board.Wireways.Add(new Wireway { Id = Free("w", board.Wireways.Select(w => w.Id)), Points = Points }) }, "One wireway more"),
            DraftKind.Obstacle or DraftKind.Hatch or DraftKind.Free => new DrawGround(board with { Scenery = board.Scenery.Add(new Scenery { Kind = Kind switch { DraftKind.Hatch => SceneryKind.Hatch, DraftKind.Free => SceneryKind.Free, _ => SceneryKind.Obstacle }, Points = Points }) }, $"One {Name.ToLowerInvariant()} more"),
            DraftKind.Level => new DrawGround(board with { Levels = board.Levels.Add(new Level { Id = Free("l", board.Levels.Select(l => l.Id)), Outline = Points }) }, "One level more"),
            DraftKind.View => new PlaceViews(town.Show.ViewingPositions.Add(new ViewingPosition { Name = Free("look ", town.Show.ViewingPositions.Select(v => v.Name)), At = Points[0] }), "One place more to look from"),
            DraftKind.Scale when Apart is { } apart => new ScalePhotograph(Points[0], Points[1], apart),
            DraftKind.House => AddBuilding.Named(town, new Building { Name = "House", Leds = 1, Place = Footprint() }),
            _ => null,
        };
    }

    private static string Free(string stem, IEnumerable<string> taken)
    {
        var all = taken.ToHashSet(StringComparer.Ordinal);
        return Enumerable.Range(1, all.Count + 1).Select(i => string.Create(CultureInfo.InvariantCulture, $"{stem}{i}")).First(id => !all.Contains(id));
    }

    private Placement Footprint()
    {
        var (x, y) = ((Points.Min(p => p.X.Millimetres) + Points.Max(p => p.X.Millimetres)) / 2, (Points.Min(p => p.Y.Millimetres) + Points.Max(p => p.Y.Millimetres)) / 2);
        return new Placement
        {
            At = Point.At(x, y),
            Width = Length.FromMillimetres(Points.Max(p => p.X.Millimetres) - Points.Min(p => p.X.Millimetres)),
            Depth = Length.FromMillimetres(Points.Max(p => p.Y.Millimetres) - Points.Min(p => p.Y.Millimetres)),
            Outline = Points.Select(p => Point.At(p.X.Millimetres - x, p.Y.Millimetres - y)).ToItemList(),
        };
    }

    private static Length Along(IEnumerable<Point> points) => Length.FromMillimetres(Math.Round(points.Zip(points.Skip(1), Way).Sum(), 1));

    private static double Way(Point a, Point b) => Math.Sqrt(Math.Pow(a.X.Millimetres - b.X.Millimetres, 2) + Math.Pow(a.Y.Millimetres - b.Y.Millimetres, 2));
}

/// <summary>What can be drawn on the board point by point.</summary>
public enum DraftKind
{
    /// <summary>A building of any outline.</summary>
    House,

    /// <summary>A feed hole.</summary>
    Hole,

    /// <summary>A wireway.</summary>
    Wireway,

    /// <summary>Something wire cannot pass.</summary>
    Obstacle,

    /// <summary>An opening to reach the wires.</summary>
    Hatch,

    /// <summary>A free area under the board.</summary>
    Free,

    /// <summary>Ground that lies higher.</summary>
    Level,

    /// <summary>A place to look from.</summary>
    View,

    /// <summary>A distance; it changes nothing.</summary>
    Measure,

    /// <summary>Two points on the photograph under the board.</summary>
    Scale,
}
