using System.Buffers.Binary;
using System.Globalization;
using System.Xml.Linq;
using Duskwright.Book.Drawings;
using Duskwright.Book.Houses;
using Duskwright.Book.Plans;
using Duskwright.Book.Sheets;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Plan.Quantities;
using Duskwright.Study;

namespace Duskwright.Book.Tests;

/// <summary>The drawings that screen and paper share.</summary>
public class DrawingTests
{
    private static readonly Town Saltmarrow = PrintedSaltmarrow.Town;
    private static readonly TownStudy Study = PrintedSaltmarrow.Study;

    // Source: IEC 60062:2016, table of colours: figures, multiplier, tolerance gold 5 %.
    [Theory]
    [InlineData(270, "red, violet, brown, gold")]
    [InlineData(47, "yellow, violet, black, gold")]
    [InlineData(4.7, "yellow, violet, gold, gold")]
    [InlineData(1, "brown, black, gold, gold")]
    [InlineData(10_000, "brown, black, orange, gold")]
    [InlineData(910, "white, brown, brown, gold")]
    [InlineData(2_200_000, "red, red, green, gold")]
    public void A_resistor_has_the_bands_of_the_standard(double ohms, string bands) => Assert.Equal(bands, ColourBands.Of(ohms));

    [Theory]
    [InlineData(0.5)]
    [InlineData(271)]
    [InlineData(1.2e8)]
    public void What_two_figures_cannot_say_has_no_bands(double ohms) => Assert.Null(ColourBands.Of(ohms));

    [Fact]
    public void Every_drawing_is_a_well_formed_file_in_true_millimetres()
    {
        var board = BoardPlan.Of(Study, Study.At(0), new BoardView { WithLengths = true, Pen = 5 });
        var root = XDocument.Parse(SvgFile.Of(board, Palette.Paper)).Root!;
        Assert.Equal("246.4mm", root.Attribute("width")!.Value);
        foreach (var house in Study.Buildings.Where(b => b.Lamps.Count > 0))
        {
            foreach (var drawing in LampCard.Of(house).Concat(WiringSketch.Of(Study, house)).Append(HouseElevation.Of(house, WallSide.Front, 1, 1)))
            {
                var svg = XDocument.Parse(SvgFile.Of(drawing, Palette.Paper)).Root!;
                Assert.Equal($"{drawing.Width.ToString("0.##", CultureInfo.InvariantCulture)}mm", svg.Attribute("width")!.Value);
            }
        }
    }

    // ISO 128: what is hidden is dashed. What wire goes round is shaded too.
    [Fact]
    public void What_lies_under_the_board_is_drawn_dashed_with_its_name_and_not_at_night()
    {
        Scenery Under(SceneryKind kind, double left) => new() { Kind = kind, Points = [Point.At(left, 300), Point.At(left + 40, 300), Point.At(left + 40, 330), Point.At(left, 330)] };
        var board = Saltmarrow.Board!;
        var town = TownStudy.Of(Saltmarrow with { Board = board with { Scenery = [.. board.Scenery, Under(SceneryKind.Obstacle, 100), Under(SceneryKind.Free, 200), Under(SceneryKind.Hatch, 300) with { Label = "way to the packs" }] } });
        List<Mark> Marks(bool dusk) => [.. BoardPlan.Of(town, town.At(0), new BoardView { Dusk = dusk }).Parts.SelectMany(p => p.Marks)];
        string[] names = ["obstacle", "free for wire", "way to the packs"];
        var day = Marks(dusk: false);
        Assert.Equal(3, day.OfType<Stroke>().Count(s => s.Ink == Inks.Hidden));
        Assert.Single(day.OfType<Stroke>(), s => s.Ink == Inks.Shade && day.OfType<Stroke>().Any(h => h.Ink == Inks.Hidden && h.Path == s.Path));
        Assert.Equal(names, names.Where(n => day.OfType<Lettering>().Any(l => l.Text == n)));
        Assert.DoesNotContain(Marks(dusk: true).OfType<Stroke>(), s => s.Ink == Inks.Hidden);
    }

    [Fact]
    public void A_photograph_lies_to_scale_between_the_ground_and_what_can_be_chosen_on_the_screen_and_not_on_paper()
    {
        var board = Saltmarrow.Board!;
        var laid = TownStudy.Of(Saltmarrow with { Board = board with { Photograph = new Photograph { Picture = new string('a', 64), At = Point.At(-40, 30), Width = Length.FromMillimetres(700), Depth = Length.FromMillimetres(500) } } });
        var drawing = BoardPlan.Of(laid, laid.At(0), new BoardView { Photograph = "/there?a&b" });
        var parts = drawing.Parts.Select(SvgFragment.Of).ToList();
        var at = parts.FindIndex(p => p.Contains("<image", StringComparison.Ordinal));
        Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"href=\"/there?a&amp;b\" x=\"-40\" y=\"{board.Depth.Millimetres - 530:0.##}\" width=\"700\" height=\"500\""), parts[at], StringComparison.Ordinal);
        Assert.NotNull(drawing.Parts[at].Clip);
        Assert.True(at > parts.FindLastIndex(p => p.Contains("i-water", StringComparison.Ordinal)));
        Assert.True(at < drawing.Parts.ToList().FindIndex(p => p.Key is not null));
        Assert.DoesNotContain("image", SvgFile.Of(drawing, Palette.Paper), StringComparison.Ordinal);
        Assert.DoesNotContain(BoardPlan.Of(laid, laid.At(0), new BoardView()).Parts, p => p.Marks.Any(m => m is Underlay));
    }

    [Fact]
    public void Under_the_hand_wireways_run_beneath_the_houses_and_only_a_chosen_one_is_seen_through_them()
    {
        var way = Saltmarrow.Board!.Wireways[0].Id;
        List<string?> Keys(string? chosen) => [.. BoardPlan.Of(Study, Study.At(0), new BoardView { ByHand = true, Chosen = chosen }).Parts.Select(p => p.Key)];
        var (plain, picked) = (Keys(null), Keys($"way:{way}"));
        Assert.InRange(plain.IndexOf($"way:{way}"), 0, plain.IndexOf("chandlery"));
        Assert.True(picked.IndexOf($"way:{way}") > picked.IndexOf("chandlery"));
        Assert.Contains($"corner:0:way:{way}", picked);
    }

    [Theory]
    [InlineData(-900, -900)]
    [InlineData(5000, 300)]
    [InlineData(200, 5000)]
    public void Who_looks_from_off_the_board_is_drawn_whole_at_its_edge(double x, double y)
    {
        var town = TownStudy.Of(Saltmarrow with { Show = Saltmarrow.Show with { ViewingPositions = [new ViewingPosition { Name = "from the long bench", At = Point.At(x, y) }] } });
        var drawing = BoardPlan.Of(town, town.At(0), new BoardView { ByHand = true });
        var name = drawing.Parts.Single(p => p.Key == "eye:from the long bench").Marks.OfType<Lettering>().Single();
        var half = name.Text.Length * Inks.Small.Size * drawing.Pen * 0.25;
        Assert.InRange(name.X, drawing.Left + half, drawing.Left + drawing.Width - half);
        Assert.InRange(name.Y, drawing.Top + (Inks.Small.Size * drawing.Pen), drawing.Top + drawing.Height);
    }

    // Source: ISO/IEC 15948:2004 (Portable Network Graphics), clauses 5.2 and 11.2.2: signature, then width and height, most significant byte first.
    [Fact]
    public void A_bitmap_has_as_many_dots_as_its_millimetres_ask_for()
    {
        var card = LampCard.Of(Study.Buildings.Single(b => b.Building.Key == "chandlery"))[0];
        using var stream = new MemoryStream();
        PngFile.Write(card, Palette.Paper, 10, stream);
        var bytes = stream.ToArray();
        Assert.Equal([0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A], bytes[..8]);
        Assert.Equal(10 * (62 + 6), BinaryPrimitives.ReadInt32BigEndian(bytes.AsSpan(16)));
        Assert.Equal(10 * (40 + 18 + 6), BinaryPrimitives.ReadInt32BigEndian(bytes.AsSpan(20)));
    }

    [Fact]
    public void A_name_with_marks_of_markup_stays_a_name()
    {
        var named = Saltmarrow with { Name = "<script>alert(1)</script> & \"sons\"" };
        var study = PrintedSaltmarrow.Edited(named);
        var drawing = BoardPlan.Of(study, study.At(0), new BoardView());
        Assert.DoesNotContain("<script", string.Concat(drawing.Parts.Select(SvgFragment.Of)), StringComparison.Ordinal);
        Assert.DoesNotContain("<script", SvgFile.Of(drawing, Palette.Paper), StringComparison.Ordinal);
        Assert.NotNull(XDocument.Parse($"<g>{string.Concat(drawing.Parts.Select(SvgFragment.Of))}</g>").Root);
    }

    [Fact]
    public void Every_house_with_a_place_can_be_chosen_on_the_board_and_says_its_name()
    {
        var drawing = BoardPlan.Of(Study, Study.At(0), new BoardView());
        var things = drawing.Parts.Where(p => p.Key is not null).ToDictionary(p => p.Key!, p => p.Words!);
        Assert.All(Study.Buildings.Where(b => b.Building.Place is not null), b => Assert.StartsWith(b.Building.Name, things[b.Building.Key], StringComparison.Ordinal));
        Assert.All(Study.Packs, p => Assert.Contains($"pack:{p.Supply.Id}", things.Keys));
    }

    [Fact]
    public void Every_drawing_of_a_book_has_a_file_name_of_its_own_whatever_the_houses_are_called()
    {
        var twins = Saltmarrow with { Buildings = Saltmarrow.Buildings.Select((b, i) => b with { Id = $"../{i}", Name = "../etc/" + new string('x', 300) }).ToItemList() };
        var names = BookDrawings.Of(PrintedSaltmarrow.Edited(twins), new BookOptions(PaperSize.A4, new DateOnly(2026, 11, 25))).Select(d => d.Name).ToList();
        Assert.Equal(names.Count, names.Distinct(StringComparer.OrdinalIgnoreCase).Count());
        Assert.All(names, n => Assert.Matches("^[a-z0-9-]{1,80}$", n));
    }

    [Fact]
    public void The_first_seven_circuits_are_told_apart_without_colour() =>
        Assert.Equal(7, Enumerable.Range(1, 7).Select(c => string.Join(' ', Inks.Wire(c).Dash)).Distinct().Count());

    [Fact]
    public void The_stylesheet_of_the_screen_has_every_ink_and_hand_once()
    {
        var css = InkSheet.Css();
        Assert.All(Inks.All, i => Assert.Equal(2, css.Split($".i-{i.Name}{{").Length));
        Assert.All(Inks.Hands, h => Assert.Equal(2, css.Split($".h-{h.Name}{{").Length));
    }

    [Fact]
    public void Every_lamp_of_a_house_stands_once_in_its_wiring_with_joints_numbered_through()
    {
        foreach (var house in Study.Buildings.Where(b => b.Lamps.Count > 0))
        {
            var words = WiringSketch.Of(Study, house).SelectMany(d => d.Parts).SelectMany(p => p.Marks).OfType<Lettering>().ToList();
            Assert.All(house.Lamps, l => Assert.Single(words, w => w.Text == l.Name && w.Hand == Inks.Ref));
            var joints = words.Where(w => w.Hand == Inks.JointNumber).Select(w => int.Parse(w.Text, CultureInfo.InvariantCulture)).Order().ToList();
            Assert.Equal(Enumerable.Range(1, 2 + house.Lamps.Count + house.Lamps.Count(l => l.Resistor.Value > 0)), joints);
        }
    }
}
