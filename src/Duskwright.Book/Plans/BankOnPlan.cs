using System.Globalization;
using Duskwright.Book.Drawings;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Study;
using Duskwright.Study.Results;
using SkiaSharp;

namespace Duskwright.Book.Plans;

/// <summary>The bank at the edge of the board: a pocket with a spot for each pack, its cells as full as they are.</summary>
internal static class BankOnPlan
{
    private const double UsualPocketWidth = 420;
    private const double UsualPocketDepth = 76;
    private const int MostCells = 4;

    internal static IEnumerable<Part> Of(TownStudy study, Moment moment, Bank bank, double boardDepth, double boardWidth, BoardView view)
    {
        var box = Box(bank, boardWidth, boardDepth);
        var (x, y, width, height) = (box.MidX, box.MidY, box.Width, box.Height);
        yield return new Part(
        [
            new Stroke(Trace.Rectangle(x - (width / 2), y - (height / 2), width, height), Inks.Card),
            .. study.Packs.Count == 0 ? (Mark[])[new Lettering(x, y + 4, "the bank, for the packs", Inks.Note, Anchor.Middle)] : [],
        ]);
        var step = width / Math.Max(1, study.Packs.Count);
        foreach (var (pack, i) in study.Packs.Select((p, i) => (p, i)))
        {
            var key = $"pack:{pack.Supply.Id}";
            yield return new Part([new Placed(x - (width / 2) + (step * (i + .5)), y, 0, Spot(pack, moment, step, height, view.Chosen == key).ToItemList())])
            {
                Key = key,
                Chosen = view.Chosen == key,
                Words = $"{pack.Number} {string.Join(" ", pack.SwitchGroups)}: pack {pack.Supply.Name ?? pack.Words}, {pack.Lamps} LEDs",
            };
        }
    }

    /// <summary>The pocket on the board.</summary>
    internal static SKRect Box(Bank bank, double boardWidth, double boardDepth)
    {
        // Where nobody has said its size it does not stand out over the side of the board.
        var room = 2 * Math.Min(bank.At.X.Millimetres, boardWidth - bank.At.X.Millimetres);
        var width = bank.PocketWidth?.Millimetres ?? Math.Min(UsualPocketWidth, Math.Clamp(room, boardWidth / 10, boardWidth / 3));
        var height = bank.PocketDepth?.Millimetres ?? UsualPocketDepth;
        return SKRect.Create((float)(bank.At.X.Millimetres - (width / 2)), (float)(boardDepth - bank.At.Y.Millimetres - (height / 2)), (float)width, (float)height);
    }

    private static IEnumerable<Mark> Spot(PackResult pack, Moment moment, double step, double height, bool chosen)
    {
        var left = moment.Packs.FirstOrDefault(p => p.Supply == pack.Supply.Id)?.ChargeLeft ?? pack.Supply.ChargeLeft;
        var cells = Math.Min(MostCells, pack.Supply.Series);
        yield return new Stroke(Trace.Rectangle((-step / 2) + 2, (-height / 2) + 2, step - 4, height - 4), chosen ? Inks.Ring : Inks.Touch);
        for (var c = 0; c < cells; c++)
        {
            var x = ((c - ((cells - 1) / 2.0)) * 11) + 12;
            yield return new Stroke(Trace.Rectangle(x - 4.6, -24, 9.2, 46), Inks.Card);
            yield return new Stroke(Trace.Rectangle(x - 3.4, 20 - (42 * left), 6.8, 42 * left), Inks.Charge);
            yield return new Stroke(Trace.Rectangle(x - 2, -27, 4, 3), Inks.Solid);
        }

        yield return new Stroke(Trace.Circle(-24, -12, 10), Inks.Badge(pack.Number));
        yield return new Lettering(-24, -7.4, pack.Number.ToString(CultureInfo.InvariantCulture), Inks.Number, Anchor.Middle);
        yield return new Lettering(-24, 20, string.Join(" ", pack.SwitchGroups), Inks.Ref, Anchor.Middle);
    }
}
