using System.Globalization;
using Duskwright.Book.Drawings;
using Duskwright.Book.Plans;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Study;
using SkiaSharp;

namespace Duskwright.Book.Tiles;

/// <summary>The board at true size for drilling, on pages that are glued together; pages with nothing on them are left out.</summary>
public static class BoardTiles
{
    private const double CrossReach = 4;
    private const double Unbored = 0.8;

    /// <summary>Cuts the board into tiles.</summary>
    /// <param name="study">The town's results.</param>
    /// <param name="width">Width of what a page can show, mm.</param>
    /// <param name="height">Height of what a page can show, mm.</param>
    /// <returns>The tiles from the back left corner, row by row; none without a board.</returns>
    public static IReadOnlyList<BoardTile> Of(TownStudy study, double width, double height) =>
        study.Town.Board is { } board ? [.. Tiles(study, board, width, height)] : [];

    /// <summary>How the tiles lie on the board; those that are left out are hatched.</summary>
    /// <param name="study">The town's results; its town must have a board.</param>
    /// <param name="width">Width of what a page can show, mm.</param>
    /// <param name="height">Height of what a page can show, mm.</param>
    /// <param name="pen">Millimetres of the board to one of paper.</param>
    /// <returns>The drawing.</returns>
    public static Drawing Map(TownStudy study, double width, double height, double pen)
    {
        var board = study.Town.Board!;
        var things = Things(study, board);
        var grid = new TileGrid(board.Width.Millimetres, board.Depth.Millimetres, width, height);
        var marks = new List<Mark>(things.SelectMany(t => t.Marks));
        foreach (var (column, row) in Places(grid))
        {
            var tile = grid.Tile(column, row);
            if (!things.Any(t => t.Box.IntersectsWith(grid.Own(column, row))))
            {
                marks.Add(new Stroke(Hatching.Of(tile.Left, tile.Top, tile.Width, tile.Height, 4 * pen), Inks.Hatch));
            }

            marks.Add(new Stroke(Trace.Rectangle(tile.Left, tile.Top, tile.Width, tile.Height), Inks.Thin));
            marks.Add(new Stroke(Trace.Circle(tile.MidX, tile.MidY, 4.4 * pen), Inks.Card));
            marks.Add(new Lettering(tile.MidX, tile.MidY + (1.3 * pen), TileGrid.Name(column, row), Inks.Heading, Anchor.Middle));
        }

        marks.Add(new Stroke(Trace.Rectangle(0, 0, board.Width.Millimetres, board.Depth.Millimetres), Inks.Outline));
        var (first, last) = (grid.Tile(0, 0), grid.Tile(grid.Columns - 1, grid.Rows - 1));
        return new Drawing("How the tiles lie on the board", first.Left - pen, first.Top - pen, last.Right - first.Left + (2 * pen), last.Bottom - first.Top + (2 * pen), pen, [new Part(marks.ToItemList())]);
    }

    private static IEnumerable<BoardTile> Tiles(TownStudy study, Board board, double width, double height)
    {
        var things = Things(study, board);
        var grid = new TileGrid(board.Width.Millimetres, board.Depth.Millimetres, width, height);
        var filled = Places(grid).Where(p => things.Any(t => t.Box.IntersectsWith(grid.Own(p.Column, p.Row)))).ToHashSet();
        return Places(grid).Where(filled.Contains).Select(p => new BoardTile(TileGrid.Name(p.Column, p.Row), Drawn(grid, p.Column, p.Row, things, filled.Contains)));
    }

    private static IEnumerable<(int Column, int Row)> Places(TileGrid grid) =>
        from row in Enumerable.Range(0, grid.Rows) from column in Enumerable.Range(0, grid.Columns) select (column, row);

    private static Drawing Drawn(TileGrid grid, int column, int row, List<Thing> things, Func<(int Column, int Row), bool> isPrinted)
    {
        var tile = grid.Tile(column, row);
        var here = things.Where(t => t.Box.IntersectsWith(tile)).ToList();
        var names = here.Where(t => t.Name is { } name && Inside(t, tile, name)).Select(t => (Thing: t, Box: NameBox(t, tile))).ToList();
        var seams = Seams(grid, column, row, isPrinted, [.. names.Select(n => n.Box)]);
        List<SKRect> busy = [.. names.Select(n => n.Box), .. seams.Words.Select(w => w.Box)];
        return new Drawing(
            $"The board at full size, tile {TileGrid.Name(column, row)}",
            tile.Left,
            tile.Top,
            tile.Width,
            tile.Height,
            1,
            [
                new Part([.. here.SelectMany(t => t.Marks), new Stroke(Trace.Rectangle(0, 0, grid.BoardWidth, grid.BoardDepth), Inks.Outline)]) { Clip = Trace.Rectangle(tile.Left, tile.Top, tile.Width, tile.Height) },
                new Part([.. seams.Marks, .. seams.Words.Select(w => (Mark)w.Words)]),
                new Part(names.Select(n => (Mark)new Lettering(n.Box.MidX, n.Box.Bottom - (0.25 * Inks.Name.Size), n.Thing.Name!.Text, n.Thing.Name.Hand, Anchor.Middle)).ToItemList()),
                .. Labels.Of([.. here.Where(t => t.Lines.Count > 0 && tile.Contains(t.Box.MidX, t.Box.MidY)).Select(t => (t.Box, t.Lines))], busy, SKRect.Inflate(tile, -1, -1), 1),
            ]);
    }

    // A name stands on the part of a thing that this tile shows, where it fits.
    private static SKRect NameBox(Thing thing, SKRect tile)
    {
        var shown = SKRect.Intersect(thing.Box, tile);
        var size = new SKSize(Labels.Width(thing.Name!, 1), (float)thing.Name!.Hand.Size);
        return SKRect.Create(new SKPoint(shown.MidX - (size.Width / 2), shown.MidY - (size.Height / 2)), size);
    }

    private static bool Inside(Thing thing, SKRect tile, Label name) => SKRect.Intersect(thing.Box, tile) is var shown && Labels.Width(name, 1) + 2 < shown.Width && name.Hand.Size + 2 < shown.Height;

    // Where a neighbour lies over: a dashed line to cut along on the one, crosses on it that both show, and whose tile comes there.
    private static (IReadOnlyList<Mark> Marks, IReadOnlyList<(Lettering Words, SKRect Box)> Words) Seams(TileGrid grid, int column, int row, Func<(int Column, int Row), bool> isPrinted, IReadOnlyList<SKRect> taken)
    {
        var tile = grid.Tile(column, row);
        const double half = TileGrid.Overlap / 2;
        List<Mark> marks = [];
        List<(Lettering, SKRect)> words = [];
        void Seam(bool upright, double at, bool cut, string neighbour)
        {
            var (from, to) = upright ? (tile.Top, tile.Bottom) : (tile.Left, tile.Right);
            if (cut)
            {
                marks.Add(new Stroke(upright ? Trace.Segment(at, from, at, to) : Trace.Segment(from, at, to, at), Inks.Hidden));
            }

            foreach (var along in (double[])[from + TileGrid.Overlap + 10, (from + to) / 2, to - TileGrid.Overlap - 10])
            {
                var (x, y) = upright ? (at, along) : (along, at);
                marks.Add(new Stroke(new Trace().To(x - CrossReach, y).Line(x + CrossReach, y).To(x, y - CrossReach).Line(x, y + CrossReach).Open(), Inks.Thin));
                marks.Add(new Stroke(Trace.Circle(x, y, 2), Inks.Thin));
            }

            var label = new Label(neighbour, Inks.LampName);

            // Between two crosses, where no house has its name.
            var places = from share in (double[])[0.35, 0.65, 0.25, 0.75]
                         let along = @from + ((to - @from) * share)
                         let start = upright ? (X: at + (cut ? -4.6 : 0.8), Y: along) : (X: along, Y: at + (cut ? -1.2 : 3.4))
                         let box = SKRect.Create((float)start.X, (float)(start.Y - Inks.LampName.Size), Labels.Width(label, 1), (float)Inks.LampName.Size * 1.2f)
                         orderby taken.Count(box.IntersectsWith)
                         select (new Lettering(start.X, start.Y, neighbour, Inks.LampName), box);
            words.Add(places.First());
        }

        foreach (var (across, down) in ((int, int)[])[(-1, 0), (1, 0), (0, -1), (0, 1)])
        {
            if (isPrinted((column + across, row + down)))
            {
                var at = (across, down) switch { (-1, _) => tile.Left + half, (1, _) => tile.Right - half, (_, -1) => tile.Top + half, _ => tile.Bottom - half };
                Seam(across != 0, at, across + down < 0, TileGrid.Name(column + across, row + down));
            }
        }

        return (marks, words);
    }

    private static List<Thing> Things(TownStudy study, Board board)
    {
        var depth = board.Depth.Millimetres;
        return
        [
            .. board.Wireways.Select(w => Thing.Of(new Stroke(Trace.Chain(w.Points.Select(p => (p.X.Millimetres, depth - p.Y.Millimetres))), Inks.Fold))),
            .. study.Buildings.Where(b => b.Building.Place is not null).Select(b => Footprint.Of(b.Building, depth)),
            .. board.Bank is { } bank ? [Pocket(bank, board)] : Array.Empty<Thing>(),
            .. board.FeedHoles.Select(h => Hole(study, h, depth)),
        ];
    }

    private static Thing Hole(TownStudy study, FeedHole hole, double depth)
    {
        var (x, y) = (hole.At.X.Millimetres, depth - hole.At.Y.Millimetres);
        var drill = DrillSize.Of(study, hole);
        return Thing.Of(
            new Stroke(Trace.Circle(x, y, (drill ?? Unbored) / 2), Inks.Edge),
            new Stroke(new Trace().To(x - CrossReach, y).Line(x + CrossReach, y).To(x, y - CrossReach).Line(x, y + CrossReach).Open(), Inks.Fine)) with
        {
            Lines = [new Label(drill is { } d ? string.Create(CultureInfo.InvariantCulture, $"ø {d:0.#}") : "no pair", Inks.LampName), new Label(hole.Id, Inks.Small)],
        };
    }

    private static Thing Pocket(Bank bank, Board board)
    {
        if (bank.PocketWidth is not { } width || bank.PocketDepth is not { } deep)
        {
            var (x, y) = (bank.At.X.Millimetres, board.Depth.Millimetres - bank.At.Y.Millimetres);
            return Thing.Of(new Stroke(new Trace().To(x - 10, y).Line(x + 10, y).To(x, y - 10).Line(x, y + 10).Open(), Inks.Edge)) with { Lines = [new Label("middle of the bank", Inks.Name)] };
        }

        var box = BankOnPlan.Box(bank, board.Width.Millimetres, board.Depth.Millimetres);
        return Thing.Of(new Stroke(Trace.Rectangle(box.Left, box.Top, box.Width, box.Height), Inks.Outline)) with
        {
            Name = new Label(string.Create(CultureInfo.InvariantCulture, $"bank pocket, {width.Millimetres:0.#} × {deep.Millimetres:0.#} mm"), Inks.Name),
        };
    }
}
