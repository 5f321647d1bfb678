using Duskwright.Book.Houses;
using Duskwright.Pictures;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Shapes;
using Duskwright.Study.Results;
using Duskwright.Towns;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Places;

/// <summary>One house, its walls unfolded and its floors from above; windows and lamps are drawn in by hand.</summary>
public partial class HousePlace
{
    // The drawing fills the page, so that lettering grows with the house.
    private const double PageMillimetres = 260;
    private const double Coarse = 2;
    private const double Fine = 0.5;

    private readonly HandScript _onWalls;
    private readonly HandScript _onFloors;
    private HousePiece? _chosen;
    private ElementReference _walls;
    private ElementReference _floors;
    private string _shape = StartingShape.All[0].Name;

    public HousePlace()
    {
        _onWalls = new HandScript((key, right, up, _) => Move(key, right, up, onFloor: false), Remove);
        _onFloors = new HandScript((key, right, up, _) => Move(key, right, up, onFloor: true), Remove);
    }

    private BuildingResult? House => Open.Study.Buildings.FirstOrDefault(b => b.Building.Key == View.At);

    // Undo may have taken away what was chosen.
    private HousePiece? Chosen => _chosen is { } piece && House is { } house && piece.At.In(house.Building) is { } room
        && (piece.Kind == PieceKind.Room || piece.Index < (piece.Kind == PieceKind.Window ? room.Windows.Count : room.Lamps.Count))
        ? piece
        : null;

    private Roof Roof => House?.Building.Roof ?? new Roof();

    public async ValueTask DisposeAsync()
    {
        await _onWalls.DisposeAsync();
        await _onFloors.DisposeAsync();
        Dispose();
        GC.SuppressFinalize(this);
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (House is not null)
        {
            await _onWalls.MountAsync(Js, _walls, Coarse, Fine);
            await _onFloors.MountAsync(Js, _floors, Coarse, Fine);
        }
    }

    private static double WallPen(BuildingResult house) =>
        Math.Max(1, 2 * ((house.Building.Place?.Width?.Millimetres ?? 60) + (house.Building.Place?.Depth?.Millimetres ?? 60)) / PageMillimetres);

    private static bool IsMovable(string key) => !key.StartsWith("room:", StringComparison.Ordinal);

    private static string Named(BuildingResult house, HousePiece piece) => piece.Kind switch
    {
        PieceKind.Window => $"A window, {Storey(house, piece.At.Storey)}",
        PieceKind.Lamp => $"Lamp {HouseLayout.Lamps(house).First(l => l.Storey == piece.At.Storey && l.Room == piece.At.Room && l.Index == piece.Index).Name}, {Storey(house, piece.At.Storey)}",
        _ => $"{piece.At.In(house.Building)!.Name ?? $"Room {piece.At.Room + 1}"}, {Storey(house, piece.At.Storey)}",
    };

    private static string Storey(BuildingResult house, int storey) => house.Building.Storeys[storey].Name ?? (storey == 0 ? "ground floor" : $"storey {storey + 1}");

    private static IEnumerable<(HousePiece Room, string Name)> Rooms(BuildingResult house) =>
        from s in Enumerable.Range(0, house.Building.Storeys.Count)
        from r in Enumerable.Range(0, house.Building.Storeys[s].Rooms.Count)
        let piece = new HousePiece(PieceKind.Room, new RoomAt(s, r), 0)
        select (piece, Named(house, piece));

    private void Pick(string key)
    {
        if (HousePiece.Of(key) is { } piece)
        {
            _chosen = piece == _chosen ? null : piece;
        }
    }

    private Task Move(string key, double right, double up, bool onFloor) => InvokeAsync(() =>
    {
        if (House is not { } house)
        {
            return;
        }

        var hand = new HouseHand(house);
        var sizes = key.StartsWith("size:", StringComparison.Ordinal);
        if (HousePiece.Of(sizes ? key["size:".Length..] : key) is { } piece)
        {
            Do(sizes ? hand.Size(piece, right, up) : hand.Move(piece, right, up, onFloor));
        }
    });

    private Task Remove(string key) => InvokeAsync(() =>
    {
        if (House is { } house && HousePiece.Of(key) is { } piece)
        {
            Do(new HouseHand(house).Remove(piece));
            _chosen = null;
            StateHasChanged();
        }
    });

    private void TakeShape()
    {
        var shape = StartingShape.All.First(s => s.Name == _shape);
        Do(new ChangeBuildings([shape.On(House!.Building)], $"{House.Building.Name}: begin from the shape {shape.Name.ToLowerInvariant()}"));
    }

    private void AddStorey() => Do(DescribeStorey.OnTop(House!.Building));

    private void Say(Func<Building, Building> change) => Open.Change(House!.Building.Key, change, $"{House.Building.Name}: roof and inside", told: false);

    private void Do(TownEdit? edit)
    {
        if (edit is not null)
        {
            Open.Apply(edit);
        }
    }
}
