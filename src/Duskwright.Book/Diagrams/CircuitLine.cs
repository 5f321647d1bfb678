using System.Globalization;
using Duskwright.Book.Drawings;
using Duskwright.Book.Plans;
using Duskwright.Plan;
using Duskwright.Plan.Parts;
using Duskwright.Study;
using Duskwright.Study.Figures;
using Duskwright.Study.Results;

namespace Duskwright.Book.Diagrams;

/// <summary>One line of a circuit diagram: pack, fuse, switch and pair where they begin there, then resistor and lamp, and the way back.</summary>
internal static class CircuitLine
{
    private const double Cells = 19;
    private const double Fuse = 35;
    private const double Switch = 56;
    private const double Resistor = 105;
    private const double Before = 114;
    private const double Lamp = 122;
    private const double After = 140;
    private const double JointIn = 4;

    internal static IEnumerable<Mark> Of(TownStudy study, CircuitRow row, double y) =>
    [
        .. row.First.Pack ? Pack(study, row.Pack, y) : [],
        .. row.First.Group ? Group(row, y) : [],
        .. row.First.House ? Pair(row, y) : [],
        .. Branch(row, y),
    ];

    private static IEnumerable<Mark> Pack(TownStudy study, PackResult pack, double y)
    {
        var fuse = pack.Supply.Fuse is { } id ? Catalogue.FindFuse(study.Town, id) : null;
        yield return Minus(Rails.PackMinus, Cells - 5, y);
        yield return At(Cells, y, pack.Part.Kind is SupplyKind.Regulated or SupplyKind.PowerBank ? Symbols.Regulated() : Symbols.Cells(pack.Supply.Series));
        yield return Plus(Cells + 5, Fuse - 4.5, y);
        yield return At(Fuse, y, Symbols.Fuse(fuse is null));
        yield return Plus(Fuse + 4.5, Rails.PackPlus, y);
        yield return new Stroke(Trace.Circle(Cells, y - 8.6, 2.5), Inks.Badge(pack.Number));
        yield return new Lettering(Cells, y - 7.7, pack.Number.ToString(CultureInfo.InvariantCulture), Inks.Number, Anchor.Middle);
        yield return new Lettering(Fuse, y - 3, fuse is null ? "no fuse" : $"F{pack.Number}", Inks.JointNumber, Anchor.Middle);
        var facts = new[] { pack.Supply.Name, pack.Words, fuse?.Name, pack.Load is { } load ? $"takes {FigureText.Of(load)}" : null }.OfType<string>();
        foreach (var (words, i) in facts.Select((f, i) => (f, i)))
        {
            yield return new Lettering(Rails.PackMinus + 2, y + 7 + (i * 2.6), Fitting.Short(words, Inks.Tiny, Rails.PackPlus - Rails.PackMinus - 4), Inks.Tiny);
        }
    }

    private static IEnumerable<Mark> Group(CircuitRow row, double y)
    {
        yield return Plus(Rails.PackPlus, Switch - 4, y);
        yield return At(Switch, y, Symbols.Switch());
        yield return Plus(Switch + 4, Rails.Switched, y);
        yield return new Lettering(Switch - 2, y - 4.4, row.Group.Id, Inks.Ref, Anchor.Middle);
        var room = Rails.Switched - Rails.PackPlus - 3;
        foreach (var (line, i) in Fitting.Lines(row.Group.Name ?? "", Inks.Tiny, room, 2).Select((l, i) => (l, i)))
        {
            yield return new Lettering(Rails.PackPlus + 1.5, y + 3.4 + (i * 2.6), line, Inks.Tiny);
        }
    }

    private static IEnumerable<Mark> Pair(CircuitRow row, double y)
    {
        yield return Plus(Rails.Switched, Rails.HousePlus, y);
        yield return Minus(Rails.HouseMinus, Rails.Minus, y);
        yield return At(Rails.HousePlus - 10, y, Symbols.Plus());
        yield return At(Rails.HouseMinus + 13, y, Symbols.Minus());
        yield return new Lettering(Rails.Switched + 1.6, y - 1.2, string.Create(CultureInfo.InvariantCulture, $"{row.House.PairLength.Value:0.00} m"), Inks.Tiny);
        yield return new Lettering(Rails.Switched + 1.6, y + 2.8, string.Create(CultureInfo.InvariantCulture, $"ø {row.House.Wire.CopperDiameter.Millimetres:0.00} mm"), Inks.Tiny);
        foreach (var mark in Joint(Rails.HousePlus - JointIn, y, Houses.JointNumbers.Plus).Concat(Joint(Rails.HouseMinus + JointIn, y, Houses.JointNumbers.Minus)))
        {
            yield return mark;
        }
    }

    private static IEnumerable<Mark> Branch(CircuitRow row, double y)
    {
        var lamp = row.Lamp;
        if (row.Joints.Before is { } before)
        {
            yield return Plus(Rails.HousePlus, Resistor - 4, y);
            yield return At(Resistor, y, Symbols.Resistor());
            yield return Plus(Resistor + 4, Lamp - 3, y);
            yield return new Lettering(Resistor, y - 2.2, FigureText.Of(lamp.Resistor), Inks.Tiny, Anchor.Middle);
            foreach (var mark in Joint(Before, y, before))
            {
                yield return mark;
            }
        }
        else
        {
            yield return Plus(Rails.HousePlus, Lamp - 3, y);
        }

        yield return new Placed(Lamp, y, -90, (lamp.Part.Kind == LampKind.Filament ? Symbols.Filament() : Symbols.Diode()).ToItemList());
        yield return Minus(Lamp + 3, Rails.HouseMinus, y);
        yield return new Lettering(Lamp + 4.6, y - 1.2, Fitting.Short(lamp.Name, Inks.JointNumber, After - Lamp - 8), Inks.JointNumber);
        foreach (var mark in Joint(After, y, row.Joints.After))
        {
            yield return mark;
        }
    }

    private static IEnumerable<Mark> Joint(double x, double y, int number) =>
    [
        new Stroke(Trace.Circle(x, y, 0.6), Inks.Solid),
        new Stroke(Trace.Circle(x, y - 3.2, 1.9), Inks.Card),
        new Lettering(x, y - 2.4, number.ToString(CultureInfo.InvariantCulture), Inks.Tiny, Anchor.Middle),
    ];

    private static Placed At(double x, double y, IEnumerable<Mark> symbol) => new(x, y, 0, symbol.ToItemList());

    private static Stroke Plus(double from, double to, double y) => new(Trace.Segment(from, y, to, y), Inks.Conductor);

    private static Stroke Minus(double from, double to, double y) => new(Trace.Segment(from, y, to, y), Inks.Thin);
}
