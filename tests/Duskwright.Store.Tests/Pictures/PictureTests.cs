namespace Duskwright.Store.Tests.Pictures;

public sealed class PictureTests : IDisposable
{
    private static readonly byte[] Png = [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, 1, 2, 3];

    private readonly Shelf _shelf = new();

    public void Dispose() => _shelf.Dispose();

    [Fact]
    public void A_picture_kept_is_given_back_after_a_restart()
    {
        using (var file = _shelf.Begun(Shelf.Saltmarrow))
        {
            Assert.Empty(file.KeepPicture("board from above", Png));
            Assert.Empty(file.KeepPicture("the same again", Png));
        }

        using var again = _shelf.Opened();
        var picture = Assert.Single(again.Pictures);
        Assert.Equal(("board from above", "image/png", 11L), (picture.Name, picture.MediaType, picture.ByteCount));
        Assert.Equal(Png, again.PictureOf(picture.Id));
        Assert.Null(again.PictureOf("00"));
    }

    [Fact]
    public void What_only_calls_itself_a_picture_is_refused()
    {
        using var file = _shelf.Begun(Shelf.Saltmarrow);
        Assert.Equal("board.png is neither a PNG nor a JPEG picture.", Assert.Single(file.KeepPicture("board.png", "<svg/>"u8.ToArray())).Message);
        Assert.Equal("too-large", Assert.Single(file.KeepPicture("board.png", new byte[(32 * 1024 * 1024) + 1])).Rule);
        Assert.Empty(file.Pictures);
    }
}
