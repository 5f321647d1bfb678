using System.Globalization;
using System.Text.RegularExpressions;
using Duskwright.Book.Drawings;
using Duskwright.Book.Tests.Sheets;

namespace Duskwright.Tests.Serve;

public partial class QrCodeTests
{
    private const int QuietZone = 4;

    [Theory]
    [InlineData("http://10.0.0.7:8080/in?code=00000001")]
    [InlineData("http://192.168.1.23:41234/in?code=00412376")]
    [InlineData("http://172.16.254.254:65535/in?code=98765432")]
    public void A_camera_reads_back_the_very_address_that_was_drawn(string address) =>
        Assert.Equal(address, CodeReader.Read(Modules(QrCode.Path(address, 0, 0, 100), 100)));

    // The first bar is the top of a corner mark: seven modules.
    private static bool[,] Modules(string path, double size)
    {
        var bars = Bar().Matches(path).Select(b => b.Groups.Values.Skip(1).Select(g => double.Parse(g.Value, CultureInfo.InvariantCulture)).ToArray()).ToList();
        var side = (int)Math.Round(size * 7 / (bars[0][2] - bars[0][0])) - (2 * QuietZone);
        var module = size / (side + (2 * QuietZone));
        var dark = new bool[side, side];
        for (var row = 0; row < side; row++)
        {
            for (var column = 0; column < side; column++)
            {
                var (x, y) = ((column + QuietZone + .5) * module, (row + QuietZone + .5) * module);
                dark[row, column] = bars.Exists(b => b[0] < x && x < b[2] && b[1] < y && y < b[5]);
            }
        }

        return dark;
    }

    [GeneratedRegex(@"M(\S+) (\S+?)L(\S+) (\S+?)L(\S+) (\S+?)L\S+ \S+?z")]
    private static partial Regex Bar();
}
