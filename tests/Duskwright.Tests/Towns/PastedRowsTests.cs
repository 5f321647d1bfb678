using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;
using Duskwright.Towns;

namespace Duskwright.Tests.Towns;

/// <summary>Rows pasted from a spreadsheet: what will do is one edit, what will not stays with a sentence.</summary>
public sealed class PastedRowsTests
{
    private static readonly Town Town = new()
    {
        Name = "Fenhithe",
        Buildings =
        [
            new Building { Name = "Mill", Leds = 1, State = BuildingState.Fitted, Resistor = ResistorChoice.Of(Resistance.FromOhms(270)), Note = "by the weir" },
            new Building { Name = "Eel house", Storeys = [new Storey { Rooms = [new Room { Lamps = [new Lamp(), new Lamp()] }] }] },
        ],
    };

    [Fact]
    public void Forty_rows_are_one_edit()
    {
        var text = "House\tLEDs\tDistance cm\n" + string.Join('\n', Enumerable.Range(1, 40).Select(i => $"Cot {i}\t{1 + (i % 3)}\t{20 + i}"));
        var read = PastedRows.Of(Town, text);
        Assert.Empty(read.Sentences);
        Assert.Equal("", read.Left);
        var after = read.Edit!.Apply(Town);
        Assert.Equal(42, after.Buildings.Count);
        Assert.Equal(210, after.Buildings[2].Distance!.Value.Millimetres);
        Assert.Equal("Take in 40 rows", read.Edit.Label);
    }

    [Fact]
    public void A_row_of_a_house_that_is_there_changes_what_it_says_and_nothing_else()
    {
        var mill = PastedRows.Of(Town, "house\tLEDs\tgroup\nMill\t3\tB").Edit!.Apply(Town);
        Assert.Equal((3, "B", BuildingState.Fitted, "by the weir"), (mill.Buildings[0].Leds, mill.Buildings[0].SwitchGroup, mill.Buildings[0].State, mill.Buildings[0].Note));
        Assert.Equal(270, mill.Buildings[0].Resistor!.Value!.Value.Ohms);
        Assert.Equal(["B"], mill.SwitchGroups.Select(g => g.Id));
    }

    [Fact]
    public void A_bare_length_in_a_row_is_in_the_makers_unit()
    {
        var pasted = PastedRows.Of(Town, "Weir\t2\t12,5", LengthRule.All[1]);
        Assert.Empty(pasted.Sentences);
        Assert.Equal(125, pasted.Edit!.Apply(Town).Buildings.Single(b => b.Name == "Weir").Distance!.Value.Millimetres, 1e-9);
    }

    [Fact]
    public void Bad_rows_stay_with_their_headings_and_a_sentence_each()
    {
        var read = PastedRows.Of(Town, "house\tLEDs\r\nBarn\tmany\r\nForge\t2\r\nForge\t3\r\nEel house\t5\r\n");
        Assert.Equal(["Forge"], read.Edit!.Buildings.Select(b => b.Name));
        Assert.Equal(3, read.Sentences.Count);
        Assert.StartsWith("Row 2, “Barn”: ", read.Sentences[0], StringComparison.Ordinal);
        Assert.Contains("earlier row", read.Sentences[1], StringComparison.Ordinal);
        Assert.Contains("Eel house has 2 LEDs drawn in its rooms", read.Sentences[2], StringComparison.Ordinal);
        Assert.Equal("house\tLEDs\nBarn\tmany\nForge\t3\nEel house\t5", read.Left);
    }

    [Fact]
    public void Rows_without_headings_are_read_by_their_looks()
    {
        var read = PastedRows.Of(Town, "Forge, 2, 30 cm");
        Assert.Equal(300, Assert.Single(read.Edit!.Buildings).Distance!.Value.Millimetres);
    }

    [Theory]
    [InlineData("")]
    [InlineData("\n \n")]
    [InlineData("house\tLEDs")]
    public void Nothing_pasted_is_no_edit(string text) => Assert.Null(PastedRows.Of(Town, text).Edit);
}
