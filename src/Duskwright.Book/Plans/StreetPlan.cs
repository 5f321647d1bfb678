using Duskwright.Book.Drawings;
using Duskwright.Plan;
using Duskwright.Study;
using Duskwright.Study.Results;

namespace Duskwright.Book.Plans;

/// <summary>A town without a board: its houses in a row, as far from the bank as they are.</summary>
public static class StreetPlan
{
    private const double Ground = 160;
    private const int MostPanes = 4;

    /// <summary>Draws the row.</summary>
    /// <param name="study">The town's results.</param>
    /// <returns>The drawing.</returns>
    public static Drawing Of(TownStudy study)
    {
        var known = study.Buildings.Where(b => b.Building.Distance is not null).OrderBy(b => b.Building.Distance!.Value.Millimetres).ToList();
        var far = known.Select(b => b.Building.Distance!.Value.Metres).DefaultIfEmpty(0).Max();
        List<Part> parts =
        [
            new Part(
            [
                new Stroke(new Trace().To(0, 130).Curve(200, 60, 420, 105).Curve(640, 60, 860, 70).Curve(1080, 80, 1200, 110).Line(1200, Ground).Line(0, Ground).Closed(), Inks.Quay),
                new Stroke(Trace.Segment(0, Ground, 1200, Ground), Inks.Outline),
                new Stroke(Trace.Rectangle(8, 84, 72, 100), Inks.Wall),
                new Lettering(44, 118, "bank", Inks.Note, Anchor.Middle),
                .. study.Packs.Take(5).SelectMany((p, i) => Cell(14 + (i * 12.5), p)),
            ]),
            .. known.Select((b, i) => House(b, 150 + (1000 * (far > 0 ? b.Building.Distance!.Value.Metres / far : 1)), i)),
            .. study.Buildings.Where(b => b.Building.Distance is null).Select((b, i) => Unplaced(b, 110 + (i * 60), i)),
        ];
        return new Drawing($"{study.Buildings.Count} houses by their distance from the bank", 0, 0, 1200, 210, 4.2, parts.ToItemList());
    }

    private static IEnumerable<Mark> Cell(double x, PackResult pack) =>
    [
        new Stroke(Trace.Rectangle(x + 3, 127, 4, 4), Inks.Solid),
        new Stroke(Trace.Rectangle(x, 131, 10, 44), Inks.Card),
        new Stroke(Trace.Rectangle(x + 2, 173 - (40 * pack.Supply.ChargeLeft), 6, 40 * pack.Supply.ChargeLeft), Inks.Charge),
    ];

    private static Part House(BuildingResult house, double x, int place)
    {
        var panes = Math.Min(MostPanes, house.Lamps.Count);
        List<Mark> marks =
        [
            new Stroke(Trace.Rectangle(-26, -38, 52, 38), Inks.Wall),
            new Stroke(new Trace().To(-31, -38).Line(-20, -60).Line(20, -60).Line(31, -38).Closed(), Inks.Slate),
        ];
        marks.AddRange(Enumerable.Range(0, panes).Select(l => new Stroke(Trace.Rectangle(((l - (panes / 2.0)) * 12) + 1.5, -26, 9, 12), Inks.Pane)));
        marks.Add(new Stroke(new Trace().To(0, 0).Line(0, 16 + (4 * (house.Circuit % 3))).Line(80 - x, 16 + (4 * (house.Circuit % 3))).Open(), Inks.Wire(house.Circuit)));
        marks.Add(new Lettering(0, place % 2 == 0 ? -68 : -84, house.Building.Name, Inks.Name, Anchor.Middle));
        return new Part([new Placed(x, Ground, 0, marks.ToItemList())]) { Words = house.Building.Name };
    }

    private static Part Unplaced(BuildingResult house, double x, int place) =>
        new([new Placed(x, Ground, 0, [new Stroke(new Trace().To(-22, 0).Line(-22, -36).Line(0, -58).Line(22, -36).Line(22, 0).Closed(), Inks.Hidden), new Lettering(0, -66 - (place % 2 * 16), $"{house.Building.Name}?", Inks.Name, Anchor.Middle)])]) { Words = $"{house.Building.Name}, distance not known" };
}
