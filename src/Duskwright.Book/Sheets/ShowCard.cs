using System.Globalization;
using Duskwright.Plan.Parts;
using Duskwright.Study;
using Duskwright.Study.Figures;
using Duskwright.Study.Results;

namespace Duskwright.Book.Sheets;

/// <summary>The card for the day of the show: what to switch on and look at, when each pack fades, what to take along.</summary>
internal static class ShowCard
{
    private static readonly string[] Tools = ["[  ]", "meter, tape, cutters, two leads with clips; the circuits and the fault table", "", ""];

    internal static void Draw(PageFlow flow, TownStudy study)
    {
        var packs = study.Packs.Where(p => p.Lamps > 0).ToList();
        if (packs.Count == 0)
        {
            return;
        }

        var show = study.Town.Show;
        var hours = show.HoursPerDay.Hours * show.Days;
        flow.Page("Show day");
        flow.Text(Face.Reports, 9.5f, string.Create(CultureInfo.InvariantCulture, $"Lit {show.HoursPerDay.Hours:0.##} hours a day for {show.Days} {(show.Days == 1 ? "day" : "days")}, so {hours:0.##} hours on one set of cells."));
        Before(flow, study);
        Packs(flow, packs, hours);
        TakeAlong(flow, study, packs, hours);
        After(flow);
    }

    private static void Before(PageFlow flow, TownStudy study)
    {
        flow.Gap(3);
        flow.Text(Face.Speaks, 12, "Before the doors open");
        flow.Table(
            [0.06f, 0.08f, 0.3f, 0.12f, 0.26f, 0.18f],
            ["", "switch", "lights", "LEDs", "takes alone, sound between", "seen, read"],
            study.SwitchList.Select(s => new[] { "[  ]", s.Id, s.Name ?? string.Join(", ", s.Buildings), BenchBook.Number(s.Lamps), BenchBook.WithBand(s.Current), "" }));
        flow.Gap(1);
        flow.Text(Face.Reports, 8.5f, "One switch at a time; count its LEDs. What is dark or dim: see \"If something goes dark\".");
    }

    private static void Packs(PageFlow flow, List<PackResult> packs, double hours)
    {
        flow.Gap(4);
        flow.Text(Face.Speaks, 12, "When each pack fades");
        flow.Table(
            [0.07f, 0.17f, 0.2f, 0.12f, 0.16f, 0.28f],
            ["pack", "name", "cells", "half light", "sure between", "so"],
            packs.Select(p => new[]
            {
                BenchBook.Number(p.Number), p.Supply.Name ?? "", p.Words, p.HoursToDim is { } dim ? FigureText.Of(dim) : "never",
                p.HoursToDim is { } sure ? FigureText.Range(sure) ?? "" : "", Advice(p, hours),
            }));
        flow.Gap(1);
        flow.Text(Face.Reports, 8.5f, "Hours that its lamps burn with all switches on, from cells as full as the town says they are. Fresh cells are due by the earlier end of the range.");
    }

    private static string Advice(PackResult pack, double hours) => pack.HoursToDim is not { } dim
        ? "lasts"
        : (dim.Low ?? dim.Value) >= hours ? "lasts the show" : string.Create(CultureInfo.InvariantCulture, $"fresh cells by hour {Math.Max(0.5, Math.Floor(2 * (dim.Low ?? dim.Value)) / 2):0.#}");

    private static void TakeAlong(PageFlow flow, TownStudy study, List<PackResult> packs, double hours)
    {
        flow.Gap(4);
        flow.Text(Face.Speaks, 12, "Take along");
        var cells = packs
            .Where(p => p.Part.Charge is not null)
            .GroupBy(p => p.Part.Name)
            .Select(g => (g.Key, One: g.Max(p => p.Supply.Series * p.Supply.Parallel), Due: g.Where(p => p.HoursToDim is { } dim && (dim.Low ?? dim.Value) < hours).Sum(p => p.Supply.Series * p.Supply.Parallel)));
        var rows = cells.Select(c => new[] { "[  ]", c.Key, BenchBook.Number(Math.Max(c.One, c.Due)), c.Due > 0 ? "for the packs that fade in the show" : "one set, in case" })
            .Concat(packs.Select(p => p.Supply.Fuse).OfType<string>().Distinct().Select(id => new[] { "[  ]", Catalogue.FindFuse(study.Town, id)!.Name, "1", "in case one fails; find the short before another goes in" }))
            .Concat(study.PartsList.Where(r => r.Spares > 0).Select(r => new[] { "[  ]", r.Part, $"{BenchBook.Number(r.Spares)}{(study.CutList.Any(c => c.Wire == r.Part) ? " m" : "")}", "spare" }))
            .Append(Tools);
        flow.Table([0.06f, 0.46f, 0.12f, 0.36f], ["", "what", "how many", "why"], rows);
    }

    private static void After(PageFlow flow)
    {
        flow.Gap(4);
        flow.Need(24);
        flow.Text(Face.Speaks, 12, "When the doors close");
        foreach (var words in (string[])["All switches off. Take cells out of a town that is left alone or put away: a leaking cell or a short would find nobody there.", "Write down how long each pack burnt; the next forecast begins there."])
        {
            flow.Text(Face.Reports, 9, $"[  ]  {words}");
        }
    }
}
