using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Duskwright.Plan.Document;
using Duskwright.Plan.Format;
using Duskwright.Plan.Tests;
using Duskwright.Store.History;

namespace Duskwright.Store.Tests.History;

public class EntitiesTests
{
    [Fact]
    public void A_town_cut_into_pieces_and_put_together_is_the_same() =>
        RandomTowns.Sound.Sample(town => Assert.Equal(town, Entities.Town(Entities.Of(town)).Town), iter: 200);

    [Fact]
    public void Every_piece_is_the_very_text_that_the_exchange_form_holds() =>
        RandomTowns.Sound.Sample(
            town =>
            {
                var pieces = Entities.Of(town);
                foreach (var (field, value) in JsonNode.Parse(TownJson.Write(town))!.AsObject())
                {
                    var items = value is JsonArray { Count: > 0 } list && list.All(i => i is JsonObject) ? list : [];
                    var texts = items.Count == 0 ? [pieces[field]] : JsonSerializer.Deserialize<string[]>(pieces[$"{field}/"])!.Select(k => pieces[$"{field}/{Line(JsonValue.Create(k))[1..^1]}"]);
                    Assert.Equal(items.Count == 0 ? [Line(value!)] : items.Select(i => Line(i!)), texts);
                }
            },
            iter: 200);

    [Fact]
    public void A_town_cut_again_after_an_edit_is_cut_as_if_for_the_first_time()
    {
        var town = Shelf.Saltmarrow;
        _ = Entities.Of(town);
        var edited = Shelf.WithLeds(town, 9);
        Assert.Equal(Entities.Of(TownJson.Read(TownJson.Write(edited)).Town!), Entities.Of(edited));
        Assert.NotEqual(Entities.Of(town), Entities.Of(edited));
    }

    [Fact]
    public void Every_building_is_a_piece_of_its_own_and_their_order_another()
    {
        var pieces = Entities.Of(new Town { Name = "Tarn", Buildings = [new Building { Name = "a/b\nc", Id = "mill" }, new Building { Name = "Gull's \"Rest\"" }] });
        Assert.Equal(["buildings/", "buildings/Gull's \\\"Rest\\\"", "buildings/mill", "format", "name", "version"], pieces.Keys);
        Assert.Equal("""["mill","Gull's \"Rest\""]""", pieces["buildings/"]);
    }

    private static readonly JsonSerializerOptions OneLine = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private static string Line(JsonNode node) => node.ToJsonString(OneLine);

    [Fact]
    public void Things_called_alike_are_kept_apart()
    {
        var entry = new LogEntry { Date = new DateOnly(2026, 3, 1), Kind = LogKind.Note, Note = "dark" };
        var town = new Town { Name = "Tarn", Log = [entry, entry with { Note = "lit" }, entry] };
        var pieces = Entities.Of(town);
        Assert.Equal(["log/", "log/2026-03-01", "log/2026-03-01~2", "log/2026-03-01~3"], pieces.Keys.Where(k => k.StartsWith("log", StringComparison.Ordinal)));
        Assert.Equal(town, Entities.Town(pieces).Town);
    }
}
