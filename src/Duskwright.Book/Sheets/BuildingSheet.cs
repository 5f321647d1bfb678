using Duskwright.Book.Drawings;
using Duskwright.Book.Houses;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Study;
using Duskwright.Study.Figures;
using Duskwright.Study.Results;
using SkiaSharp;

namespace Duskwright.Book.Sheets;

/// <summary>Everything the maker needs at the bench for one building: its walls and lamp cards at full size, its wiring, leads and tests.</summary>
internal static class BuildingSheet
{
    private const float Gutter = 6;

    internal static void Draw(PageFlow flow, TownStudy study, BuildingResult building)
    {
        flow.Page(building.Building.Name, ruled: true);
        flow.Text(Face.Reports, 9.5f, Opening(study, building));
        flow.Gap(3);
        FullSize(flow, building);
        Wiring(flow, study, building);
        Lamps(flow, building);
        GlazingTable.Draw(flow, building.Building);
        Leads(flow, study, building);
        Tests(flow, building);
        Gate(flow, building.Building.Kind);
    }

    private static string Opening(TownStudy study, BuildingResult building)
    {
        var terminals = string.Join(", ", study.Labels.Where(l => l.Code == building.Code).Select(l => l.Terminal));
        var size = building.Building.Place is { Width: { } width, Depth: { } depth } ? $" {width.Millimetres:0.#} × {depth.Millimetres:0.#} mm on the board." : "";
        return $"House {building.Number}, label {building.Code} {terminals}, {(building.Supply is { } pack ? $"pack {pack}" : "on no one pack")}. Pair of {building.Wire.Name}, {BenchBook.Millimetres(building.PairLength)} long. Takes {BenchBook.WithBand(building.Current)}.{size}";
    }

    // Walls and cards where they first fit, the highest place first, then the leftmost; a page is filled before the next begins.
    private static void FullSize(PageFlow flow, BuildingResult building)
    {
        // A lamp on a post or in a boat has no walls to cut.
        var walls = HouseElevation.Walls(building.Building).Where(_ => building.Building.Kind == BuildingKind.House).Select(w => Wall(building, w, flow.Width));
        var cards = LampCard.Of(building).Select(d => (d.Title, Drawing: d)).ToList();
        if (cards.Count > 0)
        {
            flow.Text(Face.Reports, 8.5f, building.Building.Kind == BuildingKind.House
                ? "Walls and lamp cards are drawn at full size unless it says otherwise. Crossed rings are lamps behind the wall; hatched panes stay dark."
                : "The lamp card is drawn at full size.");
            flow.Gap(2);
        }

        var waiting = walls.Concat(cards).ToList();
        while (waiting.Count > 0)
        {
            var placed = new List<SKRect>();
            foreach (var picture in waiting.ToList())
            {
                var (words, drawing) = picture;
                var size = new SKSize(Math.Max((float)(drawing.Width / drawing.Pen), words.Length * 1.9f), (float)(drawing.Height / drawing.Pen) + 6);

                // What is taller than any page is drawn all the same, on a page of its own, rather than left out.
                if ((Fit(placed, size, flow) ?? (flow.IsFresh && placed.Count == 0 ? new SKPoint(0, flow.Y) : null)) is not { } place)
                {
                    continue;
                }

                flow.Words(Face.Speaks, 10, words, place.X, place.Y + 4);
                flow.Place(drawing, place.X, place.Y + 6);
                placed.Add(SKRect.Create(place, size));
                waiting.Remove(picture);
            }

            flow.Y = placed.Select(p => p.Bottom).DefaultIfEmpty(flow.Y).Max() + 3;
            if (waiting.Count > 0)
            {
                flow.NewPage();
            }
        }
    }

    private static SKPoint? Fit(List<SKRect> placed, SKSize size, PageFlow flow)
    {
        var places = from y in placed.Select(p => p.Bottom + 2).Append(flow.Y)
                     from x in placed.Select(p => p.Right + Gutter).Append(0)
                     let box = SKRect.Create(x, y, size.Width, size.Height)
                     where box.Right <= flow.Width && box.Bottom <= flow.Y + flow.Room && !placed.Any(p => p.IntersectsWith(box))
                     orderby y, x
                     select new SKPoint?(box.Location);
        return places.FirstOrDefault();
    }

    private static (string Words, Drawing Drawing) Wall(BuildingResult building, WallSide wall, float room)
    {
        var full = HouseElevation.Of(building, wall, 1, 1);
        var side = wall switch { WallSide.Front => "Front", WallSide.Right => "Right side", WallSide.Back => "Back", _ => "Left side" };
        if (full.Width <= room)
        {
            return (side, full);
        }

        var scale = Math.Ceiling(full.Width / room);
        return ($"{side}, at 1:{scale:0}", HouseElevation.Of(building, wall, scale, 1));
    }

    private static void Wiring(PageFlow flow, TownStudy study, BuildingResult building)
    {
        foreach (var (sketch, i) in WiringSketch.Of(study, building).Select((s, i) => (s, i)))
        {
            flow.Need((float)sketch.Height + 10);
            if (i == 0)
            {
                flow.Text(Face.Speaks, 12, "Wiring, with every joint numbered");
                flow.Text(Face.Reports, 8.5f, "The conductor with plus and bar is the positive one, whatever its colour.");
                flow.Gap(1);
            }

            flow.Picture(sketch);
        }
    }

    private static void Lamps(PageFlow flow, BuildingResult building)
    {
        // A short table stays in one piece.
        flow.Need(14 + (Math.Min(building.Lamps.Count, 8) * 5));
        flow.Text(Face.Speaks, 12, "Lamps and resistors");
        flow.Table(
            [0.06f, 0.15f, 0.25f, 0.29f, 0.25f],
            ["lamp", "room", "part", "resistor and its bands", "takes"],
            building.Lamps.Select(l => new[] { l.Name, l.Room ?? "", l.PartUnknown ? "not known" : l.Part.Name, Resistor(l), BenchBook.WithBand(l.Current) }));
        flow.Gap(3);
    }

    private static string Resistor(LampResult lamp) => lamp.Resistor.Value <= 0
        ? "none"
        : ColourBands.Of(lamp.Resistor.Value) is { } bands ? $"{FigureText.Of(lamp.Resistor)}: {bands}" : FigureText.Of(lamp.Resistor);

    private static void Leads(PageFlow flow, TownStudy study, BuildingResult building)
    {
        var rows = study.CutList.Where(r => r.Label == building.Code || r.Label.StartsWith($"{building.Code} ", StringComparison.Ordinal)).ToList();
        if (rows.Count == 0)
        {
            return;
        }

        var drawing = LeadSketch.Of(rows);
        flow.Need((float)drawing.Height + 14);
        flow.Text(Face.Speaks, 12, "Cut these leads");
        flow.Text(Face.Reports, 8.5f, "Drawn at a quarter of their length. Strip 3 mm at each end, 6 mm where it goes under a screw; mark the plus at both ends before threading.");
        flow.Gap(2);
        flow.Picture(drawing);
        flow.Gap(3);
    }

    private static void Tests(PageFlow flow, BuildingResult building)
    {
        flow.Need(40);
        flow.Text(Face.Speaks, 12, "Test, and write it down");
        flow.Table(
            [0.16f, 0.42f, 0.08f, 0.2f, 0.14f],
            ["when", "do", "lit", "meter, if you have one", "yours, date"],
            building.Tests.Select(t => new[] { t.When, t.Do, t.ShouldLight == 0 ? "none" : BenchBook.Number(t.ShouldLight), t.Reading is { } reading ? BenchBook.WithBand(reading) : "", "" }));
        flow.Gap(4);
    }

    private static void Gate(PageFlow flow, BuildingKind kind)
    {
        flow.Need(20);
        flow.Text(Face.Speaks, 11, kind == BuildingKind.House ? "The roof may be glued on when the tests up to \"roof on, in the dark\" are passed, the house when all but the last are." : "It may be glued in when all tests but the last are passed.");
        flow.Gap(2);
        flow.Text(Face.Reports, 9.5f, "date ____________________      by ____________________");
        flow.Text(Face.Reports, 8.5f, "Cells out while you solder. Fuse at the pack, no bare ends near card.");
    }
}
