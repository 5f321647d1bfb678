using Duskwright.Store.Exchange;

namespace Duskwright.Store.Tests;

public sealed class TownFileTests : IDisposable
{
    private readonly Shelf _shelf = new();

    public void Dispose() => _shelf.Dispose();

    [Fact]
    public void Both_forms_are_read_whatever_their_names()
    {
        _shelf.Begun(Shelf.Saltmarrow).Dispose();
        ExchangeFile.Create(_shelf.At("a.json"), Shelf.Saltmarrow);
        File.Move(_shelf.Town, _shelf.At("b.json"));
        File.Move(_shelf.At("a.json"), _shelf.At("a.town"));
        Assert.Equal(Shelf.Saltmarrow, TownFile.Read(_shelf.At("b.json")).Town);
        Assert.Equal(Shelf.Saltmarrow, TownFile.Read(_shelf.At("a.town")).Town);
        Assert.Equal("no-file", Assert.Single(TownFile.Read(_shelf.At("c.town")).Problems).Rule);
    }

    [Fact]
    public void A_town_in_the_exchange_form_is_worked_on_beside_it_and_not_written_to()
    {
        ExchangeFile.Create(_shelf.At("saltmarrow.json"), Shelf.Saltmarrow);
        var before = File.ReadAllBytes(_shelf.At("saltmarrow.json"));
        using (var file = Shelf.Sound(TownFile.Open(_shelf.At("saltmarrow.json"), TimeProvider.System)))
        {
            Assert.Equal(_shelf.Town, file.Path);
            file.Change(Shelf.WithLeds(file.Town, 9), "Nine");
        }

        Assert.Equal(before, File.ReadAllBytes(_shelf.At("saltmarrow.json")));
        using var again = Shelf.Sound(TownFile.Open(_shelf.At("saltmarrow.json"), TimeProvider.System));
        Assert.Equal(9, again.Town.Buildings[0].Leds);
    }

    [Fact]
    public void A_file_changed_outside_is_taken_in_as_an_edit_that_can_be_undone()
    {
        var exchange = ExchangeFile.Create(_shelf.At("saltmarrow.json"), Shelf.Saltmarrow).File!;
        using (var file = Shelf.Sound(TownFile.Open(exchange.Path, TimeProvider.System)))
        {
            file.Change(Shelf.WithLeds(file.Town, 9), "Nine");
        }

        exchange.Save(Shelf.WithLeds(Shelf.Saltmarrow, 4));
        using var again = Shelf.Sound(TownFile.Open(exchange.Path, TimeProvider.System));
        Assert.Equal((4, "Read saltmarrow.json"), (again.Town.Buildings[0].Leds, again.Head.Label));
        again.Undo();
        Assert.Equal(9, again.Town.Buildings[0].Leds);
    }

    [Fact]
    public void A_town_in_memory_is_kept_with_its_whole_history_once_it_gets_a_file()
    {
        using var memory = WorkingFile.InMemory(Shelf.Saltmarrow, "Begin", TimeProvider.System);
        memory.Change(Shelf.WithLeds(memory.Town, 9), "Nine");
        using var kept = Shelf.Sound(memory.KeepAs(_shelf.At("new/saltmarrow.town")));
        Assert.Equal(memory.Town, kept.Town);
        kept.Undo();
        Assert.Equal(Shelf.Saltmarrow, kept.Town);
        Assert.Equal("already-there", Shelf.Refused(memory.KeepAs(kept.Path!)).Rule);
    }
}
