using Duskwright.Light.Rooms;
using Duskwright.Light.Sight;
using Duskwright.Plan.Document;

namespace Duskwright.Study.Operation;

/// <summary>From where people look at the panes of a room.</summary>
internal sealed class Eyes
{
    // Where no height is said: somebody who stoops to a town on a table; common practice, no source.
    private const double UsualEyeHeight = 0.45;

    // A child of six: eyes about 1.05 m above the floor, a board on a table at 0.90 m; both from memory.
    private const double ChildEyeHeight = 0.15;

    // Where nobody's place is said, straight before the window: arm's length.
    private const double ArmsLength = 0.6;

    private const double UsualStoreyHeight = 0.035;

    private readonly Town _town;
    private readonly List<(string Name, RoomPoint At)> _standing;
    private readonly List<HouseBlock> _blocks;

    internal Eyes(Town town)
    {
        _town = town;
        _standing = [.. town.Show.ViewingPositions.SelectMany(p => new[] { (p.Name, EyeAt(p, p.EyeHeight?.Metres ?? UsualEyeHeight)) }
            .Concat((p.EyeHeight?.Metres ?? UsualEyeHeight) > ChildEyeHeight ? [($"{p.Name}, a child", EyeAt(p, ChildEyeHeight))] : []))];
        _blocks = [.. town.Buildings.Where(b => b.Place?.Width is not null).Select(b => new HouseBlock(b, Ground(b), TopOf(b)))];
    }

    /// <summary>Every eye that looks into a pane, in the room's axes.</summary>
    /// <param name="building">The pane's building.</param>
    /// <param name="storey">Which of its storeys.</param>
    /// <param name="laid">The room.</param>
    /// <param name="box">The room as a box.</param>
    /// <param name="pane">The pane.</param>
    internal IEnumerable<(string Name, RoomPoint At)> Into(Building building, int storey, LaidRoom laid, RoomBox box, RoomPane pane)
    {
        if (_standing.Count == 0 || building.Place is null)
        {
            var middle = SightLine.Middle(box, pane);
            var away = pane.Wall switch
            {
                BoxFace.Left => new RoomPoint(-ArmsLength, 0, 0),
                BoxFace.Right => new RoomPoint(ArmsLength, 0, 0),
                BoxFace.Back => new RoomPoint(0, ArmsLength, 0),
                _ => new RoomPoint(0, -ArmsLength, 0),
            };
            return [("straight before it", middle + away + new RoomPoint(0, 0, UsualEyeHeight)), ("straight before it, a child", middle + away + new RoomPoint(0, 0, ChildEyeHeight))];
        }

        var floor = Ground(building) + building.Storeys.Take(storey).Sum(s => s.Height?.Metres ?? UsualStoreyHeight);
        var own = building.Place;
        var (width, depth) = (own.Width?.Metres ?? laid.Query.WidthMetres, own.Depth?.Metres ?? own.Width?.Metres ?? laid.Query.DepthMetres);
        var corner = new RoomPoint((width / 2) - laid.FromLeftMetres, depth / 2, -floor);
        RoomPoint InRoom(RoomPoint at) => HouseBlock.Turned(own, at) + corner;
        var middleOfPane = HouseBlock.Back(own, SightLine.Middle(box, pane) - corner);
        return _standing
            .Where(e => SightLine.Faces(box, pane, InRoom(e.At)) && !_blocks.Any(b => b.Building.Key != building.Key && b.Stops(e.At, middleOfPane)))
            .Select(e => (e.Name, InRoom(e.At)));
    }

    private static RoomPoint EyeAt(ViewingPosition position, double height) => new(position.At.X.Metres, position.At.Y.Metres, height);

    private double Ground(Building building)
    {
        var levels = _town.Board?.Levels ?? [];
        return (levels.FirstOrDefault(l => l.Id == building.Place?.Level) ?? (levels.Count > 0 ? levels[0] : null))?.Height.Metres ?? 0;
    }

    private double TopOf(Building building) =>
        Ground(building) + (building.Storeys.Count == 0 ? UsualStoreyHeight : building.Storeys.Sum(s => s.Height?.Metres ?? UsualStoreyHeight)) + (building.Roof?.Rise?.Metres ?? 0) / 2;
}
