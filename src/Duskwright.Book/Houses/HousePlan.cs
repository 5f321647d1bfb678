using Duskwright.Plan.Document;
using Duskwright.Study.Results;

namespace Duskwright.Book.Houses;

/// <summary>Where storeys, rooms and lamps of a building lie, mm from the left of its front and up from the ground; what was not said is laid out evenly.</summary>
internal sealed class HousePlan
{
    private const double UsualSide = 60;
    private const double UsualStorey = 30;
    private const double UsualRise = 22;
    private const double UsualLampHeight = 0.75;

    // Foam board, the thickest of what walls are cut from.
    private const double MostWall = 5;

    // As the results take a lamp whose distance from its pane nobody has said.
    private const double UsualBehindPane = 20;

    internal HousePlan(BuildingResult result)
    {
        Result = result;
        var place = result.Building.Place;
        Width = place?.Width?.Millimetres ?? UsualSide;
        Depth = (place?.Round ?? false) ? Width : place?.Depth?.Millimetres ?? UsualSide;
        var (floor, names) = (0.0, new Queue<LampResult>(result.Lamps));
        foreach (var storey in result.Building.Storeys)
        {
            var height = storey.Height?.Millimetres ?? UsualStorey;
            Storeys.Add((storey, floor, height));
            Rooms.AddRange(Laid(storey, Storeys.Count - 1, floor, height, names));
            floor += height;
        }

        WallHeight = Storeys.Count > 0 ? floor : UsualStorey;
    }

    internal BuildingResult Result { get; }

    internal double Width { get; }

    internal double Depth { get; }

    internal double WallHeight { get; }

    internal double Rise => Result.Building.Roof?.Rise?.Millimetres ?? UsualRise;

    internal List<(Storey Storey, double Floor, double Height)> Storeys { get; } = [];

    internal List<RoomPlan> Rooms { get; } = [];

    internal double Along(WallSide wall) => wall is WallSide.Front or WallSide.Back ? Width : Depth;

    /// <summary>The windows of one wall; those whose place is not said stand evenly over their room's share of it.</summary>
    internal IEnumerable<WindowPlan> Windows(WallSide wall)
    {
        var rooms = new Queue<RoomPlan>(Rooms);
        for (var s = 0; s < Storeys.Count; s++)
        {
            var (storey, floor, height) = Storeys[s];
            for (var r = 0; r < storey.Rooms.Count; r++)
            {
                var (room, laid) = (storey.Rooms[r], rooms.Dequeue());
                var alike = Enumerable.Range(0, room.Windows.Count).Where(i => room.Windows[i].Wall == wall).ToList();
                var (from, share) = wall switch
                {
                    WallSide.Front => (laid.Left, laid.Width),
                    WallSide.Back => (Width - laid.Left - laid.Width, laid.Width),
                    _ => (0, Depth),
                };
                foreach (var (index, number) in alike.Select((index, number) => (index, number)))
                {
                    var window = room.Windows[index];
                    var evenly = from + (share * (number + 1) / (alike.Count + 1)) - (window.Width.Millimetres / 2);
                    yield return new WindowPlan(window, window.FromLeft?.Millimetres ?? evenly, floor + window.SillMillimetres(height), room.Lamps.Count > 0, s, r, index) { From = from, Share = share, Floor = floor, Height = height };
                }
            }
        }
    }

    private IEnumerable<RoomPlan> Laid(Storey storey, int number, double floor, double height, Queue<LampResult> names)
    {
        var said = storey.Rooms.Sum(r => r.Width?.Millimetres ?? 0);
        var open = storey.Rooms.Count(r => r.Width is null);

        // What rooms of a said width leave of the front is the walls on either side, where it is no more than such walls have.
        var left = open == 0 && Width - said is > 0 and <= 2 * MostWall ? (Width - said) / 2 : 0.0;
        foreach (var (room, index) in storey.Rooms.Select((r, i) => (r, i)))
        {
            var depth = room.Depth?.Millimetres ?? Depth;
            var width = room.Width?.Millimetres ?? Math.Max(10, (Width - said) / open);
            var lamps = room.Lamps.Select((lamp, i) => new LampPlan(
                names.Dequeue(),
                lamp.FromLeft?.Millimetres ?? width * (i + 1) / (room.Lamps.Count + 1),
                lamp.AboveFloor?.Millimetres ?? height * UsualLampHeight,
                FromFront(room, lamp, depth))).ToList();
            yield return new RoomPlan(room, number, index, left, width, depth, floor, height, lamps);
            left += width;
        }
    }

    // A lamp's distance from its pane is measured from the wall of the room's first window.
    private static double FromFront(Room room, Lamp lamp, double depth)
    {
        var behind = Math.Min(lamp.BehindPane?.Millimetres ?? UsualBehindPane, depth);
        return room.Windows.Select(w => w.Wall).FirstOrDefault() switch { WallSide.Front => behind, WallSide.Back => depth - behind, _ => depth / 2 };
    }
}

/// <summary>A room as it lies behind the front, mm, and which it is of the document's.</summary>
internal sealed record RoomPlan(Room Room, int Storey, int Index, double Left, double Width, double Depth, double Floor, double Height, IReadOnlyList<LampPlan> Lamps);

/// <summary>A lamp in its room: from the room's left, up from its floor and back from its front wall, mm.</summary>
internal sealed record LampPlan(LampResult Lamp, double FromLeft, double AboveFloor, double FromFront);

/// <summary>A window in its wall: left edge and lower edge as seen from outside, mm, whether its room holds a lamp, and which it is of the document's.</summary>
internal sealed record WindowPlan(Window Window, double Left, double Sill, bool Lamplit, int Storey, int Room, int Index)
{
    /// <summary>Where its room's share of the wall begins, mm.</summary>
    internal double From { get; init; }

    /// <summary>How wide that share is, mm.</summary>
    internal double Share { get; init; }

    /// <summary>Its storey's floor above the ground, mm.</summary>
    internal double Floor { get; init; }

    /// <summary>Its storey's height, mm.</summary>
    internal double Height { get; init; }
}
