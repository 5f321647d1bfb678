using System.Text.Json.Nodes;
using Duskwright.Plan.Format;

namespace Duskwright.Plan.Tests.Format;

public class RoundTripTests
{
    [Fact]
    public void A_town_written_and_read_again_is_the_same_to_the_last_digit() =>
        RandomTowns.Sound.Sample(
            town =>
            {
                var read = TownJson.Read(TownJson.Write(town));
                Assert.Empty(read.Problems);
                Assert.Equal(town, read.Town);
            },
            iter: 400);

    [Fact]
    public void A_town_read_and_written_again_is_the_same_text() =>
        RandomTowns.Sound.Sample(
            town =>
            {
                var text = TownJson.Write(town);
                Assert.Equal(text, TownJson.Write(TownJson.Read(text).Town!));
            },
            iter: 100);

    [Fact]
    public void The_random_towns_use_every_field_of_the_format()
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        RandomTowns.Sound.Sample(
            town =>
            {
                lock (seen)
                {
                    Collect(JsonNode.Parse(TownJson.Write(town)), "", seen);
                }
            },
            iter: 200);
        var all = new HashSet<string>(StringComparer.Ordinal);
        CollectSchema(JsonNode.Parse(TownSchema.Json), "", all);
        Assert.True(all.Count > 150, $"{all.Count} fields");
        Assert.Empty(all.Except(seen));
    }

    [Fact]
    public void What_is_not_said_is_not_written()
    {
        var text = TownJson.Write(new Plan.Document.Town { Name = "Bare" });
        Assert.Equal("{\n  \"format\": \"duskwright-town\",\n  \"version\": 2,\n  \"name\": \"Bare\"\n}\n", text);
    }

    private static void Collect(JsonNode? node, string path, HashSet<string> into)
    {
        if (node is JsonArray list)
        {
            foreach (var item in list)
            {
                Collect(item, path, into);
            }
        }

        foreach (var (name, value) in node as JsonObject ?? [])
        {
            into.Add($"{path}/{name}");
            Collect(value, $"{path}/{name}", into);
        }
    }

    private static void CollectSchema(JsonNode? schema, string path, HashSet<string> into)
    {
        foreach (var (name, value) in schema?["properties"] as JsonObject ?? [])
        {
            into.Add($"{path}/{name}");
            CollectSchema(value, $"{path}/{name}", into);
            CollectSchema(value?["items"], $"{path}/{name}", into);
        }
    }
}
