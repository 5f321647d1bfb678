using Duskwright.Book.Tiles;
using Duskwright.Study;

namespace Duskwright.Book.Sheets;

/// <summary>The board at true size for drilling: a map of its tiles, then the tiles.</summary>
internal static class TilesSheet
{
    internal static void Draw(PageFlow flow, TownStudy study, BookOptions options)
    {
        if (study.Town.Board is null)
        {
            return;
        }

        // Upright or lying, whichever takes fewer sheets; tiles of whole millimetres.
        var layouts = from lying in (bool[])[false, true]
                      let room = PageFlow.Body(options.Paper, lying, ruled: true)
                      let size = (Width: Math.Floor(room.Width), Height: Math.Floor(room.Height))
                      select (Lies: lying, Size: size, Tiles: BoardTiles.Of(study, size.Width, size.Height));
        var (lies, body, chosen) = layouts.MinBy(l => l.Tiles.Count);
        if (chosen.Count == 0)
        {
            return;
        }

        flow.Page("The board at full size", lying: true);
        flow.Text(Face.Reports, 9.5f, $"The next {chosen.Count} sheets, glued together, are the board at full size. Print them at 100 % and check the ruler at the foot. Cut each along its dashed lines, at its left and at its back; lay it over its neighbours so that crosses meet. Hatched tiles have nothing on them and are not printed.");
        flow.Text(Face.Reports, 9.5f, "A ring with a long cross is a hole: prick its middle through the paper, then drill what stands beside it, in mm. Where the town names no drill, it is the least that passes the pairs. Thin outlines are houses, the small triangle at the front; dash and dot is a wireway under the board. Measure two holes from the board's edges before you drill any.");
        flow.Gap(3);
        var loose = BoardTiles.Map(study, body.Width, body.Height, 1);
        flow.Picture(BoardTiles.Map(study, body.Width, body.Height, Math.Max(loose.Width / (flow.Width - 2), loose.Height / (flow.Room - 3))));
        foreach (var tile in chosen)
        {
            flow.Page($"The board at full size, {tile.Name}", lies, ruled: true);
            flow.Picture(tile.Drawing);
        }
    }
}
