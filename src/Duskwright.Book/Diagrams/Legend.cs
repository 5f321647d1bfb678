using Duskwright.Book.Drawings;
using Duskwright.Book.Plans;
using Duskwright.Plan;
using Duskwright.Study;

namespace Duskwright.Book.Diagrams;

/// <summary>Every symbol and kind of line of the book, with what it means beside it.</summary>
public static class Legend
{
    private const double Width = 180;
    private const double RowHeight = 11;
    private const double Column = 90;
    private const double WordsAt = 22;

    /// <summary>Draws the legend.</summary>
    /// <param name="study">The town's results; its packs show the dash of their wires.</param>
    /// <returns>The drawing.</returns>
    public static Drawing Of(TownStudy study)
    {
        var entries = Entries(study).ToList();
        var rows = (entries.Count + 1) / 2;
        var marks = new List<Mark>();
        foreach (var ((symbol, words), i) in entries.Select((e, i) => (e, i)))
        {
            var (x, y) = (i / rows * Column, (i % rows * RowHeight) + 7);
            marks.Add(new Placed(x + 9, y, 0, symbol.ToItemList()));
            marks.AddRange(Fitting.Lines(words, Inks.Value, Column - WordsAt - 3, 2).Select((line, n) => new Lettering(x + WordsAt, y + (n * 3.6), line, Inks.Value)));
        }

        return new Drawing("What the symbols and lines of this book mean", 0, 0, Width, (rows * RowHeight) + 4, 1, [new Part(marks.ToItemList())]);
    }

    private static IEnumerable<(IEnumerable<Mark> Symbol, string Words)> Entries(TownStudy study)
    {
        yield return (Symbols.Cells(2), "cells: the long thin plate is plus");
        yield return (Symbols.Regulated(), "a supply that holds its voltage: USB, adaptor");
        yield return ([Lead(), .. Symbols.Fuse(missing: false)], "fuse");
        yield return (Symbols.Fuse(missing: true), "a fuse is missing here");
        yield return ([.. Symbols.Switch(), new Stroke(Trace.Segment(-8, 0, -4, 0), Inks.Conductor), new Stroke(Trace.Segment(4, 0, 8, 0), Inks.Conductor)], "switch, drawn open");
        yield return ([Lead(), .. Symbols.Resistor()], "resistor");
        yield return ([Lead(), new Placed(0, 0, -90, Symbols.Diode().ToItemList())], "LED: it lights when plus comes to the triangle");
        yield return ([Lead(), .. Symbols.Filament()], "filament lamp: either way round");
        yield return ([Lead(), new Stroke(Trace.Circle(0, 0, 0.8), Inks.Solid), new Stroke(Trace.Circle(0, -3.6, 2.1), Inks.Card), new Lettering(0, -2.8, "3", Inks.JointNumber, Anchor.Middle)], "a joint and its number");
        yield return ([new Stroke(Trace.Segment(-8, 0, 8, 0), Inks.Conductor), .. Symbols.Plus()], "heavy, with plus and bar: the positive conductor");
        yield return ([Lead(), .. Symbols.Minus()], "thin, with a minus: the way back");
        yield return ([new Stroke(Trace.Segment(0, -4, 0, 0), Inks.Conductor), new Stroke(new Trace().To(-1.2, 0).Line(1.2, 0).Line(0, 2).Closed(), Inks.Card)], "goes on over the page, under the name beside it");
        yield return ([new Stroke(Trace.Segment(-8, 0, 8, 0), Inks.Fold)], "dash and dot: fold, inside of a house, wireway");
        yield return ([new Stroke(Trace.Segment(-8, 0, 8, 0), Inks.Hidden)], "dashed: cut here; on a wall, hidden behind it");
        yield return ([new Stroke(Trace.Rectangle(-7, -3, 14, 6), Inks.Card), new Stroke(Hatching.Of(-7, -3, 14, 6, 2), Inks.Hatch)], "hatched: stays dark, is glued, or is not printed");
        yield return ([new Stroke(Trace.Circle(0, 0, 1.5), Inks.Edge), new Stroke(new Trace().To(-4, 0).Line(4, 0).To(0, -4).Line(0, 4).Open(), Inks.Fine)], "hole to drill; the number beside it is the drill in mm");
        yield return ([new Stroke(Trace.Circle(0, 0, 2), Inks.Thin), new Stroke(new Trace().To(-4, 0).Line(4, 0).To(0, -4).Line(0, 4).Open(), Inks.Thin)], "cross of a seam: let it meet its neighbour's");
        foreach (var pack in study.Packs)
        {
            yield return ([new Stroke(Trace.Segment(-8, 0, 8, 0), Inks.Wire(pack.Number)), new Stroke(Trace.Circle(0, 0, 2.2), Inks.Badge(pack.Number)), new Lettering(0, 0.95, BadgeNumber(pack.Number), Inks.Number, Anchor.Middle)], $"wire of pack {pack.Number}{(pack.Supply.Name is { } name ? $", {name}" : "")}");
        }
    }

    private static string BadgeNumber(int number) => number.ToString(System.Globalization.CultureInfo.InvariantCulture);

    private static Stroke Lead() => new(Trace.Segment(-8, 0, 8, 0), Inks.Thin);
}
