using Duskwright.Book.Drawings;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using SkiaSharp;

namespace Duskwright.Book.Plans;

/// <summary>What lies under the board and decides where wire can run: battens and legs, hatches, ground that is free for it.</summary>
internal static class Beneath
{
    internal static ItemList<Scenery> Things(Board board) => board.Scenery.Where(s => s.Kind is SceneryKind.Obstacle or SceneryKind.Hatch or SceneryKind.Free).ToItemList();

    /// <summary>Their outlines, dashed as what is hidden; what wire has to go round is shaded.</summary>
    internal static Part Of(Board board) => new(Things(board).SelectMany(thing =>
    {
        var line = Trace.Chain(thing.Points.Select(p => (p.X.Millimetres, board.Depth.Millimetres - p.Y.Millimetres)), closed: true);
        return thing.Kind == SceneryKind.Obstacle ? (Mark[])[new Stroke(line, Inks.Shade), new Stroke(line, Inks.Hidden)] : [new Stroke(line, Inks.Hidden)];
    }).ToItemList())
    {
        Clip = Trace.Rectangle(0, 0, board.Width.Millimetres, board.Depth.Millimetres),
    };

    /// <summary>Their words, each to stand at its corner that is farthest from all that is on the plan already.</summary>
    internal static IEnumerable<(SKRect At, IReadOnlyList<Label> Lines)> Words(Board board, IReadOnlyList<SKRect> busy) => Things(board).Select(thing =>
    {
        var corners = thing.Points.Select(p => new SKPoint((float)p.X.Millimetres, (float)(board.Depth.Millimetres - p.Y.Millimetres)));
        return (SKRect.Create(corners.MaxBy(c => busy.Select(b => SKPoint.Distance(c, new SKPoint(Math.Clamp(c.X, b.Left, b.Right), Math.Clamp(c.Y, b.Top, b.Bottom)))).DefaultIfEmpty(0).Min()), SKSize.Empty), (IReadOnlyList<Label>)[new Label(Called(thing), Inks.Small)]);
    });

    internal static string Called(Scenery thing) => thing.Label ?? (thing.Kind == SceneryKind.Free ? "free for wire" : thing.Kind.ToString().ToLowerInvariant());
}
