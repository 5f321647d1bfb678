using System.Text;
using Duskwright.Book.Lists;
using Duskwright.Plan.Document;
using Duskwright.Study;

namespace Duskwright.Book.Tests.Lists;

/// <summary>The lists of a town, on the screen and in files.</summary>
public class TownListsTests
{
    private static readonly TownStudy Saltmarrow = PrintedSaltmarrow.Study;

    [Fact]
    public void Every_row_has_a_cell_under_every_heading_and_no_two_headings_are_alike() =>
        Assert.All(TownLists.Of(Saltmarrow), list =>
        {
            Assert.NotEmpty(list.Rows);
            Assert.Equal(list.Headings.Count, list.Headings.Distinct().Count());
            Assert.All(list.Rows, row => Assert.Equal(list.Headings.Count, row.Count));
        });

    [Fact]
    public void A_town_with_scenes_has_a_list_of_them_and_one_without_has_none()
    {
        Assert.Contains("scene", TownLists.Of(Saltmarrow).Select(l => l.Id));
        Assert.DoesNotContain("scene", TownLists.Of(PrintedSaltmarrow.Edited(Saltmarrow.Town with { Scenes = [] })).Select(l => l.Id));
    }

    [Fact]
    public void The_cut_list_rounds_every_lead_up_and_none_by_a_millimetre_or_more()
    {
        var lengths = Column(List("cut"), "Length of each, mm").Select(c => c.Number!.Value);
        Assert.All(Saltmarrow.CutList.Zip(lengths), pair => Assert.InRange(pair.Second - (pair.First.Length.Value * 1000), -1e-6, 0.999999));
    }

    [Fact]
    public void The_lamps_of_the_load_list_are_the_lamps_of_the_town() =>
        Assert.Equal(Saltmarrow.Lamps.Count, Column(List("load"), "LEDs").Sum(c => c.Number));

    [Fact]
    public void The_workbook_holds_every_list_cell_by_cell_with_numbers_as_numbers()
    {
        using var stream = new MemoryStream();
        XlsxFile.Write(TownLists.Of(Saltmarrow), stream);
        using var book = new Workbook(stream.ToArray());
        Assert.Equal(TownLists.Of(Saltmarrow).Select(l => l.Title), book.Sheets);
        Assert.All(TownLists.Of(Saltmarrow), list =>
        {
            var rows = book.Rows(list.Title);
            Assert.Equal(list.Headings, rows[0].Select(c => c.Text));
            Assert.Equal(list.Rows.Select(r => string.Join('|', r.Select(c => $"{c.Text};{c.Number}"))), rows.Skip(1).Select(r => string.Join('|', r.Select(c => $"{c.Text};{c.Number}"))));
        });
    }

    [Fact]
    public void The_file_of_a_list_holds_its_cells_in_order()
    {
        var text = Encoding.UTF8.GetString(CsvFile.Of(List("switch")));
        Assert.StartsWith("\uFEFFSwitch,Name,Pack,LEDs,", text, StringComparison.Ordinal);
        Assert.Equal(Saltmarrow.SwitchList.Count + 1, text.Split("\r\n", StringSplitOptions.RemoveEmptyEntries).Length);
    }

    // Source: RFC 4180, section 2, rules 5 to 7: fields with a comma, a quote or a line break stand between quotes, quotes doubled.
    // An apostrophe before =, +, - and @ is common practice, no source.
    [Theory]
    [InlineData("The Bell, lower", "\"The Bell, lower\"")]
    [InlineData("The \"Bell\"", "\"The \"\"Bell\"\"\"")]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("@home", "'@home")]
    [InlineData("Bell = inn", "Bell = inn")]
    public void A_name_of_any_letters_stays_one_cell_and_is_never_a_formula(string name, string cell)
    {
        var study = TownStudy.Of(new Town { Name = "T", Buildings = [new Building { Name = name, Leds = 1 }] });
        var line = Encoding.UTF8.GetString(CsvFile.Of(TownLists.Of(study).Single(l => l.Id == "load"))).Split("\r\n")[1];
        Assert.Contains($",{cell},1,", line, StringComparison.Ordinal);
    }

    [Fact]
    public void A_town_without_houses_has_lists_with_headings_alone()
    {
        using var stream = new MemoryStream();
        XlsxFile.Write(TownLists.Of(TownStudy.Of(new Town { Name = "T" })), stream);
        using var book = new Workbook(stream.ToArray());
        Assert.Equal(["Part", "For", "Needed", "To spare", "Buy", "Sold as", "Usual cost"], Assert.Single(book.Rows("Parts list")).Select(c => c.Text));
    }

    private static TownList List(string id) => TownLists.Of(Saltmarrow).Single(l => l.Id == id);

    private static IEnumerable<ListCell> Column(TownList list, string heading)
    {
        var index = list.Headings.ToList().IndexOf(heading);
        return list.Rows.Select(r => r[index]);
    }
}
