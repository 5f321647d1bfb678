using System.Globalization;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;

namespace Duskwright.Benchmarks.Editing;

/// <summary>A town larger than any that is built by hand: 500 drawn houses of three rooms, each with a lamp and a window, on 25 packs, every pair with its route.</summary>
internal static class LargeTown
{
    internal const int Houses = 500;
    internal const int LampsPerHouse = 3;

    private const int Columns = 25;
    private const int HousesPerPack = 20;
    private const double Pitch = 100;

    // So many different houses, the others built like one of them.
    private const int Shapes = 20;

    private static readonly string[] Names =
    [
        "Alder", "Birch", "Cobble", "Dyke", "Elm", "Fallow", "Gorse", "Heron", "Ivy", "Juniper", "Kestrel", "Linden", "Marsh", "Nettle", "Otter",
        "Plover", "Quince", "Rowan", "Sedge", "Thistle", "Under", "Vetch", "Willow", "Yarrow", "Zephyr",
    ];

    private static readonly string[] Trades =
    [
        "Bakery", "Chandlery", "Cottage", "Dairy", "Forge", "Granary", "Hall", "Inn", "Kiln", "Loft", "Mill", "Netshed", "Oasthouse", "Pottery", "Row",
        "Smithy", "Tannery", "Villa", "Workshop", "Yard",
    ];

    internal static Town Build()
    {
        var houses = Enumerable.Range(0, Houses).Select(House).ToItemList();
        var packs = Enumerable.Range(0, Houses / HousesPerPack).Select(i => Number(i + 1)).ToList();
        return new Town
        {
            Name = "Widemarsh",
            Board = new Board
            {
                Width = Length.FromMillimetres(Columns * Pitch),
                Depth = Length.FromMillimetres(Houses / Columns * Pitch),
                Bank = new Bank { At = Point.At(Columns * Pitch / 2, 0) },
            },
            Buildings = houses,
            Supplies = packs.Select(p => new Supply { Id = p, Part = "LR20", Series = 3 }).ToItemList(),
            SwitchGroups = packs.Select(p => new SwitchGroup { Id = p, Supply = p }).ToItemList(),
            Routes = houses.Select(RouteOf).ToItemList(),
        };
    }

    private static Building House(int i) => new()
    {
        Name = $"{Names[i % Columns]} {Trades[i / Columns]}",
        Led = "led-3mm-warm-white",
        SwitchGroup = Number((i / HousesPerPack) + 1),
        Place = new Placement { At = Point.At((i % Columns * Pitch) + (Pitch / 2), (i / Columns * Pitch) + (Pitch / 2)), Width = Length.FromMillimetres(52), Depth = Length.FromMillimetres(44) },
        Storeys = [Storey("downstairs", i, 2), Storey("upstairs", i + 1, 1)],
    };

    private static Storey Storey(string name, int i, int rooms) => new()
    {
        Name = name,
        Height = Length.FromMillimetres(30 + (i % Shapes)),
        Rooms = Enumerable.Range(0, rooms).Select(r => new Room
        {
            Name = $"room {Number(r + 1)}",
            Lamps = [new Lamp()],
            Windows = [new Window { FromLeft = Length.FromMillimetres(6 + (25 * r)), Sill = Length.FromMillimetres(9), Width = Length.FromMillimetres(9), Height = Length.FromMillimetres(12) }],
        }).ToItemList(),
    };

    // Along the lane to the middle and down to the bank.
    private static Route RouteOf(Building house)
    {
        var (at, middle) = (house.Place!.At, Columns * Pitch / 2);
        return new Route
        {
            Building = house.Key,
            Points = [at, Point.At(middle, at.Y.Millimetres), Point.At(middle, 0)],
            Length = Length.FromMillimetres(Math.Abs(at.X.Millimetres - middle) + at.Y.Millimetres),
        };
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
