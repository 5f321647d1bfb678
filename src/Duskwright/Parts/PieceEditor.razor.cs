using Duskwright.Book.Houses;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Parts;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Results;
using Duskwright.Towns;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>What can be said of one window, lamp or room; each change is an edit of its own.</summary>
public partial class PieceEditor
{
    [Parameter, EditorRequired]
    public BuildingResult House { get; set; } = default!;

    [Parameter, EditorRequired]
    public HousePiece Piece { get; set; } = default!;

    /// <summary>Hears what is now meant; none where it is gone.</summary>
    [Parameter]
    public EventCallback<HousePiece?> Chose { get; set; }

    private HouseHand Hand => new(House) { Lengths = Open.Lengths };

    private Room? Room => Piece.At.In(House.Building);

    private Storey Storey => House.Building.Storeys[Piece.At.Storey];

    private Window? Window => Room?.Windows.ElementAtOrDefault(Piece.Index);

    private Lamp? Lamp => Room?.Lamps.ElementAtOrDefault(Piece.Index);

    private Pane Pane => Window?.Pane ?? new Pane();

    private (Length Left, Length Sill)? Place => Window is { } window
        && HouseLayout.Windows(House, window.Wall).FirstOrDefault(w => w.Storey == Piece.At.Storey && w.Room == Piece.At.Room && w.Index == Piece.Index) is { } drawn
        ? (Length.FromMillimetres(drawn.LeftMillimetres), Length.FromMillimetres(drawn.SillMillimetres))
        : null;

    private IEnumerable<LampPart> Lamps => Catalogue.Parts.Lamps.Concat(Open.Town.OwnParts.Lamps);

    private static string? Chosen(ChangeEventArgs e) => e.Value?.ToString()?.Trim() is { Length: > 0 } text ? text : null;

    private void Say(Window window) => Do(Hand.Change(Piece, window, "change a window"));

    private void Say(Lamp lamp) => Do(Hand.Change(Piece, lamp, "change a lamp"));

    private void Say(Room room) => Do(Hand.Change(Piece.At, room, "change a room"));

    private void Say(Storey storey) => Do(new DescribeStorey(House.Building.Key, Piece.At.Storey, storey, $"{House.Building.Name}: change a storey"));

    // On another wall the old place along the wall means nothing.
    private void ToWall(Window window, WallSide wall)
    {
        var (from, to, _) = HouseLayout.Share(House, Piece.At.Storey, Piece.At.Room, wall);
        Say(window with { Wall = wall, FromLeft = Length.FromMillimetres(Math.Max(0, (from + to - window.Width.Millimetres) / 2)) });
    }

    private Task AddWindow(WallSide wall) => Added(Hand.AddWindow(Piece.At, null, wall), PieceKind.Window);

    private Task AddLamp() => Added((Hand.AddLamp(Piece.At, new Lamp()), null), PieceKind.Lamp);

    private Task Copy() => Added(Hand.Copy(Piece), Piece.Kind);

    private void AddRoom() => Do(Hand.AddRoom(Piece.At.Storey));

    private async Task Remove()
    {
        if (Do(Hand.Remove(Piece)))
        {
            await Chose.InvokeAsync(Piece.Kind == PieceKind.Room ? null : new HousePiece(PieceKind.Room, Piece.At, 0));
        }
    }

    private async Task RemoveStorey()
    {
        if (Do(new DescribeStorey(House.Building.Key, Piece.At.Storey, null, $"{House.Building.Name}: a storey less")))
        {
            await Chose.InvokeAsync(null);
        }
    }

    private async Task Added((TownEdit? Edit, string? Why) asked, PieceKind kind)
    {
        if (asked.Why is { } why)
        {
            Wrong = why;
        }
        else if (Do(asked.Edit) && Open.Town.Buildings.FirstOrDefault(b => b.Key == House.Building.Key) is { } now && Piece.At.In(now) is { } room)
        {
            await Chose.InvokeAsync(new HousePiece(kind, Piece.At, (kind == PieceKind.Window ? room.Windows.Count : room.Lamps.Count) - 1));
        }
    }
}
