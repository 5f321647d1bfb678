using System.Globalization;
using Duskwright.Harness.Tiles;
using Duskwright.Plan;
using Duskwright.Plan.Parts;
using Duskwright.Proposals.Tiles;
using Duskwright.Study;
using Duskwright.Towns;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>How badly the tiles of a town can be plugged together with worn contacts, and what helps.</summary>
public partial class TilesTogether : IDisposable
{
    private readonly CancellationTokenSource _gone = new();
    private TilePlugs _plugs = default!;
    private (TownStudy Study, TilePlugs Plugs)? _asked;
    private ItemList<WorstTiles>? _answers;

    [Inject]
    private OpenTown Open { get; set; } = default!;

    /// <summary>The results of the town as it stands.</summary>
    [Parameter, EditorRequired]
    public TownStudy Study { get; set; } = default!;

    private bool HasTiles => Study.Town.Buildings.Select(b => b.Tile).OfType<string>().Distinct().Skip(1).Any();

    public void Dispose()
    {
        _gone.Cancel();
        _gone.Dispose();
        GC.SuppressFinalize(this);
    }

    // A new contact is that of the catalogue's plug; a tile is a square share of the board, or 300 mm where there is none: common practice, no source.
    protected override void OnInitialized()
    {
        var fresh = Catalogue.Parts.Sundries.First(s => s.Use == SundryUse.Connector).ContactResistance!.Value.Ohms;
        var tiles = Math.Max(1, Study.Town.Buildings.Select(b => b.Tile).OfType<string>().Distinct().Count());
        var across = Study.Town.Board is { } board ? Math.Round(Math.Sqrt(board.Width.Metres * board.Depth.Metres / tiles), 3) : 0.3;
        _plugs = new TilePlugs(fresh, fresh * TilePlugs.WornOverFresh, across, true);
    }

    // Trying takes a second or so; until then the last answer stands.
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!HasTiles || _asked == (Study, _plugs))
        {
            return;
        }

        var (asked, cancel) = ((Study, _plugs), _gone.Token);
        _asked = asked;
        try
        {
            var answers = await Task.Run(() => WorstTiles.Of(asked.Study, asked.Item2, cancel), cancel);
            if (_asked == asked && !cancel.IsCancellationRequested)
            {
                _answers = answers;
                StateHasChanged();
            }
        }
        catch (OperationCanceledException) when (cancel.IsCancellationRequested)
        {
            // The page has gone, and with it whoever asked.
        }
    }

    private static string Of(TileLoad tile) => string.Create(CultureInfo.InvariantCulture, $"{1000 * tile.AloneAmps:0.0} mA, {tile.Lamps} {(tile.Lamps == 1 ? "LED" : "LEDs")}");

    // From the socket outwards, what hangs on a tile after it; the name of what each plugs into.
    private static IEnumerable<(int Tile, string? Into)> Order(WorstTiles answer)
    {
        IEnumerable<int> Beyond(int tile) => Enumerable.Range(0, answer.Tiles.Count).Where(t => answer.Worst.Into[t] == tile).SelectMany(t => Beyond(t).Prepend(t));
        return Beyond(PluggedTiles.Socket).Select(t => (t, answer.Worst.Into[t] == PluggedTiles.Socket ? null : answer.Tiles[answer.Worst.Into[t]].Name));
    }

    private static string Tried(WorstTiles answer) => answer.IsEvery
        ? string.Create(CultureInfo.InvariantCulture, $"Every one of {answer.Rows} rows and {answer.Trees} branchings was solved.")
        : answer.IsEveryRow
        ? string.Create(CultureInfo.InvariantCulture, $"Every one of {answer.Rows} rows was solved; branchings were not: for steady currents none is worse than the worst row.")
        : string.Create(CultureInfo.InvariantCulture, $"Of so many tiles {answer.Rows} rows were solved, each with another tile at its end and the lightest of the others first: for steady currents no arrangement is worse for that tile. The rest were not tried.");

    private static string InRow(WorstTiles answer) => answer.InRow == answer.Tiles.Count
        ? "All of them in a row, in any order, stay even."
        : answer.InRow == 0
        ? "Even one alone is seen to be fainter with worn contacts: mend or clean them."
        : string.Create(CultureInfo.InvariantCulture, $"Up to {answer.InRow} of the heaviest tiles in a row stay even. For more, feed the row at its middle, give each tile a place at the frame, take thicker wire across the tiles, or clean the contacts.");

    private string Headline(WorstTiles answer) => $"{answer.Tiles.Count} tiles on {Study.Packs.First(p => p.Supply.Id == answer.Supply).Words}";

    private string Told(WorstTiles answer)
    {
        var worst = answer.Worst;
        var seen = worst.Lightness < 100 - Study.Town.Show.VisibleStep;
        return string.Create(CultureInfo.InvariantCulture, $"Plugged so, a lamp on {answer.Tiles[worst.Worst].Name} keeps {100 * worst.LightShare:0}\u2009% of the light it has with its tile alone at the socket and new contacts: lightness {worst.Lightness:0.0}, {(seen ? "which is seen to be fainter" : "which nobody sees")}. Each tile at the socket or frame keeps at least {100 * answer.EachAtSocket.LightShare:0}\u2009%.");
    }

    private void Say(TilePlugs plugs) => _plugs = plugs;
}
