using System.Text.Json;
using Duskwright.Plan.Format;
using Json.Schema;

namespace Duskwright.Plan.Tests.Format;

public class SchemaTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(TownSchema.Json);
    private static readonly JsonDocumentOptions Lenient = new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true };

    [Fact]
    public void The_schema_in_the_documentation_is_the_one_the_program_reads_by() =>
        Assert.Equal(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "docs", "town.schema.json")), TownSchema.Json);

    [Fact]
    public void The_schema_is_itself_sound() =>
        Assert.True(MetaSchemas.Draft202012.Evaluate(Parsed(TownSchema.Json)).IsValid);

    [Theory]
    [InlineData("saltmarrow.json")]
    [InlineData("tavern.json")]
    public void An_example_keeps_to_the_schema(string file) =>
        Assert.True(IsValid(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "examples", file))));

    [Fact]
    public void Every_town_that_is_written_keeps_to_the_schema() =>
        RandomTowns.Sound.Sample(town => Assert.True(IsValid(TownJson.Write(town))), iter: 50);

    [Theory]
    [InlineData("""{ "format": "duskwright-town", "version": 2 }""")]
    [InlineData("""{ "format": "recipe", "version": 2, "name": "T" }""")]
    [InlineData("""{ "format": "duskwright-town", "version": 3, "name": "T" }""")]
    [InlineData("""{ "format": "duskwright-town", "version": 2, "name": "T", "bildings": [] }""")]
    [InlineData("""{ "format": "duskwright-town", "version": 2, "name": "T", "board": { "width_in": 47, "depth_mm": 800 } }""")]
    [InlineData("""{ "format": "duskwright-town", "version": 2, "name": "T", "buildings": [ { "name": "A", "leds": "four" } ] }""")]
    [InlineData("""{ "format": "duskwright-town", "version": 2, "name": "T", "buildings": [ { "name": "A", "resistor_ohm": -1 } ] }""")]
    [InlineData("""{ "format": "duskwright-town", "version": 2, "name": "T", "buildings": [ { "name": "A", "state": "half" } ] }""")]
    public void A_broken_town_breaks_the_schema(string text)
    {
        Assert.False(IsValid(text));
        Assert.NotEmpty(TownJson.Read(text).Problems);
    }

    [Theory]
    [InlineData("820", true)]
    [InlineData("\"none\"", true)]
    [InlineData("\"unknown\"", true)]
    [InlineData("\"some\"", false)]
    public void The_schema_allows_the_resistors_that_are_read(string written, bool allowed) =>
        Assert.Equal(allowed, IsValid($$"""{ "format": "duskwright-town", "version": 2, "name": "T", "wiring": { "resistor_ohm": {{written}} } }"""));

    private static bool IsValid(string text) => Schema.Evaluate(Parsed(text)).IsValid;

    private static JsonElement Parsed(string text)
    {
        using var document = JsonDocument.Parse(text, Lenient);
        return document.RootElement.Clone();
    }
}
