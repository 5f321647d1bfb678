using Duskwright.Plan.Format;

namespace Duskwright.Plan.Tests.Format;

/// <summary>Documents that cannot be read at all, or whose fields are not those of a town.</summary>
public class BrokenDocumentTests
{
    [Theory]
    [InlineData("", "", "empty", "The file is empty.")]
    [InlineData("  \n ", "", "empty", "The file is empty.")]
    [InlineData("[1, 2]", "", "not-a-town", "The file holds no town: a town is written between { and }.")]
    [InlineData("null", "", "not-a-town", "The file holds no town: a town is written between { and }.")]
    [InlineData("{ }", "format", "not-a-town", "The first field must be \"format\": \"duskwright-town\".")]
    [InlineData("{ \"format\": \"recipe\" }", "format", "not-a-town", "The first field must be \"format\": \"duskwright-town\".")]
    [InlineData("{ \"format\": \"duskwright-town\", \"version\": \"one\" }", "version", "not-a-town", "The version must be a whole number from 0 to 2.")]
    [InlineData("{ \"format\": \"duskwright-town\",\n  \"version\": 1", "line 2, column 15", "cut-short", "The file ends too early, at line 2, column 15.")]
    [InlineData("{", "line 1, column 2", "cut-short", "The file ends too early, at line 1, column 2.")]
    [InlineData("{ \"format\": \"duskwright-town\",\n  \"versi", "line 2, column 9", "cut-short", "The file ends too early, at line 2, column 9.")]
    [InlineData("{ \"format\": \"duskwright-town\",\n  \"version\" 1 }", "line 2, column 13", "not-json", "The text cannot be understood at line 2, column 13.")]
    [InlineData("{ \"name\": \"ö\" oops }", "line 1, column 15", "not-json", "The text cannot be understood at line 1, column 15.")]
    [InlineData("{ \"name\": \"a\", \"name\": \"b\" }", "", "field-twice", "The field \"name\" is written twice between the same pair of brackets.")]
    public void A_file_that_is_no_town_gets_one_sentence(string text, string path, string rule, string message)
    {
        var problem = Assert.Single(TownJson.Read(text).Problems);
        Assert.Equal((path, rule, message), (problem.Path, problem.Rule, problem.Message));
    }

    [Fact]
    public void Brackets_nested_without_end_get_one_sentence()
    {
        var problem = Assert.Single(TownJson.Read(new string('[', 1000)).Problems);
        Assert.Equal("too-deep", problem.Rule);
        Assert.Equal("Brackets are nested deeper than 32 at line 1, column 33.", problem.Message);
    }

    [Theory]
    [InlineData("\"bildings\": []", "bildings", "unknown-field", "There is no field \"bildings\" here; \"buildings\" may have been meant.")]
    [InlineData("\"colour_of_the_sky\": 1", "colour_of_the_sky", "unknown-field", "There is no field \"colour_of_the_sky\" here.")]
    [InlineData("\"board\": { \"width_in\": 47, \"depth_mm\": 800 }", "board.width_in", "wrong-unit", "\"width_in\" is not written in a unit that is read here; it is \"width_mm\".")]
    [InlineData("\"board\": { \"width_cm\": 120, \"depth_mm\": 800 }", "board.width_cm", "wrong-unit", "\"width_cm\" is not written in a unit that is read here; it is \"width_mm\".")]
    [InlineData("\"board\": { \"width\": 1200, \"depth_mm\": 800 }", "board.width", "wrong-unit", "\"width\" does not tell its unit; it is \"width_mm\".")]
    [InlineData("\"show\": { \"hours_per_day_min\": 90 }", "show.hours_per_day_min", "wrong-unit", "\"hours_per_day_min\" is not written in a unit that is read here; it is \"hours_per_day_h\".")]
    [InlineData("\"board\": { \"depth_mm\": 800 }", "board.width_mm", "field-missing", "board has no \"width_mm\", which it needs.")]
    [InlineData("\"buildings\": [ { \"leds\": 4 } ]", "buildings[0].name", "field-missing", "buildings[0] has no \"name\", which it needs.")]
    [InlineData("\"buildings\": { \"name\": \"Lookout\" }", "buildings", "wrong-value", "buildings is a group of fields; a list between [ and ] is allowed.")]
    [InlineData("\"buildings\": [ 7 ]", "buildings[0]", "wrong-value", "buildings[0] is 7; fields between { and } are allowed.")]
    [InlineData("\"buildings\": [ { \"name\": \"A\", \"leds\": 2.5 } ]", "buildings[0].leds", "wrong-value", "leds is 2.5; a whole number is allowed.")]
    [InlineData("\"buildings\": [ { \"name\": \"A\", \"leds\": \"four\" } ]", "buildings[0].leds", "wrong-value", "leds is \"four\"; a whole number is allowed.")]
    [InlineData("\"buildings\": [ { \"name\": \"A\", \"state\": \"half\" } ]", "buildings[0].state", "wrong-value", "state is \"half\"; one of idea, shell, fitted, fixed is allowed.")]
    [InlineData("\"buildings\": [ { \"name\": \"A\", \"distance_mm\": \"47 cm\" } ]", "buildings[0].distance_mm", "wrong-value", "distance_mm is \"47 cm\"; a plain number in mm or \"unknown\" is allowed.")]
    [InlineData("\"buildings\": [ { \"name\": \"A\", \"resistor_ohm\": \"some\" } ]", "buildings[0].resistor_ohm", "wrong-value", "resistor_ohm is \"some\"; a number of ohms above 0, \"none\" or \"unknown\" is allowed.")]
    [InlineData("\"buildings\": [ { \"name\": \"A\", \"resistor_ohm\": 0 } ]", "buildings[0].resistor_ohm", "wrong-value", "resistor_ohm is 0; a number of ohms above 0, \"none\" or \"unknown\" is allowed.")]
    [InlineData("\"scale_ratio\": 1e999", "scale_ratio", "wrong-value", "scale_ratio is 1e999; a plain number is allowed.")]
    [InlineData("\"board\": { \"width_mm\": 1e999, \"depth_mm\": 800 }", "board.width_mm", "wrong-value", "width_mm is 1e999; a plain number in mm is allowed.")]
    [InlineData("\"log\": [ { \"date\": \"yesterday\", \"kind\": \"note\" } ]", "log[0].date", "wrong-value", "date is \"yesterday\"; a day such as \"2026-03-07\" is allowed.")]
    [InlineData("\"note\": 5", "note", "wrong-value", "note is 5; text between quotes is allowed.")]
    public void A_field_that_is_not_the_towns_is_named_with_its_path(string field, string path, string rule, string message)
    {
        var problem = Assert.Single(TownJson.Read($"{{ \"format\": \"duskwright-town\", \"version\": 1, \"name\": \"T\", {field} }}").Problems);
        Assert.Equal((path, rule, message), (problem.Path, problem.Rule, problem.Message));
    }

    [Fact]
    public void All_wrong_fields_are_named_at_once()
    {
        var problems = TownJson.Read("""
            { "format": "duskwright-town", "version": 1, "naem": "T",
              "buildings": [ { "name": 5, "leds": "x" }, null ], "supplies": [ { "part": "LR6" } ] }
            """).Problems;
        Assert.Equal(["naem", "buildings[0].name", "buildings[0].leds", "buildings[1]", "supplies[0].id"], problems.Select(p => p.Path));
    }

    [Fact]
    public void The_remedy_for_another_unit_names_the_one_to_use()
    {
        var problem = Assert.Single(TownJson.Read("""{ "format": "duskwright-town", "version": 1, "name": "T", "board": { "width_in": 47, "depth_mm": 800 } }""").Problems);
        Assert.Equal("Turn the value into mm and call it \"width_mm\".", problem.Remedy);
    }
}
