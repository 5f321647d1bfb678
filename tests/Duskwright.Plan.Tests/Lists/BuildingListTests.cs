using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Plan.Lists;
using Duskwright.Plan.Tests.Examples;

namespace Duskwright.Plan.Tests.Lists;

public class BuildingListTests
{
    [Fact]
    public void The_example_of_ten_lines_is_a_town()
    {
        var town = Sound(Example.Text("ten-lines.csv"));
        Assert.Equal(10, town.Buildings.Count);
        Assert.Equal(("Chandlery", 4, 470.0), (town.Buildings[0].Name, town.Buildings[0].Leds!.Value, town.Buildings[0].Distance!.Value.Millimetres));
        Assert.Equal(("led-0603-amber", 2), (town.Buildings[2].Led, town.Buildings[2].Leds!.Value));
        Assert.Null(town.Buildings[9].Distance);
        Assert.Equal(30, town.Buildings.Sum(b => b.Leds));
    }

    [Fact]
    public void Lines_typed_as_they_come_to_mind_need_no_headings_and_each_has_its_own_mark()
    {
        var town = Sound("Chandlery, 4, 47 cm\nLookout; 1; don't know\nSmokehouse\t2 amber\t62 cm\n\nNet loft, 3");
        Assert.Equal(["Chandlery", "Lookout", "Smokehouse", "Net loft"], town.Buildings.Select(b => b.Name));
        Assert.Equal([4, 1, 2, 3], town.Buildings.Select(b => b.Leds!.Value));
        Assert.Equal([470, null, 620, null], town.Buildings.Select(b => b.Distance?.Millimetres));
        Assert.Equal("led-0603-amber", town.Buildings[2].Led);
    }

    [Theory]
    [InlineData("47 cm", 470)]
    [InlineData("47cm", 470)]
    [InlineData("470 mm", 470)]
    [InlineData("0.47 m", 470)]
    [InlineData("0,47 m", 470)]
    [InlineData("47,5 cm", 475)]
    [InlineData("about 47 cm", 470)]
    [InlineData("~47 cm", 470)]
    [InlineData("18\"", 457.2)]
    [InlineData("18 in", 457.2)]
    [InlineData("18.5 inches", 469.9)]
    [InlineData("2 ft", 609.6)]
    public void A_distance_is_read_in_the_unit_it_is_written_in(string written, double millimetres) =>
        Assert.Equal(millimetres, Sound($"Chandlery; 4; {written}").Buildings[0].Distance!.Value.Millimetres, 9);

    [Fact]
    public void A_decimal_comma_between_typed_commas_is_one() =>
        Assert.Equal(475, Sound("Chandlery, 4, 47,5 cm").Buildings[0].Distance!.Value.Millimetres, 9);

    [Fact]
    public void Inches_in_a_file_of_commas_are_no_quotes() =>
        Assert.Equal(457.2, Sound("Chandlery,4,18\"\nLookout,1,9\"").Buildings[0].Distance!.Value.Millimetres, 9);

    [Theory]
    [InlineData("don't know")]
    [InlineData("don’t know")]
    [InlineData("dont know")]
    [InlineData("?")]
    [InlineData("unknown")]
    [InlineData("Not sure")]
    public void Not_knowing_is_an_answer(string written)
    {
        var building = Sound($"house;LEDs;distance;resistor;colour\nLookout;{written};{written};{written};{written}").Buildings[0];
        Assert.Null(building.Leds);
        Assert.Null(building.Distance);
        Assert.True(building.Resistor!.IsUnknown);
        Assert.Equal(PartId.Unknown, building.Led);
    }

    [Fact]
    public void Columns_may_stand_in_any_order_under_the_words_of_a_maker()
    {
        var town = Sound("""
            How far (cm);Switch;Lamps;Building;State;Resistor;Notes
            47;A;4;Chandlery;glued down;270;paint the door
            62;B;2 amber;Smokehouse;fitted;1k2;
            """);
        var (chandlery, smokehouse) = (town.Buildings[0], town.Buildings[1]);
        Assert.Equal((470.0, "A", 4, BuildingState.Fixed), (chandlery.Distance!.Value.Millimetres, chandlery.SwitchGroup, chandlery.Leds!.Value, chandlery.State));
        Assert.Equal("paint the door", chandlery.Note);
        Assert.Equal(1200, smokehouse.Resistor!.Value!.Value.Ohms);
        Assert.Equal(["A", "B"], town.SwitchGroups.Select(g => g.Id));
    }

    [Theory]
    [InlineData("270", 270)]
    [InlineData("270 Ω", 270)]
    [InlineData("270R", 270)]
    [InlineData("1k", 1000)]
    [InlineData("1.2k", 1200)]
    [InlineData("1,2 kΩ", 1200)]
    [InlineData("4k7", 4700)]
    [InlineData("4R7", 4.7)]
    public void A_resistor_is_read_as_it_is_marked(string written, double ohms)
    {
        // Source: IEC 60062, the letter stands where the decimal point would (from memory).
        Assert.Equal(ohms, Sound($"house;resistor\nChandlery;{written}").Buildings[0].Resistor!.Value!.Value.Ohms, 9);
    }

    [Fact]
    public void No_resistor_is_an_answer_too() =>
        Assert.True(Sound("house;resistor\nTavern;none").Buildings[0].Resistor!.IsNone);

    [Fact]
    public void Further_fields_without_headings_are_told_by_their_looks()
    {
        var building = Sound("Chandlery, 4, 47 cm, 2 storeys, 270 ohm, A, fitted").Buildings[0];
        Assert.Equal((2, 270.0, "A", BuildingState.Fitted), (building.Storeys.Count, building.Resistor!.Value!.Value.Ohms, building.SwitchGroup, building.State));
    }

    [Fact]
    public void A_bare_length_is_taken_as_millimetres_and_that_is_said()
    {
        var read = BuildingList.Read("house,LEDs,distance\nChandlery,4,470");
        Assert.Equal(470, read.Town!.Buildings[0].Distance!.Value.Millimetres);
        Assert.Equal(["Lengths without a unit are taken as millimetres."], read.Assumptions);
    }

    [Fact]
    public void A_column_that_is_not_understood_is_left_out_and_that_is_said() =>
        Assert.StartsWith("The column \"mood\" was left out; understood are house, ", Assert.Single(BuildingList.Read("house,LEDs,distance,mood\nChandlery,4,47 cm,grim").Assumptions), StringComparison.Ordinal);

    [Theory]
    [InlineData("house,LEDs,distance,width,depth\nChandlery,3,47 cm,98 mm,62 mm", "Chandlery: its width and depth are left out, because no storeys or windows are told.")]
    [InlineData("house,LEDs,distance,width\nChandlery,3,47 cm,98 mm", "Chandlery: its width is left out, because no storeys or windows are told.")]
    [InlineData("house,LEDs,storeys,windows,depth\nShed,0,1,2,40 mm", "Shed: its storeys, windows and depth are left out, because it has no LEDs to put in rooms.")]
    public void What_a_house_is_told_to_measure_and_has_no_place_in_the_town_is_said(string list, string said) =>
        Assert.Equal([said], BuildingList.Read(list).Assumptions);

    [Fact]
    public void Storeys_and_a_width_give_rooms_lamps_and_windows_and_that_is_said()
    {
        var read = BuildingList.Read("house,LEDs,distance,storeys,width,depth\nChandlery,3,47 cm,2,98 mm,62 mm");
        var building = read.Town!.Buildings[0];
        Assert.Null(building.Leds);
        Assert.Equal([2, 1], building.Storeys.Select(s => s.Rooms.Count));
        Assert.Equal(3, building.DescribedLamps().Count());
        Assert.Equal([49, 49, 98], building.Storeys.SelectMany(s => s.Rooms).Select(r => r.Width!.Value.Millimetres));
        Assert.All(building.Storeys.SelectMany(s => s.Rooms), r => Assert.Single(r.Windows));
        Assert.Equal(
            "Chandlery: assumed 2 storeys, a room for each LED, shared from the ground floor up, and 3 windows in the front, evenly spaced and as wide as the wall between them.",
            Assert.Single(read.Assumptions));
    }

    [Fact]
    public void Windows_assumed_lie_apart_and_on_their_wall() =>
        Gen.Select(Gen.Int[1, 12], Gen.Int[1, 4], Gen.Int[1, 20], Gen.Double[20, 300]).Sample(
            (leds, storeys, windows, width) =>
            {
                var text = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"house,LEDs,storeys,windows,width\nMill,{leds},{storeys},{windows},{width:F2} mm");
                var building = Sound(text).Buildings[0];
                Assert.Equal(windows, building.Storeys.Sum(s => s.Rooms.Sum(r => r.Windows.Count)));
                Assert.Equal(leds, building.DescribedLamps().Count());
                Assert.Equal(storeys, building.Storeys.Count);
                Assert.All(building.Storeys, s =>
                {
                    var along = s.Rooms.SelectMany(r => r.Windows).Select(w => (From: w.FromLeft!.Value.Millimetres, To: w.FromLeft.Value.Millimetres + w.Width.Millimetres)).ToList();
                    Assert.All(along, w => Assert.True(w.From > 0 && w.To < width + 0.01));
                    Assert.All(along.Zip(along.Skip(1)), p => Assert.True(p.First.To < p.Second.From));
                });
            },
            iter: 300);

    [Fact]
    public void Fewer_lamps_than_storeys_leave_the_upper_ones_dark()
    {
        var building = Sound("house,LEDs,storeys,width\nLookout,1,3,40 mm").Buildings[0];
        Assert.Equal([1, 0, 0], building.Storeys.Select(s => s.Rooms.Sum(r => r.Lamps.Count)));
    }

    [Theory]
    [InlineData("Chandlery, some, 47 cm", "line 1", "list-leds", "Line 1, Chandlery: \"some\" is no number of LEDs; a whole number is allowed.")]
    [InlineData("Chandlery, 4, 47 furlongs", "line 1", "list-length", "Line 1, Chandlery: \"47 furlongs\" is no distance; a number in mm, cm, m or inches is allowed.")]
    [InlineData("house,distance\nChandlery,far away", "line 2", "list-length", "Line 2, Chandlery: \"far away\" is no distance; a number in mm, cm, m or inches is allowed.")]
    [InlineData("house;distance\nChandlery;1,200 mm", "line 2", "list-length", "Line 2, Chandlery: \"1,200 mm\" is no distance; a number in mm, cm, m or inches is allowed.")]
    [InlineData("Chandlery; 4 plaid; 47 cm", "line 1", "list-colour", "Line 1, Chandlery: \"plaid\" is no colour of lamp that is known; known are warm white, white, amber, orange, yellow, red, green, blue, flickering, flicker.")]
    [InlineData("house;resistor\nChandlery;some", "line 2", "list-resistor", "Line 2, Chandlery: \"some\" is no resistor; a number of ohms above 0, \"none\" or \"don't know\" is allowed.")]
    [InlineData("house;state\nChandlery;half", "line 2", "list-state", "Line 2, Chandlery: \"half\" is no state of building; idea, shell, fitted and fixed are allowed.")]
    [InlineData("house;storeys\nChandlery;13", "line 2", "list-storeys", "Line 2, Chandlery: \"13\" is no number of storeys; 1 to 12 are allowed.")]
    [InlineData("house;LEDs\nChandlery;201", "line 2", "led-count", "Line 2: Chandlery has 201 LEDs; 0 to 200 are allowed.")]
    [InlineData("Chandlery; 4\n\nChandlery; 3", "line 3", "named-twice", "Line 3: There is another building called \"chandlery\".")]
    [InlineData("Chandlery; 4; 0 mm", "line 1", "size", "Line 1: Chandlery: distance_mm is 0; more than 0 and at most 20000 mm is allowed.")]
    [InlineData("Chandlery, 2.5, 47 cm", "line 1", "list-leds", "Line 1, Chandlery: \"2.5\" is no number of LEDs; a whole number is allowed.")]
    [InlineData("Chandlery, 2, 1,200 mm", "line 1", "list-length", "Line 1, Chandlery: \"1,200 mm\" is no distance; a number in mm, cm, m or inches is allowed.")]
    [InlineData("Chandlery, 2, 30 km", "line 1", "list-length", "Line 1, Chandlery: \"30 km\" is no distance; a number in mm, cm, m or inches is allowed.")]
    [InlineData("Chandlery, 2, 30 cm\nchandlery, 3, 40 cm", "line 2", "named-twice", "Line 2: There is another building called \"chandlery\".")]
    [InlineData("; 4; 47 cm", "line 1", "no-name", "Line 1: A building has a name without letters or digits.")]
    [InlineData("house,LEDs\n\"Chandlery,4", "line 2", "list-quote", "Line 2: a quote is opened and never closed.")]
    [InlineData("house,LEDs\nChandlery,4,47 cm", "line 2", "list-fields", "Line 2 has 3 fields, and there are 2 headings.")]
    [InlineData("LEDs,distance\n4,47 cm", "line 1", "list-headings", "Line 1: no heading says where the names stand.")]
    [InlineData("", "line 1", "empty", "The list holds no building.")]
    [InlineData("house,LEDs,distance", "line 1", "empty", "The list holds no building.")]
    public void A_line_that_cannot_be_read_is_named(string text, string path, string rule, string message)
    {
        var read = BuildingList.Read(text);
        Assert.Null(read.Town);
        var problem = Assert.Single(read.Problems);
        Assert.Equal((path, rule, message), (problem.Path, problem.Rule, problem.Message));
        Assert.EndsWith(".", problem.Remedy, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(new byte[] { 0x43, 0x61, 0x66, 0xE9, 0x2C, 0x32 })] // "Café,2" in Latin-1
    [InlineData(new byte[] { 0x41, 0x00, 0x2C, 0x00, 0x32, 0x00 })] // "A,2" in UTF-16 without its mark
    [InlineData(new byte[] { 0xFF, 0xFE, 0x00, 0xD8 })] // half a character
    public void Letters_that_cannot_be_known_are_not_guessed_at(byte[] bytes)
    {
        var read = BuildingList.Read(bytes);
        Assert.Null(read.Town);
        Assert.Equal(("list-encoding", "The list is not UTF-8 text."), (Assert.Single(read.Problems).Rule, read.Problems[0].Message));
    }

    // Source: Unicode Standard, section 23.8: a file of UTF-16 begins with FF FE or FE FF, one of UTF-8 may begin with EF BB BF.
    [Theory]
    [InlineData("utf-8", false)]
    [InlineData("utf-8", true)]
    [InlineData("utf-16", true)]
    [InlineData("utf-16BE", true)]
    public void A_list_is_read_as_spreadsheets_save_it(string encoding, bool marked)
    {
        var coded = System.Text.Encoding.GetEncoding(encoding);
        byte[] bytes = [.. marked ? coded.GetPreamble() : [], .. coded.GetBytes("Café,2,30 cm")];
        Assert.Equal("Café", BuildingList.Read(bytes).Town!.Buildings[0].Name);
    }

    [Fact]
    public void A_field_left_empty_says_nothing()
    {
        var building = Sound("Inn,2,,,fixed,-").Buildings[0];
        Assert.Equal((2, null, BuildingState.Fixed), (building.Leds, building.Distance, building.State));
    }

    [Fact]
    public void All_bad_lines_are_named_at_once() =>
        Assert.Equal(["line 2", "line 4", "line 5"], BuildingList.Read("house;LEDs;distance\nA;some;47 cm\nB;2;30 cm\nC;2;far\nD;300;9 cm").Problems.Select(p => p.Path));

    [Fact]
    public void Any_text_is_a_town_or_has_problems_and_never_an_exception() =>
        Gen.String[Gen.Char["abÄ0123456789,;\t\n\r\"' .?-cmkR°"], 0, 200].Sample(
            text =>
            {
                var read = BuildingList.Read(text);
                Assert.True(read.Town is null == read.Problems.Count > 0);
                Assert.All(read.Town is { } town ? TownChecks.Of(town) : [], p => Assert.Fail(p.ToString()));
            },
            iter: 3000);

    private static Town Sound(string text)
    {
        var read = BuildingList.Read(text);
        Assert.Empty(read.Problems);
        return read.Town!;
    }

    [Theory]
    [InlineData("Mill house 4 LEDs 60 cm", "Mill house", 4, 600.0)]
    [InlineData("Mill house 4 leds 47,5cm", "Mill house", 4, 475.0)]
    [InlineData("Lock cottage 2 3 lamps about 2 m", "Lock cottage 2", 3, 2000.0)]
    [InlineData("Forge 2 1 m", "Forge", 2, 1000.0)]
    [InlineData("Church - 3 - 80 cm", "Church", 3, 800.0)]
    [InlineData("School: 4", "School", 4, null)]
    [InlineData("Barn 1 lamp", "Barn", 1, null)]
    [InlineData("Chandler's, three, 47 cm", "Chandler's", 3, 470.0)]
    [InlineData("Pier 2", "Pier 2", null, null)]
    [InlineData("Smith - the old forge", "Smith - the old forge", null, null)]
    public void A_line_without_commas_is_read_as_it_would_be_said_and_a_number_in_a_name_stays_there(string line, string name, int? leds, double? distance)
    {
        var building = Assert.Single(Sound(line).Buildings);
        Assert.Equal((name, leds, distance), (building.Name, building.Leds, building.Distance?.Millimetres));
    }
}
