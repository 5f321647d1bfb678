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
}
