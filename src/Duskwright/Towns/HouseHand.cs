using Duskwright.Book.Houses;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Results;

namespace Duskwright.Towns;

/// <summary>What a hand on the drawings of a house asks for, as edits: pieces moved, sized, copied, added and taken away. What nobody had placed is kept where it is drawn.</summary>
/// <param name="House">The house as it stands.</param>
public sealed record HouseHand(BuildingResult House)
{
    private const double LeastSide = 2;
    private const double Gap = 3;
    private const double UsualWidth = 10;
    private const double UsualHeight = 12;

    /// <summary>The unit in which the maker is answered.</summary>
    public LengthRule Lengths { get; init; } = LengthRule.All[0];

    private Building Building => House.Building;

    /// <summary>Moves a piece over the drawing it is seen in.</summary>
    /// <param name="piece">A window or a lamp.</param>
    /// <param name="right">To the right, mm.</param>
    /// <param name="up">Up on the walls, or towards the back on the floors, mm.</param>
    /// <param name="onFloor">Whether it was moved on the floors from above.</param>
    /// <returns>The edit; none where nothing can move so.</returns>
    public TownEdit? Move(HousePiece piece, double right, double up, bool onFloor) => piece.Kind switch
    {
        PieceKind.Window => MoveWindow(piece, right, up),
        PieceKind.Lamp => MoveLamp(piece, right, up, onFloor),
        _ => null,
    };

    /// <summary>Sizes a window by its upper right corner.</summary>
    /// <param name="piece">The window.</param>
    /// <param name="wider">Wider by, mm.</param>
    /// <param name="higher">Higher by, mm.</param>
    /// <returns>The edit; none where there is no such window.</returns>
    public TownEdit? Size(HousePiece piece, double wider, double higher)
    {
        if (Drawn(piece) is not { } place)
        {
            return null;
        }

        var width = Within(place.Window.Width.Millimetres + wider, LeastSide, place.MostMillimetres - place.LeftMillimetres);
        var height = Within(place.Window.Height.Millimetres + higher, LeastSide, place.CeilingMillimetres - place.SillMillimetres);
        return Change(piece, place.Window with { Width = Mm(width), Height = Mm(height) }, "size a window");
    }

    /// <summary>Says a window anew; the other windows of its wall stay where they are drawn.</summary>
    /// <param name="piece">The window.</param>
    /// <param name="window">The window as it is to be.</param>
    /// <param name="words">What is done, for undo.</param>
    /// <returns>The edit; none where there is no such window.</returns>
    public TownEdit? Change(HousePiece piece, Window window, string words) =>
        Drawn(piece) is { } place ? Room(piece.At, r => r with { Windows = r.Windows.With(piece.Index, window) }, place.Window.Wall, words) : null;

    /// <summary>One window more, where there is room for it in its room's share of the wall.</summary>
    /// <param name="at">The room.</param>
    /// <param name="like">What it is like; none for a usual window.</param>
    /// <param name="wall">The wall.</param>
    /// <returns>The edit, or one sentence that says why there is no room.</returns>
    public (TownEdit? Edit, string? Why) AddWindow(RoomAt at, Window? like, WallSide wall)
    {
        var (from, to, height) = HouseLayout.Share(House, at.Storey, at.Room, wall);
        var window = (like ?? new Window { Width = Mm(Math.Min(UsualWidth, to - from)), Height = Mm(Math.Min(UsualHeight, height / 2)), Pane = new Pane { Bars = true } }) with { Wall = wall };
        var sill = window.SillMillimetres(height);
        var (wide, high) = (window.Width.Millimetres, window.Height.Millimetres);
        var taken = HouseLayout.Windows(House, wall)
            .Where(w => w.Storey == at.Storey && w.SillMillimetres < sill + high && sill < w.SillMillimetres + w.Window.Height.Millimetres)
            .Select(w => (From: w.LeftMillimetres - Gap, To: w.LeftMillimetres + w.Window.Width.Millimetres + Gap))
            .ToList();

        // The middle first, then beside whatever stands there, the nearest to the middle before the farther.
        var middle = (from + to - wide) / 2;
        var free = taken.SelectMany(t => (double[])[t.From - wide, t.To]).Append(middle)
            .Where(x => x >= from && x + wide <= to && !taken.Exists(t => x < t.To && t.From < x + wide))
            .OrderBy(x => Math.Abs(x - middle)).Select(x => (double?)x).FirstOrDefault();
        return free is { } left
            ? (Room(at, r => r with { Windows = r.Windows.Add(window with { FromLeft = Mm(Math.Max(0, left)), Sill = Mm(sill) }) }, wall, "one window more"), null)
            : (null, $"There is no room on this wall for another window {Lengths.Words(window.Width)} wide. Make one narrower, or move the others together.");
    }

    /// <summary>One more of a piece, beside it.</summary>
    /// <param name="piece">A window or a lamp.</param>
    /// <returns>The edit, or one sentence that says why there is no room.</returns>
    public (TownEdit? Edit, string? Why) Copy(HousePiece piece)
    {
        if (piece.Kind == PieceKind.Lamp)
        {
            return (piece.At.In(Building)?.Lamps.ElementAtOrDefault(piece.Index) is { } lamp ? AddLamp(piece.At, lamp with { Name = null, FromLeft = null }) : null, null);
        }

        return Drawn(piece) is { } place ? AddWindow(piece.At, place.Window with { Sill = Mm(place.SillMillimetres) }, place.Window.Wall) : (null, null);
    }

    /// <summary>One lamp more in a room.</summary>
    /// <param name="at">The room.</param>
    /// <param name="lamp">The lamp.</param>
    /// <returns>The edit.</returns>
    public TownEdit AddLamp(RoomAt at, Lamp lamp) => Room(at, r => r with { Lamps = r.Lamps.Add(lamp) }, null, "one lamp more");

    /// <summary>Says a lamp anew.</summary>
    /// <param name="piece">The lamp.</param>
    /// <param name="lamp">The lamp as it is to be.</param>
    /// <param name="words">What is done, for undo.</param>
    /// <returns>The edit.</returns>
    public TownEdit Change(HousePiece piece, Lamp lamp, string words) => Room(piece.At, r => r with { Lamps = r.Lamps.With(piece.Index, lamp) }, null, words);

    /// <summary>Says a room anew.</summary>
    /// <param name="at">The room.</param>
    /// <param name="room">The room as it is to be.</param>
    /// <param name="words">What is done, for undo.</param>
    /// <returns>The edit.</returns>
    public TownEdit Change(RoomAt at, Room room, string words) => Room(at, _ => room, null, words);

    /// <summary>One room more in a storey, at its right; it takes half of the last room where that fills the front.</summary>
    /// <param name="storey">The storey, counted from 0.</param>
    /// <returns>The edit.</returns>
    public TownEdit AddRoom(int storey)
    {
        var rooms = Building.Storeys[storey].Rooms;
        if (rooms.Count == 0)
        {
            return new DescribeStorey(Building.Key, storey, Building.Storeys[storey] with { Rooms = [new Room()] }, Said("one room more"));
        }

        var (from, to, _) = HouseLayout.Share(House, storey, rooms.Count - 1, WallSide.Front);
        var half = Mm((to - from) / 2);
        return new DescribeStorey(Building.Key, storey, Building.Storeys[storey] with { Rooms = rooms.With(rooms.Count - 1, rooms[^1] with { Width = half }).Add(new Room { Width = half, Depth = rooms[^1].Depth }) }, Said("one room more"));
    }

    /// <summary>Takes a piece away.</summary>
    /// <param name="piece">The piece.</param>
    /// <returns>The edit; none where it is gone already.</returns>
    public TownEdit? Remove(HousePiece piece) => piece.Kind switch
    {
        PieceKind.Window => Drawn(piece) is { } place ? Room(piece.At, r => r with { Windows = r.Windows.Without(piece.Index) }, place.Window.Wall, "a window less") : null,
        PieceKind.Lamp => piece.At.In(Building) is { } room && piece.Index < room.Lamps.Count ? Room(piece.At, r => r with { Lamps = r.Lamps.Without(piece.Index) }, null, "a lamp less") : null,
        _ => new DescribeRoom(Building.Key, piece.At, null, Said("a room less")),
    };

    private TownEdit? MoveWindow(HousePiece piece, double right, double up)
    {
        if (Drawn(piece) is not { } place)
        {
            return null;
        }

        var left = Within(place.LeftMillimetres + right, place.LeastMillimetres, place.MostMillimetres - place.Window.Width.Millimetres);
        var sill = Within(place.SillMillimetres + up, 0, place.CeilingMillimetres - place.Window.Height.Millimetres);
        return Change(piece, place.Window with { FromLeft = Mm(left), Sill = Mm(sill) }, "move a window");
    }

    private TownEdit? MoveLamp(HousePiece piece, double right, double up, bool onFloor)
    {
        if (HouseLayout.Lamps(House).FirstOrDefault(l => l.Storey == piece.At.Storey && l.Room == piece.At.Room && l.Index == piece.Index) is not { } spot || piece.At.In(Building) is not { } room)
        {
            return null;
        }

        var lamp = room.Lamps[piece.Index] with { FromLeft = Mm(Within(spot.FromLeftMillimetres + right, 0, spot.WidthMillimetres)) };
        if (!onFloor)
        {
            return Change(piece, lamp with { AboveFloor = Mm(Within(spot.AboveFloorMillimetres + up, 0, spot.HeightMillimetres)) }, "move a lamp");
        }

        // Its distance from the pane is what is kept; behind a pane in a side wall that runs along the front. A room without a window yet is taken to get one in front.
        var back = Within(spot.FromFrontMillimetres + up, 1, spot.DepthMillimetres - 1);
        Length? behind = room.Windows.Select(w => w.Wall).FirstOrDefault() switch
        {
            WallSide.Front => Mm(back),
            WallSide.Back => Mm(spot.DepthMillimetres - back),
            _ => lamp.BehindPane,
        };
        return Change(piece, lamp with { BehindPane = behind }, "move a lamp");
    }

    private WindowPlace? Drawn(HousePiece piece) => piece.Kind == PieceKind.Window
        ? Enum.GetValues<WallSide>().SelectMany(w => HouseLayout.Windows(House, w)).FirstOrDefault(w => w.Storey == piece.At.Storey && w.Room == piece.At.Room && w.Index == piece.Index)
        : null;

    private DescribeRoom Room(RoomAt at, Func<Room, Room> changed, WallSide? pinned, string words) =>
        new(Building.Key, at, at.In(Building) is { } room ? changed(pinned is { } wall ? Pinned(at, room, wall) : room) : null, Said(words));

    // Windows that were only spread over the wall would all move when one of them does.
    private Room Pinned(RoomAt at, Room room, WallSide wall) =>
        HouseLayout.Windows(House, wall).Where(w => w.Storey == at.Storey && w.Room == at.Room)
            .Aggregate(room, (r, w) => r with { Windows = r.Windows.With(w.Index, w.Window with { FromLeft = Mm(Math.Max(0, w.LeftMillimetres)), Sill = Mm(w.SillMillimetres) }) });

    private string Said(string words) => $"{Building.Name}: {words}";

    // Half millimetres: what a knife can follow.
    private static double Within(double value, double least, double most) => Math.Clamp(Math.Round(value * 2) / 2, least, Math.Max(least, most));

    private static Length Mm(double millimetres) => Length.FromMillimetres(Math.Round(millimetres, 1));
}
