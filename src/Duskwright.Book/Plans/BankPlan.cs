using System.Globalization;
using Duskwright.Book.Drawings;
using Duskwright.Plan;
using Duskwright.Study;
using Duskwright.Study.Figures;
using Duskwright.Study.Results;

namespace Duskwright.Book.Plans;

/// <summary>The bank as it is built: holders with cells as full as they are, fuses, switches with their letters.</summary>
public static class BankPlan
{
    private const double Step = 200;
    private const double DimLightness = 76;
    private const int MostCells = 5;

    /// <summary>Draws the bank.</summary>
    /// <param name="study">The town's results.</param>
    /// <param name="moment">The hour.</param>
    /// <param name="chosen">The id of the chosen supply; its key in the drawing is "pack:" and that id.</param>
    /// <returns>The drawing.</returns>
    public static Drawing Of(TownStudy study, Moment moment, string? chosen)
    {
        var width = Math.Max(1, study.Packs.Count) * Step;
        var parts = from pack in study.Packs.Select((p, i) => (Result: p, Left: (i * Step) + 16))
                    let marks = Pack(pack.Result, moment, pack.Result.Supply.Id == chosen).ToItemList()
                    select new Part([new Placed(pack.Left, 0, 0, marks)])
                    {
                        Key = $"pack:{pack.Result.Supply.Id}",
                        Chosen = pack.Result.Supply.Id == chosen,
                        Words = string.Join(' ', marks.OfType<Lettering>().Select(l => l.Text)),
                    };
        return new Drawing(
            "The bank from above, cells filled as far as they are left",
            0,
            0,
            width + 20,
            262,
            4,
            [new Part([new Stroke(new Trace().To(6, 254).Line(12, 260).Line(width + 16, 260).Line(width + 16, 12).Line(width + 10, 6).Line(width + 10, 254).Closed(), Inks.Side), new Stroke(Trace.Rectangle(6, 6, width + 4, 248), Inks.Wall)]), .. parts]);
    }

    private static IEnumerable<Mark> Pack(PackResult pack, Moment moment, bool chosen)
    {
        var now = moment.Packs.FirstOrDefault(m => m.Supply == pack.Supply.Id);
        var left = now?.ChargeLeft ?? pack.Supply.ChargeLeft;
        var cells = Math.Clamp(pack.Supply.Series * pack.Supply.Parallel, 1, MostCells);
        var charge = now is { } m && m.WorstLightness < DimLightness ? Inks.LowCharge : Inks.Charge;
        yield return new Stroke(Trace.Rectangle(2, 12, 184, 234), chosen ? Inks.Ring : Inks.Touch);
        yield return new Stroke(Trace.Rectangle(20, 40, (cells * 24) + 10, 118), Inks.Card);
        for (var c = 0; c < cells; c++)
        {
            var x = 20 + (c * 24);

            // Cells in a holder lie head to tail.
            var up = c % 2 == 0;
            yield return new Stroke(Trace.Rectangle(x + 13, up ? 45 : 149, 8, 5), Inks.Solid);
            yield return new Stroke(Trace.Rectangle(x + 7, 50, 20, 99), Inks.Card);
            yield return new Stroke(Trace.Rectangle(x + 9, 147 - (95 * left), 16, 95 * left), charge);
            var plus = up ? 62 : 138;
            yield return new Stroke(new Trace().To(x + 13, plus).Line(x + 21, plus).To(x + 17, plus - 4).Line(x + 17, plus + 4).Open(), Inks.Edge);
        }

        yield return new Stroke(Trace.Circle(20, 36, 13), Inks.Badge(pack.Number));
        yield return new Lettering(20, 40.5, pack.Number.ToString(CultureInfo.InvariantCulture), Inks.Ref, Anchor.Middle);
        yield return new Stroke(new Trace().To((cells * 24) + 36, 60).Line(150, 60).Line(150, 76).To(150, 96).Line(150, 112).Open(), Inks.Edge);
        yield return new Stroke(Trace.Rectangle(145, 76, 10, 20), pack.Supply.Fuse is null ? Inks.Missing : Inks.Card);
        foreach (var (group, s) in pack.SwitchGroups.Select((g, s) => (g, s)))
        {
            yield return new Stroke(Trace.Rectangle(138, 112 + (s * 40), 22, 32), Inks.Card);
            yield return new Stroke(Trace.Rectangle(143, 116 + (s * 40), 12, 13), Inks.Solid);
            yield return new Lettering(168, 135 + (s * 40), group, Inks.Heading);
        }

        yield return new Lettering(14, 196, pack.Supply.Name ?? $"Pack {pack.Number}", Inks.Heading);
        yield return new Lettering(14, 214, $"{pack.Lamps} {(pack.Lamps == 1 ? "LED" : "LEDs")}, {(now is null ? "no load" : FigureText.Of(now.Amperes, "A"))}", Inks.Note);
        yield return new Lettering(14, 232, $"{(pack.Supply.Fuse is null ? "no fuse" : "fused")} · {FigureText.Of(left, "share")} left", Inks.Note);
    }
}
