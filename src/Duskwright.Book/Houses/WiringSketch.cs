using System.Globalization;
using Duskwright.Book.Drawings;
using Duskwright.Plan;
using Duskwright.Plan.Parts;
using Duskwright.Study;
using Duskwright.Study.Figures;
using Duskwright.Study.Results;

namespace Duskwright.Book.Houses;

/// <summary>How one building is wired, from the pack to every lamp, with polarity and numbered joints; symbols as in IEC 60617.</summary>
public static class WiringSketch
{
    private const double Top = 12;
    private const double Bottom = 62;
    private const double HouseLeft = 88;
    private const double Pitch = 19;
    private const int MostLamps = 4;

    /// <summary>Draws the wiring.</summary>
    /// <param name="study">The town's results.</param>
    /// <param name="result">The building.</param>
    /// <returns>The drawing, and more of the same where the lamps do not fit beside one another; none without lamps.</returns>
    public static IReadOnlyList<Drawing> Of(TownStudy study, BuildingResult result)
    {
        var joints = JointNumbers.Of(result.Lamps);
        var drawings = new List<Drawing>();
        foreach (var (lamps, i) in result.Lamps.Chunk(MostLamps).Select((l, i) => (l, i)))
        {
            List<Mark> marks = [.. i == 0 ? Feed(study, result) : Continued()];
            var right = HouseLeft + 8 + (lamps.Length * Pitch);
            marks.Add(new Stroke(Trace.Segment(i == 0 ? 54 : HouseLeft - 12, Top, right - Pitch + 4, Top), Inks.Conductor));
            marks.Add(new Stroke(Trace.Segment(i == 0 ? 54 : HouseLeft - 12, Bottom, right - Pitch + 4, Bottom), Inks.Conductor));
            foreach (var (lamp, l) in lamps.Select((lamp, l) => (lamp, l)))
            {
                marks.AddRange(Branch(lamp, joints[(i * MostLamps) + l], HouseLeft + 12 + (l * Pitch)));
            }

            if (i == 0)
            {
                marks.AddRange(Joint(HouseLeft + 4, Top, JointNumbers.Plus, above: true));
                marks.AddRange(Joint(HouseLeft + 4, Bottom, JointNumbers.Minus, above: false));
            }

            marks.Add(new Stroke(Trace.Rectangle(HouseLeft, Top - 7, right - HouseLeft + 2, Bottom - Top + 15), Inks.Fold));
            marks.Add(new Lettering(HouseLeft, Top - 8.2, "inside the house, sealed with the roof", Inks.RoomName));
            drawings.Add(new Drawing($"{result.Building.Name}, wiring", 0, 0, 180, 73, 1, [new Part(marks.ToItemList())]));
        }

        return drawings;
    }

    private static IEnumerable<Mark> Feed(TownStudy study, BuildingResult result)
    {
        var pack = study.Packs.FirstOrDefault(p => p.Supply.Id == result.Supply);
        var label = study.Labels.First(l => l.Code == result.Code);
        const double left = 12;
        yield return new Stroke(new Trace().To(left, 30).Line(left, Top).Line(20, Top).Open(), Inks.Conductor);
        yield return new Stroke(new Trace().To(left, 44).Line(left, Bottom).Line(54, Bottom).Open(), Inks.Conductor);

        // Cells: the long thin plate is plus.
        for (var cell = 0; cell < 3; cell++)
        {
            var y = 31 + (cell * 5);
            yield return new Stroke(Trace.Segment(left - 3.6, y, left + 3.6, y), Inks.Edge);
            yield return new Stroke(Trace.Rectangle(left - 1.8, y + 1.8, 3.6, 0.9), Inks.Solid);
            yield return new Stroke(Trace.Segment(left, y + 2.7, left, cell < 2 ? y + 5 : 44), Inks.Edge);
        }

        yield return new Stroke(Trace.Segment(left, 30, left, 31), Inks.Edge);
        yield return new Lettering(left - 6, 32, "+", Inks.Ref, Anchor.Middle);
        yield return new Lettering(left + 6, 37, pack?.Words ?? "a pack", Inks.Value);
        yield return new Lettering(left + 6, 41, pack is null ? "not chosen yet" : $"pack {pack.Number}", Inks.Note);

        var fused = pack?.Supply.Fuse is not null;
        yield return new Stroke(Trace.Rectangle(20, Top - 1.6, 9, 3.2), fused ? Inks.Card : Inks.Missing);
        yield return new Stroke(Trace.Segment(20, Top, 29, Top), fused ? Inks.Conductor : Inks.Missing);
        yield return new Lettering(24.5, Top - 3, fused ? $"F{pack!.Number}" : "no fuse", fused ? Inks.Ref : Inks.Note, Anchor.Middle);
        if (fused && Catalogue.FindFuse(study.Town, pack!.Supply.Fuse!) is { } fuse)
        {
            yield return new Lettering(24.5, Top + 5.4, fuse.Name, Inks.Tiny, Anchor.Middle);
        }

        yield return new Stroke(Trace.Segment(29, Top, 35, Top), Inks.Conductor);
        yield return new Stroke(Trace.Segment(35, Top, 42, Top - 4), Inks.Conductor);
        yield return new Stroke(Trace.Segment(42.6, Top, 52.8, Top), Inks.Conductor);
        yield return new Lettering(38, Top - 5.4, $"switch {result.Building.SwitchGroup ?? "?"}", Inks.Value, Anchor.Middle);
        foreach (var (y, words, above) in ((double, string, bool)[])[(Top, label.Terminal, true), (Bottom, "minus", false)])
        {
            yield return new Stroke(Trace.Circle(54, y, 1.2), Inks.Card);
            yield return new Lettering(54, above ? y - 3 : y + 5, words, Inks.Ref, Anchor.Middle);
        }

        yield return new Lettering(64, Top - 2, "+", Inks.Ref, Anchor.Middle);
        yield return new Stroke(Trace.Segment(67, Top - 2.6, 67, Top + 2.6), Inks.Edge);
        yield return new Stroke(Trace.Segment(68, Top + 6, 68, 30), Inks.Hidden);
        yield return new Stroke(Trace.Segment(68, 45, 68, Bottom - 4), Inks.Hidden);
        yield return new Lettering(68, 34, $"pair {result.Code}", Inks.Heading, Anchor.Middle);
        yield return new Lettering(68, 38, string.Create(CultureInfo.InvariantCulture, $"{result.PairLength.Value:0.00} m"), Inks.Value, Anchor.Middle);
        yield return new Lettering(68, 42, result.Wire.Name, Inks.Tiny, Anchor.Middle);
    }

    private static IEnumerable<Mark> Continued() =>
    [
        new Lettering(HouseLeft - 14, Top + 1, "from joint 1", Inks.Value, Anchor.End),
        new Lettering(HouseLeft - 14, Bottom + 1, "from joint 2", Inks.Value, Anchor.End),
        new Lettering(HouseLeft - 10, Top - 2, "+", Inks.Ref, Anchor.Middle),
    ];

    private static List<Mark> Branch(LampResult lamp, (int? Before, int After) joints, double x)
    {
        var middle = (Top + Bottom) / 2;
        List<Mark> marks = [new Stroke(Trace.Circle(x, Top, 0.7), Inks.Solid), new Stroke(Trace.Circle(x, Bottom, 0.7), Inks.Solid)];
        var symbol = middle + 5;
        if (lamp.Resistor.Value > 0)
        {
            marks.Add(new Stroke(Trace.Segment(x, Top, x, Top + 6), Inks.Conductor));
            marks.Add(new Stroke(Trace.Rectangle(x - 1.6, Top + 6, 3.2, 8.4), Inks.Card));
            marks.Add(new Stroke(Trace.Segment(x, Top + 14.4, x, symbol - 3), Inks.Conductor));
            marks.Add(new Lettering(x + 2.6, Top + 10, $"R{lamp.Name.TrimStart('L')}", Inks.Ref));
            marks.Add(new Lettering(x + 2.6, Top + 13.6, FigureText.Of(lamp.Resistor), Inks.Value));
            marks.AddRange(Joint(x, Top + 19, joints.Before!.Value, above: null));
        }
        else
        {
            marks.Add(new Stroke(Trace.Segment(x, Top, x, symbol - 3), Inks.Conductor));
        }

        marks.Add(new Placed(x, symbol, 0, (lamp.Part.Kind == LampKind.Filament ? Symbols.Filament() : Symbols.Diode()).ToItemList()));
        marks.Add(new Stroke(Trace.Segment(x, symbol + 2.6, x, Bottom), Inks.Conductor));
        marks.AddRange(Joint(x, symbol + 6, joints.After, above: null));
        marks.Add(new Lettering(x + 2, symbol + 9, lamp.Name, Inks.Ref));
        marks.Add(new Lettering(x + 2, symbol + 12.2, lamp.Room ?? "", Inks.Tiny));
        return marks;
    }

    // A numbered joint: above or below a rail, or to the left of a branch.
    private static IEnumerable<Mark> Joint(double x, double y, int number, bool? above)
    {
        var (cx, cy) = above switch { true => (x, y - 4), false => (x, y + 4.2), null => (x - 3.8, y) };
        yield return new Stroke(Trace.Circle(x, y, 0.7), Inks.Solid);
        yield return new Stroke(Trace.Circle(cx, cy, 2.1), Inks.Card);
        yield return new Lettering(cx, cy + 0.85, number.ToString(CultureInfo.InvariantCulture), Inks.JointNumber, Anchor.Middle);
    }
}
