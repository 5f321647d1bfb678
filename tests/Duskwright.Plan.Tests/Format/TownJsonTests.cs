using System.Text;
using Duskwright.Plan.Document;
using Duskwright.Plan.Format;

namespace Duskwright.Plan.Tests.Format;

public class TownJsonTests
{
    private const string Bare = """{ "format": "duskwright-town", "version": 2, "name": "Saltmarrow" }""";

    [Fact]
    public void The_unit_of_a_quantity_stands_in_the_name_of_its_field()
    {
        var town = Read("""
            { "format": "duskwright-town", "version": 2, "name": "T",
              "buildings": [ { "name": "Lookout", "leds": 1, "distance_mm": 470, "resistor_ohm": 820 } ],
              "show": { "hours_per_day_h": 6.5, "room_illuminance_lx": 30 } }
            """);
        Assert.Equal(470, town.Buildings[0].Distance!.Value.Millimetres);
        Assert.Equal(820, town.Buildings[0].Resistor!.Value!.Value.Ohms);
        Assert.Equal(6.5, town.Show.HoursPerDay.Hours);
        Assert.Equal(30, town.Show.RoomIlluminance!.Value.Lux);
    }

    [Fact]
    public void Comments_and_commas_too_many_are_forgiven() =>
        Assert.Equal("T", Read("""
            { // a town
              "format": "duskwright-town", "version": 2, /* so far */ "name": "T",
              "buildings": [ { "name": "Lookout", }, ], }
            """).Name);

    [Theory]
    [InlineData("\"none\"", true, false)]
    [InlineData("\"unknown\"", false, true)]
    public void A_resistor_may_be_none_or_unknown(string written, bool isNone, bool isUnknown)
    {
        var resistor = Read(Bare.Replace(" }", $", \"wiring\": {{ \"resistor_ohm\": {written} }} }}", StringComparison.Ordinal)).Wiring.Resistor!;
        Assert.Equal(isNone, resistor.IsNone);
        Assert.Equal(isUnknown, resistor.IsUnknown);
    }

    [Theory]
    [InlineData("\"unknown\"")]
    [InlineData("null")]
    public void A_distance_may_be_unknown(string written)
    {
        var building = Read(Bare.Replace(" }", $", \"buildings\": [ {{ \"name\": \"Lookout\", \"distance_mm\": {written}, \"pair_length_mm\": {written} }} ] }}", StringComparison.Ordinal)).Buildings[0];
        Assert.Null(building.Distance);
        Assert.Null(building.PairLength);
    }

    [Fact]
    public void A_null_says_nothing() =>
        Assert.Equal(Read(Bare), Read(Bare.Replace(" }", ", \"buildings\": null, \"show\": null, \"wiring\": { \"led\": null } }", StringComparison.Ordinal)));

    [Fact]
    public void A_file_may_begin_with_a_byte_order_mark() =>
        Assert.Equal("Saltmarrow", TownJson.Read((byte[])[0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(Bare)]).Town!.Name);

    [Fact]
    public void Letters_of_any_script_stay_readable()
    {
        var text = TownJson.Write(new Town { Name = "Möwenstein 北 “old”" });
        Assert.Contains("Möwenstein 北 “old”", text, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(OtherEncodings))]
    public void Another_encoding_gets_one_clear_sentence(byte[] bytes)
    {
        var problem = Assert.Single(TownJson.Read(bytes).Problems);
        Assert.Equal("wrong-encoding", problem.Rule);
        Assert.Equal("The file is not UTF-8 text.", problem.Message);
        Assert.Equal("Save it again as UTF-8.", problem.Remedy);
    }

    public static TheoryData<byte[]> OtherEncodings() =>
    [
        (byte[])[.. Encoding.Unicode.Preamble, .. Encoding.Unicode.GetBytes(Bare)],
        (byte[])[.. Encoding.BigEndianUnicode.Preamble, .. Encoding.BigEndianUnicode.GetBytes(Bare)],
        Encoding.Unicode.GetBytes(Bare),
        Encoding.Latin1.GetBytes(Bare.Replace("Saltmarrow", "Möwe", StringComparison.Ordinal)),
    ];

    [Fact]
    public void A_file_above_16_MB_is_not_read()
    {
        var problem = Assert.Single(TownJson.Read(new byte[TownJson.MostBytes + 1]).Problems);
        Assert.Equal("too-large", problem.Rule);
    }

    [Fact]
    public void A_file_of_just_16_MB_is_read()
    {
        var bytes = new byte[TownJson.MostBytes];
        Array.Fill(bytes, (byte)' ');
        Encoding.UTF8.GetBytes(Bare).CopyTo(bytes, 0);
        Assert.Equal("Saltmarrow", TownJson.Read(bytes).Town!.Name);
    }

    [Fact]
    public void A_town_of_a_newer_version_is_refused_in_a_sentence()
    {
        var problem = Assert.Single(TownJson.Read(Bare.Replace("2", "3", StringComparison.Ordinal)).Problems);
        Assert.Equal("newer-version", problem.Rule);
        Assert.Equal("This town was written by a newer Duskwright (version 3); this one reads up to version 2.", problem.Message);
    }

    [Theory]
    [InlineData("""{ "format": "duskwright-town", "version": 0, "name": "Old", "hours": 6 }""", 1)]
    [InlineData("""{ "format": "duskwright-town", "version": 0, "name": "Old", "hours": 6, "show": { "days": 3 } }""", 3)]
    public void A_town_of_version_0_has_its_hours_moved_into_the_show(string old, int days)
    {
        var town = Read(old);
        Assert.Equal(6, town.Show.HoursPerDay.Hours);
        Assert.Equal(days, town.Show.Days);
        Assert.Contains("\"version\": 2", TownJson.Write(town), StringComparison.Ordinal);
    }

    [Fact]
    public void Hours_at_the_top_are_unknown_to_later_versions() =>
        Assert.Equal("unknown-field", Assert.Single(TownJson.Read(Bare.Replace(" }", ", \"hours\": 6 }", StringComparison.Ordinal)).Problems).Rule);

    [Fact]
    public void Half_of_a_file_at_any_cut_is_a_problem_and_never_an_exception()
    {
        var whole = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "examples", "tavern.json"));
        Assert.Empty(TownJson.Read(whole).Problems);
        var last = whole.LastIndexOf('}');
        for (var cut = 0; cut <= last; cut++)
        {
            var read = TownJson.Read(whole[..cut]);
            Assert.Null(read.Town);
            Assert.Single(read.Problems);
        }
    }

    [Fact]
    public void A_file_with_one_letter_damaged_is_read_or_is_a_problem_and_never_an_exception()
    {
        var whole = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "examples", "tavern.json"));
        Gen.Select(Gen.Int[0, whole.Length - 1], Gen.Char["{}[]\",:0-9.eExn\\/ "]).Sample(
            (at, letter) =>
            {
                var read = TownJson.Read($"{whole[..at]}{letter}{whole[(at + 1)..]}");
                Assert.True(read.Town is null == read.Problems.Count > 0);
                Assert.All(read.Problems, p => Assert.True(p.Message.EndsWith('.') && p.Remedy.EndsWith('.') && p.Rule.Length > 0, p.ToString()));
            },
            iter: 2000);
    }

    private static Town Read(string text)
    {
        var read = TownJson.Read(text);
        Assert.Empty(read.Problems);
        return read.Town!;
    }
}
