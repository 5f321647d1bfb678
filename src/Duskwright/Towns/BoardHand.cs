using System.Globalization;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Quantities;
using Duskwright.Plan.Shapes;

namespace Duskwright.Towns;

/// <summary>What a hand on the board asks for, as edits: houses, alone or together, and what lies on and under the board, moved and taken away.</summary>
/// <param name="Town">A town with a board.</param>
/// <param name="SnapMillimetres">What positions are rounded to, mm.</param>
public sealed record BoardHand(Town Town, double SnapMillimetres)
{
    private Board Board => Town.Board!;

    /// <summary>A point on the board, rounded and never off it.</summary>
    /// <param name="rightMillimetres">From the left edge.</param>
    /// <param name="backMillimetres">From the front edge.</param>
    /// <returns>The point.</returns>
    public Point Snapped(double rightMillimetres, double backMillimetres) => Point.At(
        Math.Clamp(Math.Round(rightMillimetres / SnapMillimetres) * SnapMillimetres, 0, Board.Width.Millimetres),
        Math.Clamp(Math.Round(backMillimetres / SnapMillimetres) * SnapMillimetres, 0, Board.Depth.Millimetres));

    /// <summary>Moves or turns what has a key.</summary>
    /// <param name="key">A building's key, or that of a hole, wireway, corner, thing, viewing place or the bank.</param>
    /// <param name="together">The keys of buildings that move with one of them.</param>
    /// <param name="right">To the right, mm.</param>
    /// <param name="back">To the back, mm.</param>
    /// <param name="turn">Turned by, degrees counter-clockwise; only one building is.</param>
    /// <returns>The edit; none where nothing can move so.</returns>
    public TownEdit? Move(string key, IReadOnlyCollection<string> together, double right, double back, double turn)
    {
        if (turn == 0 && together.Count > 1 && together.Contains(key))
        {
            return All(together, right, back);
        }

        if (Town.Buildings.FirstOrDefault(b => b.Key == key) is { Place: { } place } house)
        {
            return new MoveBuilding(key, place with { At = turn == 0 ? Moved(place.At, right, back) : place.At, Rotation = Angle.FromDegrees((place.Rotation.Degrees + turn) % 360) }, turn == 0 ? $"Move {house.Name}" : $"Turn {house.Name}");
        }

        return key.Split(':', 3) switch
        {
            ["bank"] when Board.Bank is { } bank => new DrawGround(Board with { Bank = bank with { At = Moved(bank.At, right, back) } }, "Move the bank"),
            ["hole", var id] => new DrawGround(Board with { FeedHoles = Board.FeedHoles.Select(h => h.Id == id ? h with { At = Moved(h.At, right, back) } : h).ToItemList() }, $"Move hole {id}"),
            ["eye", var name] => new PlaceViews(Town.Show.ViewingPositions.Select(v => v.Name == name ? v with { At = Point.At(Math.Round(v.At.X.Millimetres + right), Math.Round(v.At.Y.Millimetres + back)) } : v).ToItemList(), $"Move {name}"),
            ["way" or "thing", _] => Points(key, points => Shifted(points, right, back), "Move"),
            ["corner", var corner, var thing] when Corner(corner) is { } at => Points(thing, points => at < points.Count ? points.With(at, Moved(points[at], right, back)) : points, "Bend"),
            _ => null,
        };
    }

    /// <summary>Takes away what has a key; of houses that are chosen together, all.</summary>
    /// <param name="key">The key.</param>
    /// <param name="together">The keys of the houses that are chosen together.</param>
    /// <returns>The edit; none where it cannot be taken away.</returns>
    public TownEdit? Remove(string key, ItemList<string> together)
    {
        var houses = Town.Buildings.Where(b => b.Key == key || (together.Contains(key) && together.Contains(b.Key))).ToItemList();
        if (houses.Count > 0)
        {
            return new RemoveBuildings(houses);
        }

        return key.Split(':', 3) switch
        {
            ["hole", var id] => new DrawGround(Board with { FeedHoles = Board.FeedHoles.Where(h => h.Id != id).ToItemList() }, $"A hole less: {id}"),
            ["way", var id] => new DrawGround(Board with { Wireways = Board.Wireways.Where(w => w.Id != id).ToItemList() }, $"A wireway less: {id}"),
            ["eye", var name] => new PlaceViews(Town.Show.ViewingPositions.Where(v => v.Name != name).ToItemList(), $"A place less to look from: {name}"),
            ["thing", var number] when Index(number) is { } i => new DrawGround(Board with { Scenery = Board.Scenery.Without(i) }, $"{(Board.Scenery[i].Kind == SceneryKind.Obstacle ? "An" : "A")} {Called(Board.Scenery[i].Kind)} less"),
            ["corner", var corner, var thing] when Corner(corner) is { } at => Points(thing, points => at < points.Count ? points.Without(at) : points, "A corner less:"),
            _ => null,
        };
    }

    /// <summary>One corner more in a line or outline, in the middle of its longest side.</summary>
    /// <param name="key">The key of a wireway or thing, or of a building whose ground has corners of its own.</param>
    /// <returns>The edit; none where there is no such line.</returns>
    public TownEdit? OneCornerMore(string key) => Town.Buildings.FirstOrDefault(b => b.Key == key) is { } house ? Ground(house, OwnOutline.OneMore, "one corner more") : Points(
        key,
        points =>
        {
            var longest = Enumerable.Range(1, points.Count - 1).MaxBy(i => Math.Pow(points[i].X.Millimetres - points[i - 1].X.Millimetres, 2) + Math.Pow(points[i].Y.Millimetres - points[i - 1].Y.Millimetres, 2));
            var (a, b) = (points[longest - 1], points[longest]);
            return points.Take(longest).Append(Point.At((a.X.Millimetres + b.X.Millimetres) / 2, (a.Y.Millimetres + b.Y.Millimetres) / 2)).Concat(points.Skip(longest)).ToItemList();
        },
        "One corner more:");

    private MoveTogether All(IReadOnlyCollection<string> keys, double right, double back)
    {
        var houses = Town.Buildings.Where(b => keys.Contains(b.Key) && b.Place is not null && MoveBuilding.May(Town, b.Key)).ToList();
        var shifted = Shifted(houses.Select(b => b.Place!.At).ToItemList(), right, back);
        return new MoveTogether(houses.Select((b, i) => new BuildingPlace(b.Key, b.Place! with { At = shifted[i] })).ToItemList(), $"Move {houses.Count} houses together");
    }

    // The whole is held on the board, so that its parts keep their distances.
    private ItemList<Point> Shifted(ItemList<Point> points, double right, double back)
    {
        if (points.Count == 0)
        {
            return points;
        }

        var to = Moved(points[0], right, back);
        var (dx, dy) = (to.X.Millimetres - points[0].X.Millimetres, to.Y.Millimetres - points[0].Y.Millimetres);
        dx = Math.Clamp(dx, -points.Min(p => p.X.Millimetres), Board.Width.Millimetres - points.Max(p => p.X.Millimetres));
        dy = Math.Clamp(dy, -points.Min(p => p.Y.Millimetres), Board.Depth.Millimetres - points.Max(p => p.Y.Millimetres));
        return points.Select(p => Point.At(p.X.Millimetres + dx, p.Y.Millimetres + dy)).ToItemList();
    }

    // An axis along which nothing was moved is not rounded either.
    private Point Moved(Point at, double right, double back)
    {
        var to = Snapped(at.X.Millimetres + right, at.Y.Millimetres + back);
        return new Point { X = right == 0 ? at.X : to.X, Y = back == 0 ? at.Y : to.Y };
    }

    private static int? Corner(string number) => int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var i) ? i : null;

    private static MoveBuilding? Ground(Building house, Func<Placement, Placement> changed, string words) =>
        house.Place is { Outline.Count: > 0 } place ? new MoveBuilding(house.Key, changed(place), $"{house.Name}: {words}") : null;

    private TownEdit? Points(string key, Func<ItemList<Point>, ItemList<Point>> changed, string verb) => Town.Buildings.FirstOrDefault(b => b.Key == key) is { } house
        ? Ground(house, place => OwnOutline.With(place, changed(OwnOutline.Corners(place))), verb == "Bend" ? "move a corner" : "a corner less")
        : OnGround(key, changed, verb);

    private DrawGround? OnGround(string key, Func<ItemList<Point>, ItemList<Point>> changed, string verb) => key.Split(':', 2) switch
    {
        ["way", var id] when Board.Wireways.Any(w => w.Id == id) => new DrawGround(Board with { Wireways = Board.Wireways.Select(w => w.Id == id ? w with { Points = changed(w.Points) } : w).ToItemList() }, $"{verb} wireway {id}"),
        ["thing", var number] when Index(number) is { } i => new DrawGround(Board with { Scenery = Board.Scenery.With(i, Board.Scenery[i] with { Points = changed(Board.Scenery[i].Points) }) }, $"{verb} {Board.Scenery[i].Label ?? Called(Board.Scenery[i].Kind)}"),
        _ => null,
    };

    private static string Called(SceneryKind kind) => kind == SceneryKind.Free ? "free area" : kind.ToString().ToLowerInvariant();

    private int? Index(string number) => int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var i) && i < Board.Scenery.Count ? i : null;
}
