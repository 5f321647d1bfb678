namespace Duskwright.Book.Drawings;

/// <summary>Electrical parts as IEC 60617 draws them, about the point (0, 0); current runs from the top to the bottom, or from the left to the right.</summary>
internal static class Symbols
{
    /// <summary>A light-emitting diode, 6 mm from lead to lead, upright: a triangle that points along the current, a bar, two arrows of light.</summary>
    internal static IEnumerable<Mark> Diode() =>
    [
        new Stroke(new Trace().To(-2.6, -2.4).Line(2.6, -2.4).Line(0, 2.2).Closed(), Inks.Card),
        new Stroke(Trace.Segment(-2.6, 2.4, 2.6, 2.4), Inks.Edge),
        new Stroke(new Trace().To(0, -3).Line(0, -2.4).To(0, 2.4).Line(0, 3).Open(), Inks.Edge),
        new Stroke(new Trace().To(3.2, 0).Line(5.8, -2).To(4.6, -1.9).Line(5.8, -2).Line(5.4, -0.9).To(3.2, 2).Line(5.8, 0).To(4.6, 0.1).Line(5.8, 0).Line(5.4, 1.1).Open(), Inks.Thin),
    ];

    /// <summary>A lamp with a filament: a crossed circle, 5.6 mm across.</summary>
    internal static IEnumerable<Mark> Filament() =>
    [
        new Stroke(Trace.Circle(0, 0, 2.8), Inks.Card),
        new Stroke(new Trace().To(-2, -2).Line(2, 2).To(-2, 2).Line(2, -2).Open(), Inks.Edge),
    ];

    /// <summary>A resistor, 8 mm from end to end, lying.</summary>
    internal static IEnumerable<Mark> Resistor() => [new Stroke(Trace.Rectangle(-4, -1.4, 8, 2.8), Inks.Card)];

    /// <summary>A fuse, 9 mm from end to end, lying: a box with its wire drawn through; dashed where it is missing.</summary>
    internal static IEnumerable<Mark> Fuse(bool missing) =>
    [
        new Stroke(Trace.Rectangle(-4.5, -1.5, 9, 3), missing ? Inks.Missing : Inks.Card),
        new Stroke(Trace.Segment(-4.5, 0, 4.5, 0), missing ? Inks.Missing : Inks.Edge),
    ];

    /// <summary>A switch that makes, 8 mm from end to end, lying, drawn open.</summary>
    internal static IEnumerable<Mark> Switch() => [new Stroke(Trace.Segment(-4, 0, 3.2, -3.6), Inks.Conductor)];

    /// <summary>Cells in a row, 10 mm from end to end, lying, plus at the right: of each a short thick plate and a long thin one; three stand for more.</summary>
    internal static IEnumerable<Mark> Cells(int count)
    {
        var drawn = Math.Clamp(count, 1, 3);
        var step = 10.0 / drawn;
        for (var i = 0; i < drawn; i++)
        {
            var x = -5 + (i * step);
            yield return new Stroke(Trace.Segment(x, 0, x + (step / 2) - 0.7, 0), Inks.Edge);
            yield return new Stroke(Trace.Rectangle(x + (step / 2) - 1.1, -1.8, 0.8, 3.6), Inks.Solid);
            yield return new Stroke(Trace.Segment(x + (step / 2) + 0.7, -3.6, x + (step / 2) + 0.7, 3.6), Inks.Edge);
            yield return new Stroke(Trace.Segment(x + (step / 2) + 0.7, 0, x + step, 0), Inks.Edge);
        }
    }

    /// <summary>A supply that holds its voltage, 10 mm from end to end, lying: a box with a straight line over a dashed one.</summary>
    internal static IEnumerable<Mark> Regulated() =>
    [
        new Stroke(Trace.Rectangle(-5, -4, 10, 8), Inks.Card),
        new Stroke(new Trace().To(-3, -1).Line(3, -1).To(-3, 1).Line(-1.4, 1).To(-0.8, 1).Line(0.8, 1).To(1.4, 1).Line(3, 1).Open(), Inks.Edge),
    ];

    /// <summary>A plus and the bar across its conductor: the positive one, whatever its colour.</summary>
    internal static IEnumerable<Mark> Plus() =>
    [
        new Stroke(Trace.Segment(0, -1.8, 0, 1.8), Inks.Edge),
        new Stroke(new Trace().To(-3.2, -2.2).Line(-1, -2.2).To(-2.1, -3.3).Line(-2.1, -1.1).Open(), Inks.Edge),
    ];

    /// <summary>The minus of a conductor.</summary>
    internal static IEnumerable<Mark> Minus() => [new Stroke(Trace.Segment(-1.1, -2.2, 1.1, -2.2), Inks.Edge)];
}
