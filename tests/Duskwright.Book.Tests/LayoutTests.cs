using Duskwright.Book.Sheets;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;
using Duskwright.Study;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;

namespace Duskwright.Book.Tests;

/// <summary>Nothing on paper lies over anything else or off the page.</summary>
public sealed class LayoutTests
{
    private const double MillimetresPerPoint = 25.4 / 72;

    // Boxes of letters are taller than their ink; two that share less than this are read apart.
    private const double SharedMillimetres = 0.45;

    private static readonly Gen<Town> Towns = Gen.Select(Gen.Int[1, 14], Gen.Int[0, 1_000_000], Gen.Bool, Drawn);

    [Theory]
    [InlineData(PaperSize.A4)]
    [InlineData(PaperSize.Letter)]
    public void Nothing_of_Saltmarrows_book_lies_over_anything_else_or_off_the_page(PaperSize paper) =>
        Assert.Equal("", string.Join("; ", PrintedSaltmarrow.Pages(paper).SelectMany(Troubles)));

    // The first begins with a town whose house had its name on the words of a seam, the second with one whose ten houses had theirs on one another.
    [Theory]
    [InlineData("1S0fxdIYxd42", 8)]
    [InlineData("8Rx3pv64VlU2", 1)]
    public void In_no_town_does_anything_lie_over_anything_else_or_off_the_page(string first, int towns) => Towns.Sample(
        town => Assert.Equal("", string.Join("; ", ReadPage.Of(TownStudy.Of(town), Options(town)).SelectMany(Troubles))),
        seed: first,
        iter: towns,
        threads: 1,
        print: town => $"{town.Buildings.Count} buildings, {(town.Board is null ? "no board" : "a board")}");

    // Some on the one paper, some on the other; some shared with a phone.
    private static BookOptions Options(Town town) =>
        new(town.Buildings.Count % 2 == 0 ? PaperSize.A4 : PaperSize.Letter, PrintedSaltmarrow.Date) { Address = town.Buildings.Count % 3 == 0 ? "http://10.0.0.7:5188" : null };

    private static IEnumerable<string> Troubles(ReadPage read)
    {
        var page = read.Page;
        var words = read.Words.Where(w => w.Text.Any(char.IsLetterOrDigit)).OrderBy(w => w.BoundingBox.Left).ToList();
        foreach (var word in words.Where(w => Leaves(w.BoundingBox, page)))
        {
            yield return $"page {page.Number}: {word.Text} leaves it";
        }

        // A tile of the board shows its part of what lies on several.
        if (!read.Text.StartsWith("The board at full size, ", StringComparison.Ordinal))
        {
            foreach (var box in page.Paths.Where(p => p.IsStroked || p.IsFilled).Select(p => p.GetBoundingRectangle()).OfType<PdfRectangle>().Where(b => Leaves(b, page)))
            {
                yield return $"page {page.Number}: a line leaves it at {box}";
            }
        }

        for (var i = 0; i < words.Count; i++)
        {
            for (var j = i + 1; j < words.Count && words[j].BoundingBox.Left < words[i].BoundingBox.Right; j++)
            {
                if (Shared(words[i].BoundingBox, words[j].BoundingBox))
                {
                    yield return $"page {page.Number}: {words[i].Text} over {words[j].Text}";
                }
            }
        }
    }

    private static bool Leaves(PdfRectangle box, Page page) => box.Left < 0 || box.Bottom < 0 || box.Right > page.Width || box.Top > page.Height;

    private static bool Shared(PdfRectangle one, PdfRectangle other) =>
        (Math.Min(one.Right, other.Right) - Math.Max(one.Left, other.Left)) * MillimetresPerPoint > SharedMillimetres
        && (Math.Min(one.Top, other.Top) - Math.Max(one.Bottom, other.Bottom)) * MillimetresPerPoint > SharedMillimetres;

    private static Town Drawn(int houses, int seed, bool board)
    {
        var random = new Random(seed);
        string[] words = ["Mill", "Old", "Toll house", "Ropery", "St Osyth's", "Lower", "Weir", "Cordwainer", "Upper Staithe", "Gannet"];
        string Name(int i) => $"{words[random.Next(words.Length)]} {words[random.Next(words.Length)]} {i + 1}";
        var names = Enumerable.Range(0, houses).Select(Name).ToList();
        double Side() => 30 + random.Next(50);
        return new Town
        {
            Name = "Osythe Fen",
            Board = board ? new Board { Width = Length.FromMillimetres(1000), Depth = Length.FromMillimetres(700), Bank = new Bank { At = Point.At(880, 40), PocketWidth = Length.FromMillimetres(160), PocketDepth = Length.FromMillimetres(60) } } : null,
            Supplies = [new Supply { Id = "1", Part = "LR6", Series = 3 }, new Supply { Id = "2", Part = "LR14", Series = 3 }],
            SwitchGroups = [new SwitchGroup { Id = "A", Supply = "1", Name = "north side" }, new SwitchGroup { Id = "B", Supply = "2" }],
            Calendar = random.Next(2) == 0 ? null : new BenchCalendar
            {
                Steps = [.. Enumerable.Range(0, houses).Select(i => new CalendarStep { Building = Slug.Of(names[i]), Step = "plan", Start = new DateTime(2026, 12, 4 + (i % 3), 19, 30, 0), Minutes = 10 })],
            },
            Buildings = [.. Enumerable.Range(0, houses).Select(i => new Building
            {
                Name = names[i],
                SwitchGroup = random.Next(4) == 0 ? null : random.Next(2) == 0 ? "A" : "B",
                Leds = random.Next(3) == 0 ? null : 1 + random.Next(6),
                Led = random.Next(3) switch { 0 => "led-3mm-yellow", 1 => "led-0603-warm-white", _ => PartId.Unknown },
                Distance = random.Next(2) == 0 ? Length.FromMillimetres(100 + random.Next(900)) : null,
                Place = board && random.Next(5) > 0 ? new Placement { At = Point.At(110 + (i % 5 * 170) + random.Next(20), 180 + (i / 5 * 170) + random.Next(20)), Width = Length.FromMillimetres(Side()), Depth = Length.FromMillimetres(Side()), Rotation = Angle.FromDegrees(random.Next(360)), Round = random.Next(8) == 0 } : null,
            })],
        };
    }
}
