using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Format;
using Duskwright.Plan.Quantities;
using Duskwright.Proposals.Tiles;
using Duskwright.Study;
using Duskwright.Study.Results;

namespace Duskwright.Proposals.Tests.Tiles;

public class WorstTilesTests
{
    // Worn contacts of one ohm on thin wire: a poor set of tiles, so that differences show.
    private static readonly TilePlugs Poor = new(0.05, 1, 0.3, true);
    private const double WireOhms = 0.3 * 0.5488;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    // Every tree on the socket and four tiles by its Prüfer code (H. Prüfer, 1918), each solved and compared: written apart from the search it checks.
    [Fact]
    public void The_worst_arrangement_of_four_tiles_is_the_worst_of_all_hundred_and_twenty_five()
    {
        var study = TownStudy.Of(Tiles(1, 3, 2, 6));
        var worst = Assert.Single(WorstTiles.Of(study, Poor, Cancel));
        double Light(string tile, ItemList<BusPiece> pieces, ItemList<FeedHouse> houses) => study.OnBus("1", pieces, houses).Buildings.Single(b => b.Building == tile).Light.Min();
        var alone = Enumerable.Range(1, 4).ToDictionary(t => t, t => Light($"t{t}", [new BusPiece(0, 1, 0.05 + WireOhms)], [new FeedHouse($"t{t}", 1)]));
        ItemList<FeedHouse> all = Enumerable.Range(1, 4).Select(t => new FeedHouse($"t{t}", t)).ToItemList();
        var codes = from a in Enumerable.Range(0, 5) from b in Enumerable.Range(0, 5) from c in Enumerable.Range(0, 5) select new[] { a, b, c };
        var shares = codes.Select(Pieces).Where(p => Enumerable.Range(1, 4).All(t => p.Count(x => x.From == t) < 4)).Select(pieces =>
        {
            var bus = study.OnBus("1", pieces, all);
            return bus.Buildings.Min(b => b.Light.Min() / alone[b.Building[1] - '0']);
        }).ToList();
        Assert.Equal(125, shares.Count);
        Assert.Equal(shares.Min(), worst.Worst.LightShare, 1e-9);
        Assert.Equal((24, 101), (worst.Rows, worst.Trees));
        Assert.True(worst.IsEvery);
        Assert.True(shares.Max() > shares.Min() + 0.02);
    }

    [Fact]
    public void A_row_of_tiles_is_solved_as_the_same_row_of_houses_in_the_document_is()
    {
        var town = Tiles(1, 3, 2);
        var chained = town with
        {
            Routes = Enumerable.Range(1, 3).Select(i => new Route { Building = $"t{i}", From = i == 1 ? null : $"t{i - 1}", Points = [], Length = Length.FromMillimetres(300) })
                .Append(new Route { Building = "end", From = "t3", Points = [], Length = Length.FromMillimetres(0.001) }).ToItemList(),
            Buildings = town.Buildings.Append(new Building { Name = "end", Leds = 0, SwitchGroup = "A" }).ToItemList(),
        };
        var row = TownStudy.Of(chained);
        var joint = town.Wiring.JointResistance!.Value.Ohms;
        var bus = row.OnBus("1", Enumerable.Range(0, 3).Select(i => new BusPiece(i, i + 1, joint + WireOhms)).ToItemList(), Enumerable.Range(1, 3).Select(i => new FeedHouse($"t{i}", i)).ToItemList());
        Assert.All(bus.Buildings, b => Assert.Equal(row.Buildings.Single(x => x.Building.Key == b.Building).Current!.Value, b.Amps, 1e-9));
        Assert.Equal(row.Packs[0].Load!.Value, bus.Amps, 1e-9);
    }

    [Fact]
    public void No_arrangement_loses_more_than_steady_currents_would_and_the_worst_row_nearly_as_much()
    {
        var worst = Assert.Single(WorstTiles.Of(TownStudy.Of(Tiles(1, 3, 2, 6)), Poor with { WornOhms = 0.3 }, Cancel));
        Assert.InRange(worst.Worst.LostVolts, 0.8 * worst.MostLostVolts, worst.MostLostVolts);

        // By hand: the lightest first, so each plug carries what is left: 2·r·(1·I1 + 2·I2 + 3·I3 + 4·I4).
        var amps = worst.Tiles.Select(t => t.AloneAmps).Order().ToList();
        Assert.Equal(2 * (0.3 + WireOhms) * (amps[0] + (2 * amps[1]) + (3 * amps[2]) + (4 * amps[3])), worst.MostLostVolts, 1e-6);
    }

    [Fact]
    public void Worn_contacts_dim_the_far_tile_and_each_tile_at_the_socket_stays_even()
    {
        var study = TownStudy.Of(Tiles(2, 2, 2, 2));
        var shares = new[] { 0.05, 0.5, 1, 2 }.Select(worn => WorstTiles.Of(study, Poor with { WornOhms = worn }, Cancel)[0]).ToList();
        Assert.Equal(shares.Select(s => s.Worst.LightShare).OrderDescending(), shares.Select(s => s.Worst.LightShare));
        Assert.Equal(shares.Select(s => s.InRow).OrderDescending(), shares.Select(s => s.InRow));
        Assert.All(shares, s => Assert.True(s.EachAtSocket.LightShare > s.Worst.LightShare));
        Assert.All(shares, s => Assert.Equal((8, 2), (s.Worst.Darkened, s.EachAtSocket.Darkened)));
    }

    [Fact]
    public void The_games_table_has_six_tiles_and_every_row_of_them_is_solved()
    {
        var town = TownJson.Read(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "examples", "fennimarsh.json"))).Town!;
        var worst = Assert.Single(WorstTiles.Of(TownStudy.Of(town), new TilePlugs(0.03, 0.3, 0.3, true), Cancel));
        Assert.Equal((6, 720, 0, false), (worst.Tiles.Count, worst.Rows, worst.Trees, worst.IsEvery));
        Assert.Equal(worst.Tiles.Sum(t => t.Lamps), worst.Worst.Darkened);
        Assert.True(worst.Worst.LostVolts <= worst.MostLostVolts);
        Assert.Empty(WorstTiles.Of(TownStudy.Of(town with { Buildings = town.Buildings.Select(b => b with { Tile = null }).ToItemList() }), Poor, Cancel));
    }

    private static Town Tiles(params int[] leds) => new()
    {
        Name = "Tiles",
        Buildings = leds.Select((n, i) => new Building { Name = $"t{i + 1}", Leds = n, SwitchGroup = "A", Tile = $"tile {i + 1}", Resistor = ResistorChoice.Of(Resistance.FromOhms(150)) }).ToItemList(),
        Supplies = [new Supply { Id = "1", Part = "adaptor-5v" }],
        SwitchGroups = [new SwitchGroup { Id = "A", Supply = "1" }],
        Wiring = new WiringChoices { Wire = "cu-0.20", JointResistance = Resistance.FromOhms(0.05) },
    };

    // The tree of a Prüfer code, hung from the socket 0: pieces in order from it.
    private static ItemList<BusPiece> Pieces(int[] code)
    {
        var degree = Enumerable.Range(0, 5).Select(n => 1 + code.Count(c => c == n)).ToArray();
        var edges = new List<(int A, int B)>();
        foreach (var knot in code)
        {
            var leaf = Array.FindIndex(degree, d => d == 1);
            edges.Add((leaf, knot));
            (degree[leaf], degree[knot]) = (0, degree[knot] - 1);
        }

        var last = Enumerable.Range(0, 5).Where(n => degree[n] == 1).ToList();
        edges.Add((last[0], last[1]));
        var pieces = new List<BusPiece>();
        var reached = new HashSet<int> { 0 };
        while (pieces.Count < 4)
        {
            var (a, b) = edges.First(e => reached.Contains(e.A) != reached.Contains(e.B));
            var (from, to) = reached.Contains(a) ? (a, b) : (b, a);
            pieces.Add(new BusPiece(from, to, 1 + WireOhms));
            reached.Add(to);
        }

        return pieces.ToItemList();
    }
}
