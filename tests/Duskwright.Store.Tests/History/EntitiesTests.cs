using Duskwright.Plan.Document;
using Duskwright.Plan.Tests;
using Duskwright.Store.History;

namespace Duskwright.Store.Tests.History;

public class EntitiesTests
{
    [Fact]
    public void A_town_cut_into_pieces_and_put_together_is_the_same() =>
        RandomTowns.Sound.Sample(town => Assert.Equal(town, Entities.Town(Entities.Of(town)).Town), iter: 200);

    [Fact]
    public void Every_building_is_a_piece_of_its_own_and_their_order_another()
    {
        var pieces = Entities.Of(new Town { Name = "Tarn", Buildings = [new Building { Name = "a/b\nc", Id = "mill" }, new Building { Name = "Gull's \"Rest\"" }] });
        Assert.Equal(["buildings/", "buildings/Gull's \\\"Rest\\\"", "buildings/mill", "format", "name", "version"], pieces.Keys);
        Assert.Equal("""["mill","Gull's \"Rest\""]""", pieces["buildings/"]);
    }

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
