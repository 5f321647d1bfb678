using Duskwright.Light.Rooms;
using Duskwright.Plan;
using Duskwright.Plan.Document;

namespace Duskwright.Study.Operation;

/// <summary>Puts a described room's windows and lamps where they lie in its box; what is not said is put where makers usually put it.</summary>
internal static class RoomLayout
{
    // Where a room's size is not said: a small room, 40 × 40 × 35 mm inside.
    private const double UsualSide = 0.04;
    private const double UsualHeight = 0.035;

    // A lamp's distance behind its pane (15 to 25 mm, common practice) and height where nothing is said: above the line of sight.
    internal const double UsualBehindPane = 0.02;
    private const double UsualHeightShare = 0.75;

    // A lamp cannot sit in the wall itself: its middle keeps a millimetre off.
    private const double LampOffWall = 0.001;

    /// <summary>The room, none without a window.</summary>
    /// <param name="building">Its building.</param>
    /// <param name="storey">Its storey.</param>
    /// <param name="room">Which of the storey's rooms.</param>
    /// <param name="lamps">Which of the room's lamps count, with their viewing angles, rad.</param>
    internal static PaneQuery? Of(Building building, Storey storey, int room, IReadOnlyList<(int Lamp, double AngleRadians)> lamps)
    {
        var described = storey.Rooms[room];
        if (described.Windows.Count == 0)
        {
            return null;
        }

        var place = building.Place;
        double Most(WallSide one, WallSide other) => described.Windows.Where(w => w.Wall == one || w.Wall == other).Select(w => w.Width.Metres).DefaultIfEmpty(0).Max();
        var width = Math.Max((described.Width ?? place?.Width)?.Metres ?? UsualSide, Most(WallSide.Front, WallSide.Back));
        var depth = Math.Max((described.Depth ?? place?.Depth ?? place?.Width)?.Metres ?? UsualSide, Most(WallSide.Left, WallSide.Right));
        var height = Math.Max(storey.Height?.Metres ?? UsualHeight, described.Windows.Max(w => w.Height.Metres));

        // Windows are measured along the building's wall, rooms stand side by side from its left end.
        var before = storey.Rooms.Take(room).Sum(r => r.Width?.Metres ?? 0);
        var whole = Math.Max(place?.Width?.Metres ?? 0, before + width);
        var panes = described.Windows.Select((w, i) => Pane(described, w, i, (width, depth, height), before, whole)).ToItemList();
        var spots = lamps.Select(l => Spot(described, l.Lamp, l.AngleRadians, panes[0].Wall, (width, depth, height))).ToItemList();
        return new PaneQuery(width, depth, height, described.Finish ?? building.Finish ?? InteriorFinish.Raw, panes, spots);
    }

    private static PanePlace Pane(Room room, Window window, int index, (double Width, double Depth, double Height) size, double before, double whole)
    {
        var wall = size.Width;
        if (window.Wall is WallSide.Left or WallSide.Right)
        {
            wall = size.Depth;
        }

        var alike = room.Windows.Where(w => w.Wall == window.Wall).ToList();
        var number = room.Windows.Take(index).Count(w => w.Wall == window.Wall);
        var spread = ((number + 1.0) / (alike.Count + 1) * wall) - (window.Width.Metres / 2);

        // Seen from outside, the left end of the back wall is the room's right, that of the left wall its back.
        var left = window.FromLeft?.Metres is { } said
            ? window.Wall switch
            {
                WallSide.Front => said - before,
                WallSide.Back => whole - said - window.Width.Metres - before,
                WallSide.Left => size.Depth - said - window.Width.Metres,
                _ => said,
            }
            : spread;
        left = Math.Clamp(left, 0, wall - window.Width.Metres);
        var sill = Math.Clamp(window.Sill?.Metres ?? ((size.Height - window.Height.Metres) / 2), 0, size.Height - window.Height.Metres);
        return new PanePlace(Face(window.Wall), new Rectangle(left, left + window.Width.Metres, sill, sill + window.Height.Metres), window.Pane);
    }

    private static LampSpot Spot(Room room, int lamp, double angleRadians, BoxFace wall, (double Width, double Depth, double Height) size)
    {
        var described = room.Lamps[lamp];
        var behind = described.BehindPane?.Metres ?? UsualBehindPane;
        var across = described.FromLeft?.Metres ?? (size.Width * (lamp + 1) / (room.Lamps.Count + 1));
        var (x, y) = wall switch
        {
            BoxFace.Left => (behind, size.Depth / 2),
            BoxFace.Right => (size.Width - behind, size.Depth / 2),
            BoxFace.Back => (across, size.Depth - behind),
            _ => (across, behind),
        };
        var towards = wall switch
        {
            BoxFace.Left => new RoomPoint(-1, 0, 0),
            BoxFace.Right => new RoomPoint(1, 0, 0),
            BoxFace.Back => new RoomPoint(0, 1, 0),
            _ => new RoomPoint(0, -1, 0),
        };
        var at = new RoomPoint(Inside(x, size.Width), Inside(y, size.Depth), Inside(described.AboveFloor?.Metres ?? (UsualHeightShare * size.Height), size.Height));
        return new LampSpot(at, described.Aim == LampAim.AtPane ? towards : -1 * towards, angleRadians);
    }

    private static double Inside(double at, double size)
    {
        var off = Math.Min(LampOffWall, size / 10);
        return Math.Clamp(at, off, size - off);
    }

    private static BoxFace Face(WallSide wall) => wall switch
    {
        WallSide.Front => BoxFace.Front,
        WallSide.Right => BoxFace.Right,
        WallSide.Back => BoxFace.Back,
        _ => BoxFace.Left,
    };
}
