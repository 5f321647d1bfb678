using Duskwright.Book.Sheets;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;
using Duskwright.Study;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;

namespace Duskwright.Book.Tests.Tiles;

/// <summary>The board at full size, read back from the printed file by a library that did not write it.</summary>
public sealed class BoardTilesTests
{
    private const double MillimetresPerPoint = 25.4 / 72;

    // A registration ring is 4 mm across; no drill of these towns is.
    private const double Registration = 4;

    private static readonly (string Id, double X, double Y, double Bore)[] Bored = [("n", 40, 30, 3), ("e", 455, 190, 6.5), ("s", 250, 366, 5), ("w", 171, 120, 8)];

    [Theory]
    [InlineData(PaperSize.A4)]
    [InlineData(PaperSize.Letter)]
    public void A_hole_lies_as_far_from_the_boards_edges_on_paper_as_on_the_board(PaperSize paper)
    {
        var found = Tiles(Board(500, 400), paper).SelectMany(Rings).ToList();
        Assert.All(Bored, hole => Assert.Contains(found, r => Near(r.Across, hole.Bore) && Near(r.X, hole.X) && Near(r.Y, hole.Y)));
    }

    // Each tile tells where its rings lie on the board; a ring of the seam is told by both its neighbours.
    [Fact]
    public void Crosses_on_a_seam_are_at_one_place_of_the_board_on_both_its_tiles()
    {
        var tiles = Tiles(Board(500, 400), PaperSize.A4);
        var crosses = tiles.SelectMany(t => Rings(t).Where(r => Near(r.Across, Registration))).ToList();
        Assert.NotEmpty(crosses);
        Assert.All(crosses, one => Assert.Equal(2, crosses.Count(other => Near(one.X, other.X) && Near(one.Y, other.Y))));
    }

    [Fact]
    public void Every_hole_of_Saltmarrow_is_printed_whole_on_a_tile()
    {
        var town = PrintedSaltmarrow.Town;
        var found = Tiles(town, PaperSize.A4).SelectMany(t => Rings(t).Where(r => r.OnPage && !Near(r.Across, Registration))).ToList();
        Assert.All(town.Board!.FeedHoles, hole => Assert.Contains(found, r => Near(r.X, hole.At.X.Millimetres) && Near(r.Y, hole.At.Y.Millimetres)));
    }

    [Fact]
    public void A_turned_house_is_outlined_at_full_size_where_it_stands()
    {
        var house = new Building { Name = "Ropery", Leds = 1, Place = new Placement { At = Point.At(90, 80), Width = Length.FromMillimetres(80), Depth = Length.FromMillimetres(60), Rotation = Angle.FromDegrees(90) } };
        var tile = Assert.Single(Tiles(Board(150, 140) with { Buildings = [house] }, PaperSize.A4));
        var edge = Edge(tile, 150, 140);
        Assert.Contains(Boxes(tile), b => Near(b.Width * MillimetresPerPoint, 60) && Near(b.Height * MillimetresPerPoint, 80)
            && Near((b.Centroid.X - edge.Left) * MillimetresPerPoint, 90) && Near((b.Centroid.Y - edge.Bottom) * MillimetresPerPoint, 80));
    }

    [Fact]
    public void A_tile_with_nothing_on_it_is_not_printed()
    {
        var town = Board(900, 180);
        var tile = Assert.Single(Tiles(town with { Board = town.Board! with { FeedHoles = [new FeedHole { Id = "one", At = Point.At(30, 40), Bore = Length.FromMillimetres(3) }] } }, PaperSize.A4));
        Assert.Contains("A1", Heading(tile), StringComparison.Ordinal);
    }

    // A pair of the wire is two leads of 0.24 mm outside, so 0.48 mm across when twisted; nine pairs make 1.2 × √9 × 0.48 = 1.73 mm: the drill of 2 mm.
    // Common practice, no source: bundles are 1.2 √n leads across, drills come in steps of half a millimetre.
    [Fact]
    public void A_hole_that_names_no_drill_gets_the_least_that_passes_its_pairs()
    {
        var town = Board(150, 140) with
        {
            OwnParts = new Plan.Parts.PartList
            {
                Wires = [new Plan.Parts.WirePart { Id = "bench", Name = "bench wire", CopperDiameter = Length.FromMillimetres(0.2), OuterDiameter = Length.FromMillimetres(0.24), PerMetre = Resistance.FromOhms(0.55), Source = "stated for the test" }],
            },
            Wiring = new WiringChoices { Wire = "bench" },
            Buildings = [.. Enumerable.Range(1, 9).Select(i => new Building { Name = $"Cottage {i}", Leds = 1, FeedHole = "all" })],
        };
        var tile = Assert.Single(Tiles(town with { Board = town.Board! with { FeedHoles = [new FeedHole { Id = "all", At = Point.At(70, 60) }] } }, PaperSize.A4));
        Assert.Contains(Rings(tile), r => Near(r.Across, 2) && Near(r.X, 70) && Near(r.Y, 60));
        Assert.Contains("ø 2", string.Join(' ', tile.Page.GetWords().Select(w => w.Text)), StringComparison.Ordinal);
    }

    private static Town Board(double width, double depth) => new()
    {
        Name = "Fen End",
        Board = new Board
        {
            Width = Length.FromMillimetres(width),
            Depth = Length.FromMillimetres(depth),
            FeedHoles = [.. Bored.Where(b => b.X < width && b.Y < depth).Select(b => new FeedHole { Id = b.Id, At = Point.At(b.X, b.Y), Bore = Length.FromMillimetres(b.Bore) })],
        },
    };

    private static List<Tile> Tiles(Town town, PaperSize paper)
    {
        using var stream = new MemoryStream();
        Assert.True(BenchBook.WritePdf(TownStudy.Of(town), new BookOptions(paper, new DateOnly(2026, 11, 25)) { Choice = BookChoice.Sheet("tiles") }, stream, cancel: TestContext.Current.CancellationToken) > 1);
        var book = PdfDocument.Open(stream.ToArray());
        return [.. book.GetPages().Skip(1).Select(p => new Tile(p, town.Board!.Width.Millimetres, town.Board.Depth.Millimetres))];
    }

    private static string Heading(Tile tile) => string.Join(' ', tile.Page.GetWords().Take(8).Select(w => w.Text));

    private static IEnumerable<PdfRectangle> Boxes(Tile tile) => tile.Page.Paths.Select(p => p.GetBoundingRectangle()).OfType<PdfRectangle>();

    private static PdfRectangle Edge(Tile tile, double width, double depth) => Boxes(tile).First(b => Near(b.Width * MillimetresPerPoint, width) && Near(b.Height * MillimetresPerPoint, depth));

    // Rings of the page, placed on the board by its own outline.
    private static IEnumerable<(double Across, double X, double Y, bool OnPage)> Rings(Tile tile)
    {
        var edge = Edge(tile, tile.Width, tile.Depth);
        return from path in tile.Page.Paths
               where path.Any(s => s.Commands.OfType<PdfSubpath.CubicBezierCurve>().Any())
               let box = path.GetBoundingRectangle()
               where box is not null && Near(box.Value.Width * MillimetresPerPoint, box.Value.Height * MillimetresPerPoint)
               select (box.Value.Width * MillimetresPerPoint, (box.Value.Centroid.X - edge.Left) * MillimetresPerPoint, (box.Value.Centroid.Y - edge.Bottom) * MillimetresPerPoint, box.Value.Left > 0 && box.Value.Bottom > 0 && box.Value.Right < tile.Page.Width && box.Value.Top < tile.Page.Height);
    }

    private static bool Near(double one, double other) => Math.Abs(one - other) < 0.1;

    private sealed record Tile(Page Page, double Width, double Depth);
}
