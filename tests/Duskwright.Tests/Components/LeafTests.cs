using System.Globalization;
using Bunit;
using Duskwright.Book.Lists;
using Duskwright.Book.Plans;
using Duskwright.Parts;
using Duskwright.Pictures;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Study;
using Duskwright.Study.Figures;
using Duskwright.Study.Findings;
using Duskwright.Towns;
using Microsoft.Extensions.DependencyInjection;

namespace Duskwright.Tests.Components;

/// <summary>The leaves of the pages, compared by what their markup means.</summary>
public sealed class LeafTests : BunitContext
{
    private readonly OpenTown _open = OpenTown.FromFile(null).Town!;

    public LeafTests() => Services.AddSingleton(_open);

    private TownStudy Harbour => _open.Study;

    [Fact]
    public void A_number_is_a_button_that_says_what_it_is()
    {
        var figure = Harbour.Packs[0].Load!;
        Render<Why>(p => p.Add(w => w.Figure, figure)).MarkupMatches(
            $"""<span class="why"><button type="button" class="chip" aria-expanded="false" aria-label="{FigureText.Of(figure)}, {figure.Name}: why?">{FigureText.Of(figure)}</button></span>""");
    }

    [Fact]
    public void Asked_why_a_number_shows_its_formula_its_inputs_and_its_source_and_closes_again()
    {
        var figure = Harbour.Packs[0].Volts!;
        var why = Render<Why>(p => p.Add(w => w.Figure, figure));
        why.Find("button").Click();
        Assert.Equal(figure.Law!.Words, why.Find(".law").TextContent);
        Assert.Equal(figure.Inputs.Select(i => i.Name), why.FindAll(".input > span:first-child").Select(e => e.TextContent));
        Assert.Contains(figure.Source, why.Find(".source").TextContent, StringComparison.Ordinal);
        why.Find("button").Click();
        Assert.Empty(why.FindAll(".because"));
    }

    [Fact]
    public void A_sentence_holds_its_numbers_where_they_belong()
    {
        var (load, volts) = (Harbour.Packs[0].Load!, Harbour.Packs[0].Volts!);
        var said = Render<Said>(p => p.Add(s => s.Words, "Takes {1} at {0}, and no more.").Add(s => s.Figures, [volts, load]));
        Assert.Equal($"Takes {FigureText.Of(load)} at {FigureText.Of(volts)}, and no more.", string.Join(' ', said.Nodes.Select(n => n.TextContent.Trim())).Replace(" ,", ",", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(Severity.Spoils, "spoil", "Spoils the show.")]
    [InlineData(Severity.Look, "warn", "Worth a look.")]
    public void A_note_says_how_bad_it_is_by_word_and_not_by_colour_alone(Severity severity, string mark, string word)
    {
        var note = Render<Note>(p => p.Add(n => n.Finding, Harbour.Findings.First(f => f.Severity == severity)));
        Assert.Contains(mark, note.Find("article").ClassList);
        Assert.Equal(word, note.Find(".word").TextContent);
        Assert.Equal("true", note.Find("svg").GetAttribute("aria-hidden"));
    }

    [Fact]
    public void The_button_of_a_note_mends_the_town_and_undo_takes_it_back()
    {
        var finding = Harbour.Findings.First(f => f.Rule == "no-fuse");
        var before = _open.Town;
        Render<Note>(p => p.Add(n => n.Finding, finding)).Find("button.do").Click();
        Assert.DoesNotContain(Harbour.Findings, f => f.Rule == "no-fuse");
        _open.Undo();
        Assert.Equal(before, _open.Town);
    }

    [Fact]
    public void The_bank_has_a_spot_for_each_pack_that_a_keyboard_reaches_and_presses()
    {
        string? picked = null;
        var bank = Render<DrawnPicture>(p => p.Add(b => b.Drawing, BankPlan.Of(Harbour, Harbour.At(0), "2")).Add(b => b.Picked, id => picked = id));
        var spots = bank.FindAll("[role=button]");
        Assert.Equal(Harbour.Packs.Count, spots.Count);
        Assert.All(spots, s => Assert.Equal("0", s.GetAttribute("tabindex")));
        Assert.Equal("true", Assert.Single(spots, s => s.GetAttribute("aria-pressed") == "true").GetAttribute("aria-pressed"));
        spots[2].KeyDown("Enter");
        Assert.Equal($"pack:{Harbour.Packs[2].Supply.Id}", picked);
    }

    [Fact]
    public void Cells_stand_fuller_at_the_start_than_at_the_end()
    {
        // The outline of a cell's charge begins at its upper end: "M29 52L…".
        double Charge(double hour) => Render<DrawnPicture>(p => p.Add(b => b.Drawing, BankPlan.Of(Harbour, Harbour.At(hour), null)))
            .FindAll(".i-charge, .i-low-charge").Sum(r => -double.Parse(r.GetAttribute("d")!.Split(' ')[1].Split('L')[0], CultureInfo.InvariantCulture));
        Assert.True(Charge(8) < Charge(0));
    }

    [Fact]
    public void A_dial_is_a_slider_with_a_name_and_a_value_in_words_and_tells_what_it_is_moved_to()
    {
        double? told = null;
        var dial = Render<Dial>(p => p
            .Add(d => d.Label, "Hour of the show").Add(d => d.Value, 2.5).Add(d => d.Least, 0).Add(d => d.Most, 8).Add(d => d.Step, 0.25)
            .Add(d => d.Ticks, [new Tick(0, "0"), new Tick(8, "8")]).Add(d => d.Words, "2:30").Add(d => d.After, "of 8 h").Add(d => d.Number, 2.5).Add(d => d.Changed, h => told = h));
        dial.Find("input[type=range]").MarkupMatches("""<input type="range" min="0" max="8" step="0.25" value="2.5" aria-label="Hour of the show" aria-valuetext="2:30 of 8 h" />""");
        dial.Find("input[type=range]").Input("4.75");
        Assert.Equal(4.75, told);
    }

    [Fact]
    public void What_is_typed_on_a_dial_and_is_no_number_moves_nothing()
    {
        var moved = false;
        var dial = Render<Dial>(p => p.Add(d => d.Label, "Light").Add(d => d.Least, 0).Add(d => d.Most, 1).Add(d => d.Step, 0.1).Add(d => d.Words, "").Add(d => d.Typed, _ => moved = true));
        dial.Find("input.typed").Change("bright");
        Assert.False(moved);
    }

    [Fact]
    public void A_list_on_the_screen_is_the_list_in_the_file_cell_by_cell()
    {
        var list = TownLists.Of(Harbour).Single(l => l.Id == "scene");
        var table = Render<ListTable>(p => p.Add(t => t.List, list));
        Assert.Equal(list.Headings, table.FindAll("thead th").Select(h => h.TextContent));
        Assert.Equal(list.Rows.SelectMany(r => r.Select(c => c.Text)), table.FindAll("tbody th, tbody td").Select(c => c.TextContent));
        Assert.All(table.FindAll("tbody th"), h => Assert.Equal("row", h.GetAttribute("scope")));
    }

    [Fact]
    public void A_scene_is_told_in_words_with_its_switches_its_packs_and_the_lamp_that_fades_first()
    {
        var scene = Harbour.Scenes.Single(s => s.Scene.Name == "late evening");
        var notes = Render<SceneNotes>(p => p.Add(n => n.Scene, scene));
        Assert.Equal("late evening", notes.Find("h2").TextContent);
        Assert.Contains($"Switches D, F and K light {scene.Lamps} LEDs in {scene.Buildings.Count} buildings", notes.Markup, StringComparison.Ordinal);
        Assert.Equal(scene.Packs.Count, notes.FindAll("p.speaks").Count);
        Assert.All(scene.Packs.Zip(notes.FindAll("p.speaks")), x => Assert.Contains($"First to fade is {x.First.Worst!.Lamp} of {x.First.Worst.Building}", x.Second.TextContent, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("2,5", 2.5)]
    [InlineData("1 in", 2.54)]
    [InlineData("2 1/2", 2.5)]
    public void A_number_is_typed_as_makers_write_it(string typed, double number)
    {
        var told = 0.0;
        var field = Render<NumberField>(p => p.Add(f => f.Label, "Length of the pair, cm").Add(f => f.Value, 3).Add(f => f.Least, 0.5).Add(f => f.Most, 500).Add(f => f.Changed, n => told = n!.Value));
        field.Find("input").Input(typed);
        Assert.Equal(number, told, 1e-9);
    }

    [Theory]
    [InlineData("13", "\"13\" will not do: a whole number from 1 to 12 is allowed.")]
    [InlineData("2.5", "\"2.5\" will not do: a whole number from 1 to 12 is allowed.")]
    [InlineData("", "A number is missing: a whole number from 1 to 12 is allowed.")]
    public void A_number_that_cannot_be_stays_as_typed_and_is_said_with_what_is_allowed(string typed, string sentence)
    {
        var told = false;
        var field = Render<NumberField>(p => p.Add(f => f.Label, "How many in a row").Add(f => f.Value, 3).Add(f => f.Least, 1).Add(f => f.Most, 12).Add(f => f.Whole, true).Add(f => f.Changed, _ => told = true));
        field.Find("input").Input(typed);
        Assert.False(told);
        Assert.Equal((typed, "true"), (field.Find("input").GetAttribute("value"), field.Find("input").GetAttribute("aria-invalid")));
        Assert.Equal($"{sentence} The answer is still for 3.", field.Find("[role=alert]").TextContent);
        field.Find("input").Input("4");
        Assert.True(told);
        Assert.Empty(field.FindAll("[role=alert]"));
    }

    [Fact]
    public void A_house_on_no_switch_stands_beside_those_that_hang_and_is_hung_by_choice()
    {
        var house = AddBuilding.Named(_open.Town, new Building { Name = "Gatehouse", Leds = 2 }).Added;
        Assert.Empty(_open.Apply(new AddBuilding(house)));
        var sharing = Render<Sharing>(p => p.Add(s => s.Moment, _open.Study.At(0)).Add(s => s.Hour, 0));
        Assert.Contains("Gatehouse", sharing.Find("[aria-label='On no switch yet']").TextContent, StringComparison.Ordinal);
        sharing.Find("[aria-label='Switch of Gatehouse']").Change("E");
        Assert.Equal("E", _open.Town.Buildings.Single(b => b.Key == house.Key).SwitchGroup);
        Assert.Contains("Gatehouse", sharing.Find("[aria-label='Switch E']").TextContent, StringComparison.Ordinal);
        Assert.Empty(sharing.FindAll("[aria-label='On no switch yet']"));
    }

    [Fact]
    public void A_number_of_a_pack_half_typed_is_no_edit()
    {
        var heard = new List<double?>();
        var field = Render<NumberField>(p => p.Add(f => f.Label, "Charge left, %").Add(f => f.Value, 100).Add(f => f.Least, 1).Add(f => f.Most, 100).Add(f => f.WhenLeft, true).Add(f => f.Changed, heard.Add));
        field.Find("input").Input("8");
        field.Find("input").Input("85");
        Assert.Empty(heard);
        field.Find("input").Change("85 %");
        Assert.Equal([85], heard);
    }

    [Fact]
    public void A_number_nobody_has_said_is_an_empty_field_and_one_emptied_is_not_said_any_more()
    {
        var heard = new List<double?>();
        var field = Render<NumberField>(p => p.Add(f => f.Label, "Scale 1 to").Add(f => f.Value, null).Add(f => f.Least, 1).Add(f => f.Most, 2000).Add(f => f.MayBeEmpty, true).Add(f => f.Ratio, true).Add(f => f.WhenLeft, true).Add(f => f.Changed, heard.Add));
        Assert.Equal(("", "not said"), (field.Find("input").GetAttribute("value"), field.Find("input").GetAttribute("placeholder")));
        field.Find("input").Change("1:87");
        field.Find("input").Change("");
        Assert.Equal([87, null], heard);
        field.Find("input").Change("0");
        Assert.EndsWith("from 1 to 2000 is allowed. It is still not said.", field.Find("[role=alert]").TextContent, StringComparison.Ordinal);
        Assert.Equal(2, heard.Count);
    }
}
