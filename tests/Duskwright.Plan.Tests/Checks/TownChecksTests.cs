using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Plan.Format;
using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Tests.Checks;

/// <summary>Towns that are well written and cannot be.</summary>
public class TownChecksTests
{
    [Theory]
    [InlineData("\"scale_ratio\": 0.5", "scale_ratio", "scale", "The scale is 1:0.5; 1:1 to 1:2000 is allowed.")]
    [InlineData("\"buildings\": [ { \"name\": \"Tavern\" }, { \"name\": \"tavern\" } ]", "buildings[1]", "named-twice", "There is another building called \"tavern\".")]
    [InlineData("\"buildings\": [ { \"name\": \"…\" } ]", "buildings[0]", "no-name", "A building has a name without letters or digits.")]
    [InlineData("\"buildings\": [ { \"name\": \"A\", \"leds\": -1 } ]", "buildings[0].leds", "led-count", "A has -1 LEDs; 0 to 200 are allowed.")]
    [InlineData("\"buildings\": [ { \"name\": \"A\", \"leds\": 201 } ]", "buildings[0].leds", "led-count", "A has 201 LEDs; 0 to 200 are allowed.")]
    [InlineData("\"buildings\": [ { \"name\": \"A\", \"leds\": 3, \"storeys\": [ { \"rooms\": [ { \"lamps\": [ {} ] } ] } ] } ]", "buildings[0].leds", "led-count", "A is said to have 3 LEDs, and its rooms hold 1.")]
    [InlineData("\"buildings\": [ { \"name\": \"A\", \"distance_mm\": 0 } ]", "buildings[0].distance_mm", "size", "A: distance_mm is 0; more than 0 and at most 20000 mm is allowed.")]
    [InlineData("\"buildings\": [ { \"name\": \"A\", \"storeys\": [ { \"height_mm\": -3 } ] } ]", "buildings[0].storeys[0].height_mm", "size", "A storey of A: height_mm is -3; more than 0 and at most 20000 mm is allowed.")]
    [InlineData("\"buildings\": [ { \"name\": \"A\", \"storeys\": [ { \"rooms\": [ { \"depth_mm\": 0 } ] } ] } ]", "buildings[0].storeys[0].rooms[0].depth_mm", "size", "A room of A: depth_mm is 0; more than 0 and at most 20000 mm is allowed.")]
    [InlineData("\"buildings\": [ { \"name\": \"A\", \"storeys\": [ { \"rooms\": [ { \"lamps\": [ { \"behind_pane_mm\": 0 } ] } ] } ] } ]", "buildings[0].storeys[0].rooms[0].lamps[0].behind_pane_mm", "size", "A lamp of A sits 0 mm behind its pane; more than 0 and at most 1000 mm is allowed.")]
    [InlineData("\"buildings\": [ { \"name\": \"A\", \"storeys\": [ { \"rooms\": [ { \"windows\": [ { \"width_mm\": 0, \"height_mm\": 9 } ] } ] } ] } ]", "buildings[0].storeys[0].rooms[0].windows[0]", "size", "A window of A is 0 × 9 mm; both must be more than 0.")]
    [InlineData("\"buildings\": [ { \"name\": \"A\", \"storeys\": [ { \"rooms\": [ { \"windows\": [ { \"width_mm\": 9, \"height_mm\": 9, \"from_left_mm\": -1 } ] } ] } ] } ]", "buildings[0].storeys[0].rooms[0].windows[0]", "window-off-wall", "A window of A begins left of its wall or under its floor; 0 mm or more is allowed.")]
    [InlineData("\"buildings\": [ { \"name\": \"A\", \"place\": { \"at\": { \"x_mm\": 5, \"y_mm\": 5 }, \"width_mm\": 40 }, \"storeys\": [ { \"rooms\": [ { \"windows\": [ { \"width_mm\": 12, \"height_mm\": 9, \"from_left_mm\": 30 } ] } ] } ] } ]", "buildings[0].storeys[0].rooms[0].windows[0].width_mm", "window-off-wall", "A window of A reaches to 42 mm on a wall 40 mm wide.")]
    [InlineData("\"buildings\": [ { \"name\": \"A\", \"storeys\": [ { \"height_mm\": 30, \"rooms\": [ { \"windows\": [ { \"width_mm\": 9, \"height_mm\": 20, \"sill_mm\": 12 } ] } ] } ] } ]", "buildings[0].storeys[0].rooms[0].windows[0].height_mm", "window-off-wall", "A window of A reaches to 32 mm in a storey 30 mm high.")]
    [InlineData("\"buildings\": [ { \"name\": \"A\", \"place\": { \"at\": { \"x_mm\": 5, \"y_mm\": 5 }, \"outline\": [ { \"x_mm\": 0, \"y_mm\": 0 }, { \"x_mm\": 9, \"y_mm\": 0 } ] } } ]", "buildings[0].place.outline", "too-few-points", "A has an outline of 2 points; at least three are needed.")]
    [InlineData("\"buildings\": [ { \"name\": \"A\", \"place\": { \"at\": { \"x_mm\": 5, \"y_mm\": 5 }, \"outline\": [ { \"x_mm\": 0, \"y_mm\": 0 }, { \"x_mm\": 9, \"y_mm\": 9 }, { \"x_mm\": 9, \"y_mm\": 0 }, { \"x_mm\": 0, \"y_mm\": 9 } ] } } ]", "buildings[0].place.outline", "crosses-itself", "The outline of A crosses itself.")]
    [InlineData("\"buildings\": [ { \"name\": \"A\", \"led\": \"led-9mm-plaid\" } ]", "buildings[0].led", "points-at-nothing", "There is no lamp \"led-9mm-plaid\" in the catalogue or among your own parts.")]
    [InlineData("\"buildings\": [ { \"name\": \"A\", \"wire\": \"string\" } ]", "buildings[0].wire", "points-at-nothing", "There is no wire \"string\" in the catalogue or among your own parts.")]
    [InlineData("\"buildings\": [ { \"name\": \"A\", \"switch_group\": \"Z\" } ]", "buildings[0].switch_group", "points-at-nothing", "There is no switch group \"Z\".")]
    [InlineData("\"buildings\": [ { \"name\": \"A\", \"feed_hole\": \"h9\" } ]", "buildings[0].feed_hole", "points-at-nothing", "There is no feed hole \"h9\".")]
    [InlineData("\"buildings\": [ { \"name\": \"A\", \"place\": { \"at\": { \"x_mm\": 5, \"y_mm\": 5 }, \"level\": \"cellar\" } } ]", "buildings[0].place.level", "points-at-nothing", "There is no level \"cellar\".")]
    [InlineData("\"switch_groups\": [ { \"id\": \"A\", \"supply\": \"9\" } ]", "switch_groups[0].supply", "points-at-nothing", "There is no supply \"9\".")]
    [InlineData("\"scenes\": [ { \"name\": \"late\", \"on\": [ \"A\" ] } ]", "scenes[0].on[0]", "points-at-nothing", "There is no switch group \"A\".")]
    [InlineData("\"routes\": [ { \"building\": \"mill\", \"points\": [], \"length_mm\": 10 } ]", "routes[0].building", "points-at-nothing", "There is no building \"mill\".")]
    [InlineData("\"buildings\": [ { \"name\": \"A\" } ], \"routes\": [ { \"building\": \"a\", \"points\": [], \"length_mm\": 10 }, { \"building\": \"a\", \"points\": [], \"length_mm\": 20 } ]", "routes[1].building", "said-twice", "The route of a is said once already.")]
    [InlineData("\"log\": [ { \"date\": \"2026-03-07\", \"kind\": \"seal\", \"building\": \"mill\" } ]", "log[0].building", "points-at-nothing", "There is no building \"mill\".")]
    [InlineData("\"log\": [ { \"date\": \"2026-03-07\", \"kind\": \"reading\", \"current_ma\": -21.5 } ]", "log[0].current_ma", "reading", "The log of 2026-03-07 reads -21.5 mA; 0 or more is allowed.")]
    [InlineData("\"log\": [ { \"date\": \"2026-03-07\", \"kind\": \"reading\", \"voltage_v\": -4.5 } ]", "log[0].voltage_v", "reading", "The log of 2026-03-07 reads -4.5 V; 0 or more is allowed.")]
    [InlineData("\"log\": [ { \"date\": \"2026-03-07\", \"kind\": \"reading\", \"lit\": -1 } ]", "log[0].lit", "reading", "The log of 2026-03-07 counts -1 lamps lit; 0 or more is allowed.")]
    [InlineData("\"supplies\": [ { \"id\": \"1\", \"part\": \"LR99\" } ]", "supplies[0].part", "points-at-nothing", "There is no cell or supply \"LR99\" in the catalogue or among your own parts.")]
    [InlineData("\"supplies\": [ { \"id\": \"1\", \"part\": \"LR6\", \"fuse\": \"nail\" } ]", "supplies[0].fuse", "points-at-nothing", "There is no fuse \"nail\" in the catalogue or among your own parts.")]
    [InlineData("\"wiring\": { \"led\": \"unknown\" }", "wiring.led", "points-at-nothing", "There is no lamp \"unknown\" in the catalogue or among your own parts.")]
    [InlineData("\"wiring\": { \"wire\": \"unknown\" }", "wiring.wire", "points-at-nothing", "There is no wire \"unknown\" in the catalogue or among your own parts.")]
    [InlineData("\"wiring\": { \"tail_wire\": \"unknown\" }", "wiring.tail_wire", "points-at-nothing", "There is no wire \"unknown\" in the catalogue or among your own parts.")]
    [InlineData("\"wiring\": { \"return_wire\": \"unknown\" }", "wiring.return_wire", "points-at-nothing", "There is no wire \"unknown\" in the catalogue or among your own parts.")]
    [InlineData("\"supplies\": [ { \"id\": \"1\", \"part\": \"unknown\" } ]", "supplies[0].part", "points-at-nothing", "There is no cell or supply \"unknown\" in the catalogue or among your own parts.")]
    [InlineData("\"supplies\": [ { \"id\": \"1\", \"part\": \"LR6\", \"fuse\": \"unknown\" } ]", "supplies[0].fuse", "points-at-nothing", "There is no fuse \"unknown\" in the catalogue or among your own parts.")]
    [InlineData("\"supplies\": [ { \"id\": \"1\", \"part\": \"LR6\", \"series\": 0 } ]", "supplies[0].series", "cell-count", "Supply 1 has 0 cells in series; 1 to 24 are allowed.")]
    [InlineData("\"supplies\": [ { \"id\": \"1\", \"part\": \"LR6\", \"parallel\": 25 } ]", "supplies[0].parallel", "cell-count", "Supply 1 has 25 cells in parallel; 1 to 24 are allowed.")]
    [InlineData("\"supplies\": [ { \"id\": \"1\", \"part\": \"LR6\", \"charge_left\": 1.2 } ]", "supplies[0].charge_left", "share", "Supply 1 has 1.2 of its charge left; 0 (empty) to 1 (fresh) is allowed.")]
    [InlineData("\"supplies\": [ { \"id\": \"1\", \"part\": \"LR6\" }, { \"id\": \"1\", \"part\": \"LR6\" } ]", "supplies[1]", "named-twice", "There is another supply called \"1\".")]
    [InlineData("\"show\": { \"hours_per_day_h\": 0 }", "show.hours_per_day_h", "hours", "The show lasts 0 hours a day; more than 0 and at most 24 is allowed.")]
    [InlineData("\"show\": { \"hours_per_day_h\": 24.5 }", "show.hours_per_day_h", "hours", "The show lasts 24.5 hours a day; more than 0 and at most 24 is allowed.")]
    [InlineData("\"show\": { \"days\": 0 }", "show.days", "days", "The show lasts 0 days; 1 to 366 are allowed.")]
    [InlineData("\"show\": { \"dim_share\": 1.5 }", "show.dim_share", "share", "show.dim_share is 1.5; 0 to 1 is allowed.")]
    [InlineData("\"wiring\": { \"spare_share\": -0.1 }", "wiring.spare_share", "share", "wiring.spare_share is -0.1; 0 to 1 is allowed.")]
    public void What_cannot_be_is_named_with_its_path(string field, string path, string rule, string message)
    {
        var problem = Assert.Single(Problems(field));
        Assert.Equal((path, rule, message), (problem.Path, problem.Rule, problem.Message));
        Assert.EndsWith(".", problem.Remedy, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"bank\": { \"at\": { \"x_mm\": 1201, \"y_mm\": 5 } }", "board.bank.at", "off-the-board", "The bank lies at 1201, 5 mm, off the board of 1200 × 800 mm.")]
    [InlineData("\"feed_holes\": [ { \"id\": \"h1\", \"at\": { \"x_mm\": 5, \"y_mm\": 900 } } ]", "board.feed_holes[0].at", "off-the-board", "Feed hole h1 lies at 5, 900 mm, off the board of 1200 × 800 mm.")]
    [InlineData("\"feed_holes\": [ { \"id\": \"h1\", \"at\": { \"x_mm\": 5, \"y_mm\": 9 }, \"bore_mm\": 0 } ]", "board.feed_holes[0].bore_mm", "size", "Feed hole h1 has a bore of 0 mm; more than 0 and at most 100 mm is allowed.")]
    [InlineData("\"wireways\": [ { \"id\": \"w\", \"points\": [ { \"x_mm\": 5, \"y_mm\": 9 } ] } ]", "board.wireways[0].points", "too-few-points", "Wireway w has 1 points; a line needs at least two.")]
    [InlineData("\"wireways\": [ { \"id\": \"w\", \"points\": [ { \"x_mm\": 5, \"y_mm\": 9 }, { \"x_mm\": -5, \"y_mm\": 9 } ] } ]", "board.wireways[0].points", "off-the-board", "Wireway w lies at -5, 9 mm, off the board of 1200 × 800 mm.")]
    [InlineData("\"scenery\": [ { \"kind\": \"water\", \"points\": [ { \"x_mm\": 5, \"y_mm\": 9 } ] } ]", "board.scenery[0].points", "too-few-points", "Scenery of kind water needs at least 3 points and has 1.")]
    [InlineData("\"scenery\": [ { \"kind\": \"tree\", \"points\": [ { \"x_mm\": 5, \"y_mm\": 801 } ] } ]", "board.scenery[0].points", "off-the-board", "Scenery of kind tree lies at 5, 801 mm, off the board of 1200 × 800 mm.")]
    [InlineData("\"scenery\": [ { \"kind\": \"quay\", \"label\": \"the mole\", \"points\": [ { \"x_mm\": 5, \"y_mm\": 8 }, { \"x_mm\": -0.5, \"y_mm\": 8 } ] } ]", "board.scenery[0].points", "off-the-board", "Scenery of kind quay, the mole, lies at -0.5, 8 mm, off the board of 1200 × 800 mm.")]
    [InlineData("\"scenery\": [ { \"kind\": \"tree\", \"size_mm\": 0, \"points\": [ { \"x_mm\": 5, \"y_mm\": 9 } ] } ]", "board.scenery[0].size_mm", "size", "Scenery of kind tree has a size of 0 mm; more than 0 and at most 20000 mm is allowed.")]
    [InlineData("\"levels\": [ { \"id\": \"quay\", \"outline\": [ { \"x_mm\": 5, \"y_mm\": 9 }, { \"x_mm\": 1201, \"y_mm\": 9 }, { \"x_mm\": 9, \"y_mm\": 99 } ] } ]", "board.levels[0].outline", "off-the-board", "Level quay lies at 1201, 9 mm, off the board of 1200 × 800 mm.")]
    [InlineData("\"levels\": [ { \"id\": \"quay\", \"outline\": [ { \"x_mm\": 5, \"y_mm\": 9 } ] } ]", "board.levels[0].outline", "too-few-points", "Level quay has an outline of 1 points; at least three are needed.")]
    public void What_cannot_lie_on_the_board_is_named_with_its_path(string field, string path, string rule, string message)
    {
        var problem = Assert.Single(Problems($"\"board\": {{ \"width_mm\": 1200, \"depth_mm\": 800, {field} }}"));
        Assert.Equal((path, rule, message), (problem.Path, problem.Rule, problem.Message));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(20_001)]
    public void A_board_has_a_size_that_fits_a_room(double width)
    {
        var problem = Assert.Single(Problems(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"\"board\": {{ \"width_mm\": {width}, \"depth_mm\": 800 }}")));
        Assert.Equal(("board.width_mm", "board-size"), (problem.Path, problem.Rule));
    }

    [Fact]
    public void Scenery_may_touch_the_edge_and_a_reading_may_be_nothing() =>
        Assert.Empty(Problems("\"board\": { \"width_mm\": 1200, \"depth_mm\": 800, \"scenery\": [ { \"kind\": \"quay\", \"points\": [ { \"x_mm\": 0, \"y_mm\": 0 }, { \"x_mm\": 1200, \"y_mm\": 800 } ] } ] }, \"log\": [ { \"date\": \"2026-03-07\", \"kind\": \"reading\", \"current_ma\": 0, \"voltage_v\": 0, \"lit\": 0 } ]"));

    [Fact]
    public void A_house_that_is_turned_over_the_edge_lies_off_the_board()
    {
        // A square of 60 mm turned by 45° reaches 30·√2 = 42.4 mm from its middle.
        const string House = "\"board\": { \"width_mm\": 1200, \"depth_mm\": 800 }, \"buildings\": [ { \"name\": \"A\", \"place\": { \"at\": { \"x_mm\": MIDDLE, \"y_mm\": 400 }, \"width_mm\": 60, \"depth_mm\": 60, \"rotation_deg\": 45 } } ]";
        Assert.Empty(Problems(House.Replace("MIDDLE", "42", StringComparison.Ordinal)));
        var problem = Assert.Single(Problems(House.Replace("MIDDLE", "40", StringComparison.Ordinal)));
        Assert.Equal(("buildings[0].place", "A corner of A lies at -2.4, 400 mm, off the board of 1200 × 800 mm."), (problem.Path, problem.Message));
    }

    [Fact]
    public void All_problems_are_named_at_once_in_the_order_of_the_document()
    {
        var problems = Problems("\"buildings\": [ { \"name\": \"A\", \"leds\": 300, \"switch_group\": \"Z\" } ], \"supplies\": [ { \"id\": \"1\", \"part\": \"LR6\", \"series\": 0 } ], \"show\": { \"days\": 0 }");
        Assert.Equal(["buildings[0].leds", "supplies[0].series", "buildings[0].switch_group", "show.days"], problems.Select(p => p.Path));
    }

    [Fact]
    public void A_remedy_for_a_wrong_reference_names_what_is_there()
    {
        var problem = Assert.Single(Problems("\"switch_groups\": [ { \"id\": \"A\" }, { \"id\": \"B\" } ], \"buildings\": [ { \"name\": \"H\", \"switch_group\": \"C\" } ]"));
        Assert.Equal("Known are A, B.", problem.Remedy);
    }

    [Fact]
    public void What_is_merely_unwise_is_no_problem() =>
        Assert.Empty(Problems("\"supplies\": [ { \"id\": \"1\", \"part\": \"CR2032\" } ], \"switch_groups\": [ { \"id\": \"A\", \"supply\": \"1\" } ], \"buildings\": [ { \"name\": \"H\", \"leds\": 60, \"led\": \"led-0603-white\", \"resistor_ohm\": \"none\", \"switch_group\": \"A\" } ]"));

    [Fact]
    public void A_sound_town_stays_sound_when_its_parts_are_sound() =>
        RandomTowns.Sound.Sample(town => Assert.Empty(TownChecks.Of(town)), iter: 100);

    [Fact]
    public void A_LED_too_many_is_found_in_any_town() =>
        RandomTowns.Sound.Sample(
            town =>
            {
                var crowded = town with { Buildings = town.Buildings.Add(new Building { Name = "Crowd", Leds = 201, PairLength = Length.FromMillimetres(5) }) };
                Assert.Equal($"buildings[{town.Buildings.Count}].leds", Assert.Single(TownChecks.Of(crowded)).Path);
            },
            iter: 50);

    private static ItemList<Problem> Problems(string field) =>
        TownJson.Read($"{{ \"format\": \"duskwright-town\", \"version\": 1, \"name\": \"T\", {field} }}").Problems;
}
