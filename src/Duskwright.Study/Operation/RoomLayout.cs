using System.Globalization;
using Duskwright.Light.Rooms;
using Duskwright.Plan;
using Duskwright.Plan.Document;

namespace Duskwright.Study.Operation;

/// <summary>Puts a described room's windows and lamps where they lie in its box; what is not said is put where makers usually put it, and what does not fit is moved and said.</summary>
internal sealed class RoomLayout
{
    // Where a room's size is not said: a small room, 40 × 40 × 35 mm inside.
    private const double UsualSide = 0.04;
    private const double UsualHeight = 0.035;

    // A lamp's distance behind its pane (15 to 25 mm, common practice) and height where nothing is said: above the line of sight.
    internal const double UsualBehindPane = 0.02;
    private const double UsualHeightShare = 0.75;

    // A lamp cannot sit in the wall itself: its middle keeps a millimetre off.
    private const double LampOffWall = 0.001;

    // Up to this is what a ruler and a wall's thickness leave open, m: nobody needs to be told.
    private const double Worth = 0.0015;

    private readonly Room _room;
    private readonly (double Width, double Depth, double Height) _size;
    private readonly double _before;
    private readonly double _whole;
    private readonly List<string> _moved = [];

    private RoomLayout(Room room, (double Width, double Depth, double Height) size, double before, double whole) =>
        (_room, _size, _before, _whole) = (room, size, before, whole);

    /// <summary>The room, none without a window.</summary>
    /// <param name="building">Its building.</param>
    /// <param name="storey">Its storey.</param>
    /// <param name="room">Which of the storey's rooms.</param>
    /// <param name="lamps">Which of the room's lamps count, with their viewing angles, rad.</param>
    internal static LaidRoom? Of(Building building, Storey storey, int room, IReadOnlyList<(int Lamp, double AngleRadians)> lamps)
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
        var layout = new RoomLayout(described, (width, depth, height), before, whole);
        layout.Wider(described.Width ?? place?.Width, width, "wide");
        layout.Wider(described.Depth ?? place?.Depth ?? place?.Width, depth, "deep");
        layout.Wider(storey.Height, height, "high");
        var panes = described.Windows.Select((w, i) => layout.Pane(w, i)).ToItemList();
        var spots = lamps.Select(l => layout.Spot(l.Lamp, l.AngleRadians, panes[0].Wall)).ToItemList();
        return new LaidRoom(new PaneQuery(width, depth, height, described.Finish ?? building.Finish ?? InteriorFinish.Raw, panes, spots), before, layout._moved.ToItemList());
    }

    private void Wider(Plan.Quantities.Length? said, double taken, string way)
    {
        if (said is { } length && taken - length.Metres > Worth)
        {
            _moved.Add($"the room is taken as {Millimetres(taken)} {way}, as its widest window needs, not {Millimetres(length.Metres)}");
        }
    }

    private PanePlace Pane(Window window, int index)
    {
        var wall = window.Wall is WallSide.Left or WallSide.Right ? _size.Depth : _size.Width;
        var alike = _room.Windows.Where(w => w.Wall == window.Wall).ToList();
        var number = _room.Windows.Take(index).Count(w => w.Wall == window.Wall);
        var spread = ((number + 1.0) / (alike.Count + 1) * wall) - (window.Width.Metres / 2);

        // Seen from outside, the left end of the back wall is the room's right, that of the left wall its back.
        var wished = window.FromLeft?.Metres is { } said
            ? window.Wall switch
            {
                WallSide.Front => said - _before,
                WallSide.Back => _whole - said - window.Width.Metres - _before,
                WallSide.Left => _size.Depth - said - window.Width.Metres,
                _ => said,
            }
            : spread;
        var left = Math.Clamp(wished, 0, wall - window.Width.Metres);
        var wishedSill = window.SillMillimetres(1000 * _size.Height) / 1000;
        var sill = Math.Clamp(wishedSill, 0, _size.Height - window.Height.Metres);
        Said($"window {index + 1}", "sideways", left - wished, window.FromLeft is not null);
        Said($"window {index + 1}", "down", wishedSill - sill, window.Sill is not null);
        return new PanePlace(Face(window.Wall), new Rectangle(left, left + window.Width.Metres, sill, sill + window.Height.Metres), window.Pane);
    }

    private LampSpot Spot(int lamp, double angleRadians, BoxFace wall)
    {
        var described = _room.Lamps[lamp];
        var name = described.Name ?? $"lamp {lamp + 1}";
        var behind = described.BehindPane?.Metres ?? UsualBehindPane;
        var side = wall is BoxFace.Left or BoxFace.Right;
        var fromPane = wall switch { BoxFace.Left => behind, BoxFace.Right => _size.Width - behind, BoxFace.Back => _size.Depth - behind, _ => behind };

        // Behind a pane in a side wall, both distances a lamp may have run along the front: that from the left wall counts.
        var x = described.FromLeft?.Metres ?? (side ? fromPane : _size.Width * (lamp + 1) / (_room.Lamps.Count + 1));
        var y = side ? _size.Depth / 2 : fromPane;
        var z = described.AboveFloor?.Metres ?? (UsualHeightShare * _size.Height);
        var at = new RoomPoint(Inside(x, _size.Width), Inside(y, _size.Depth), Inside(z, _size.Height));
        Said(name, "sideways", at.X - x, described.FromLeft is not null || (side && described.BehindPane is not null));
        Said(name, wall == BoxFace.Back ? "towards the front" : "towards the back", wall == BoxFace.Back ? y - at.Y : at.Y - y, !side && described.BehindPane is not null);
        Said(name, "down", z - at.Z, described.AboveFloor is not null);
        if (side && described.FromLeft is not null && described.BehindPane is not null && Math.Abs(fromPane - x) > Worth)
        {
            _moved.Add($"{name} cannot be {Millimetres(described.FromLeft.Value.Metres)} from the left wall and {Millimetres(behind)} behind the pane in the {(wall == BoxFace.Left ? "left" : "right")} wall; the distance from the left wall is kept");
        }

        var towards = wall switch
        {
            BoxFace.Left => new RoomPoint(-1, 0, 0),
            BoxFace.Right => new RoomPoint(1, 0, 0),
            BoxFace.Back => new RoomPoint(0, 1, 0),
            _ => new RoomPoint(0, -1, 0),
        };
        return new LampSpot(at, described.Aim == LampAim.AtPane ? towards : -1 * towards, angleRadians);
    }

    private void Said(string thing, string way, double metres, bool measured)
    {
        if (measured && Math.Abs(metres) > Worth)
        {
            var turned = metres > 0 ? way : way switch { "down" => "up", "towards the back" => "towards the front", "towards the front" => "towards the back", _ => way };
            _moved.Add($"{thing} is taken {Millimetres(Math.Abs(metres))} {turned}, to lie inside the room");
        }
    }

    private static string Millimetres(double metres) => string.Create(CultureInfo.InvariantCulture, $"{1000 * metres:0.#}\u2009mm");

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

/// <summary>A room laid out.</summary>
/// <param name="Query">What its light is computed from.</param>
/// <param name="FromLeftMetres">From the building's left end to the room's left wall, m.</param>
/// <param name="Moved">What did not fit and where it was put, a clause for each.</param>
internal sealed record LaidRoom(PaneQuery Query, double FromLeftMetres, ItemList<string> Moved);
