using System.Globalization;
using Duskwright.Book.Lists;
using Duskwright.Study;
using Duskwright.Study.Figures;

namespace Duskwright.Book.Sheets;

/// <summary>What the maker prints and pins above the bench: cautions, board and bank, lists, labels at true size, a sheet a building.</summary>
public static class BenchBook
{
    private const float LabelWidth = 55;
    private const float LabelHeight = 18;
    private const float LabelGap = 5;

    internal const string LabelsId = "labels";
    internal const string StripsId = "strips";
    internal const string FlagsId = "flags";
    internal const string TonightId = "tonight";

    /// <summary>Prints the book as PDF; the same town, options and program give the same bytes.</summary>
    /// <param name="study">The town's results.</param>
    /// <param name="options">Paper, date and what is printed.</param>
    /// <param name="stream">Where to write.</param>
    /// <param name="progress">Hears the share that is done, 0 to 1, after each sheet.</param>
    /// <param name="cancel">Ends the printing.</param>
    /// <returns>How many pages; none where nothing has changed or the choice names nothing that has a sheet.</returns>
    public static int WritePdf(TownStudy study, BookOptions options, Stream stream, IProgress<double>? progress = null, CancellationToken cancel = default)
    {
        var sheets = Sheets(study, options).Where(s => options.Choice.Holds(s, study)).ToList();
        if (options.Since is { } since)
        {
            var before = Sheets(since.Study, options with { Since = null }).ToDictionary(s => s.Id, s => Fingerprint(s, since.Study, options), StringComparer.Ordinal);
            sheets = [.. sheets.Where(s => before.GetValueOrDefault(s.Id) != Fingerprint(s, study, options))];
            if (sheets.Count > 0)
            {
                sheets.Insert(0, Changed(since, [.. sheets.Select(s => s.Title())]));
            }
        }

        using var flow = new PageFlow(stream, study.Town.Name, options);
        for (var i = 0; i < sheets.Count; i++)
        {
            cancel.ThrowIfCancellationRequested();
            sheets[i].Draw(flow);
            progress?.Report((i + 1.0) / sheets.Count);
        }

        return flow.Pages;
    }

    /// <summary>The words of the town's own sheets, each of which can be printed alone.</summary>
    /// <param name="study">The town's results.</param>
    /// <returns>The words, in the order of the book.</returns>
    public static IReadOnlyList<string> SheetWords(TownStudy study) =>
        [.. Sheets(study, new BookOptions(PaperSize.A4, DateOnly.MinValue)).Where(s => s.Building is null).Select(s => s.Id)];

    private static IEnumerable<BookSheet> Sheets(TownStudy study, BookOptions options) =>
    [
        new("cautions", () => "Before you begin", flow => Cautions(flow, study)),
        new("how", () => "How to read this book", flow => HowToRead.Draw(flow, study, [.. Sheets(study, options).Where(s => s.Building is null).Select(s => s.Title())])),
        .. options.Choice.Day is { } day ? [new BookSheet(TonightId, () => "Tonight", flow => TonightSheet.Draw(flow, study, day))] : Array.Empty<BookSheet>(),
        new("board", () => "The board", flow => BoardSheet.Draw(flow, study, options)),
        new("tiles", () => "The board at full size", flow => TilesSheet.Draw(flow, study, options)),
        new("bank", () => "The bank", flow => BankSheet.Draw(flow, study)),
        new("circuits", () => "Circuits", flow => CircuitSheet.Draw(flow, study, options)),
        Listed("pack", () => TownLists.Packs(study), [0.05f, 0.1f, 0.13f, 0.09f, 0.05f, 0.09f, 0.13f, 0.08f, 0.08f, 0.12f, 0.08f], "With all switches on, on cells as full as they are now. Half light is when the worst lamp looks dim; at a third the show is spoiled."),
        Listed("switch", () => TownLists.Switches(study), [0.08f, 0.16f, 0.06f, 0.06f, 0.1f, 0.14f, 0.28f, 0.12f], "Read at the switch, with this switch alone on."),
        Listed("load", () => TownLists.Loads(study), [0.08f, 0.2f, 0.07f, 0.3f, 0.08f, 0.07f, 0.08f, 0.12f], "What each house takes with all its lamps on."),
        Listed("cut", () => LeadLists.Cuts(study), [0.09f, 0.17f, 0.17f, 0.15f, 0.08f, 0.08f, 0.07f, 0.05f, 0.14f], "Cut a shade long, and mark the plus at both ends before you thread it. Slack is what a lead is longer than its way as drawn."),
        Listed("reel", () => LeadLists.Reels(study), [0.2f, 0.14f, 0.23f, 0.13f, 0.09f, 0.1f, 0.11f], string.Join(" ", study.ReelCuts.Select(w => $"{w.Wire.Name}: {w.Words}").Concat(study.ReelCuts.SelectMany(w => w.TooLong)).Prepend("Cut reel by reel and in this order, and least is wasted."))),
        Listed("joint", () => LeadLists.Joints(study), [0.2f, 0.36f, 0.1f, 0.1f, 0.12f, 0.12f], "Slip the sleeve on before you join. Test a joint that nobody will reach before it is covered."),
        Listed("end", () => LeadLists.Ends(study), [0.2f, 0.18f, 0.08f, 0.08f, 0.46f], "Strip, tin and screw. Burning enamel smokes: air the room, and keep the iron away from card and solvents."),
        Listed("laying", () => TownLists.Laying(study), [0.06f, 0.62f, 0.32f], string.Join(" ", study.Laying.Notes.Concat(study.Laying.Removable.Select(h => h.Words)).Prepend("Pull and set down in this order, and no pair has to go under a house that stands. Where nothing decides, the back of the board comes first."))),
        .. EveningRow.Days(study.Town).Count > 0 ? [new BookSheet("calendar", () => "Calendar", flow => CalendarSheet.Draw(flow, study))] : Array.Empty<BookSheet>(),
        new(LabelsId, () => "Labels", flow => Labels(flow, study)),
        new(FlagsId, () => "Labels to fold over the pairs", flow => FlagsSheet.Draw(flow, study, options)),
        new(StripsId, () => "Labels for the bank", flow => StripsSheet.Draw(flow, study)),
        Listed("parts", () => TownLists.Parts(study), [0.04f, 0.29f, 0.2f, 0.09f, 0.09f, 0.07f, 0.14f, 0.08f], "For the houses that are not fitted yet, and a fresh set of cells; wire in metres. Usual prices in units of about one euro or dollar; yours may differ.", ticks: true, end: () => $"In all {FigureText.Of(study.PartsCost)}, tools apart."),
        Listed("spread", () => TownLists.Spread(study), [0.06f, 0.13f, 0.13f, 0.24f, 0.06f, 0.1f, 0.09f, 0.1f, 0.09f], "Each pack built two thousand times from lamps, resistors, wires and cells as they are sold. Nine in ten lie within the ranges; the eye sees a difference from ΔL* 5 on. A greediest lamp near 1 is even; from 2 on it takes the others' share and wants a resistor."),
        Listed("fuse", () => TownLists.Fuses(study), [0.06f, 0.16f, 0.1f, 0.1f, 0.1f, 0.1f, 0.2f, 0.09f, 0.09f], "The worst short that can last, of every resistance it may have, at the bank and at the far end, with fresh and with worn cells. Card browns from about 120 °C on. A fuse guards the wire; a short that is only warm can still scorch card: take cells out while you work."),
        new("dark", () => "If something goes dark", flow => Faults(flow, study)),
        new("show", () => "Show day", flow => ShowCard.Draw(flow, study)),
        new("record", () => "As it was built", flow => RecordSheet.Draw(flow, study)),
        .. study.Buildings.Where(b => b.Lamps.Count > 0).Select(b => new BookSheet($"house:{b.Building.Key}", () => b.Building.Name, flow => BuildingSheet.Draw(flow, study, b)) { Building = b.Building.Key }),
    ];

    // What a sheet shows, whatever page of the book it begins on.
    private static string Fingerprint(BookSheet sheet, TownStudy study, BookOptions options)
    {
        using var flow = new PageFlow(Stream.Null, study.Town.Name, options with { Since = null });
        sheet.Draw(flow);
        return flow.Fingerprint();
    }

    private static BookSheet Changed(Printing since, IReadOnlyList<string> titles) => new("changed", () => "What changed", flow =>
    {
        flow.Page($"Changed since {since.Words}");
        flow.Text(Face.Strong, 11, "In the town");
        foreach (var change in since.Changes)
        {
            flow.Text(Face.Reports, 9.5f, change);
        }

        flow.Gap(4);
        flow.Text(Face.Strong, 11, "These sheets are printed again; put them in the place of the old ones");
        foreach (var title in titles)
        {
            flow.Text(Face.Reports, 9.5f, title);
        }
    });

    private static void Cautions(PageFlow flow, TownStudy study)
    {
        flow.Page(study.Town.Name);
        flow.Text(Face.Strong, 11, "Before you begin");
        foreach (var caution in study.Cautions)
        {
            flow.Gap(2);
            flow.Text(Face.Strong, 9.5f, caution.Topic);
            flow.Text(Face.Reports, 9.5f, caution.Words);
        }

        flow.Gap(6);
        flow.Text(Face.Strong, 11, "What was found");
        foreach (var finding in study.Findings)
        {
            flow.Gap(1.5f);
            flow.Text(Face.Reports, 9, $"{finding.Severity switch { Study.Findings.Severity.Spoils => "Spoils the show", Study.Findings.Severity.Look => "Worth a look", _ => "Sound" }}: {finding.Text} {finding.Remedy}".TrimEnd());
        }
    }

    private static void Labels(PageFlow flow, TownStudy study)
    {
        flow.Page("Labels", ruled: true);
        var across = (int)((flow.Width + LabelGap) / (LabelWidth + LabelGap));
        foreach (var row in study.Labels.Chunk(across))
        {
            flow.Need(LabelHeight + LabelGap);
            for (var i = 0; i < row.Length; i++)
            {
                flow.Box(i * (LabelWidth + LabelGap), LabelWidth, LabelHeight, $"{row[i].Code}  {row[i].Terminal}", [row[i].Name, row[i].Detail]);
            }

            flow.Gap(LabelHeight + LabelGap);
        }
    }

    // With ticks, a box stands before every row.
    private static BookSheet Listed(string id, Func<TownList> listed, float[] widths, string words, bool ticks = false, Func<string>? end = null) => new(id, () => listed().Title, flow =>
    {
        var list = listed();
        if (list.Rows.Count == 0)
        {
            return;
        }

        flow.Page(list.Title);
        flow.Text(Face.Reports, 9, words);
        flow.Gap(1.5f);
        string[] box = ticks ? ["[  ]"] : [];
        flow.Table(widths, [.. box.Select(_ => ""), .. list.Headings], list.Rows.Select(r => box.Concat(r.Select(c => c.Text)).ToArray()));
        if (end is not null)
        {
            flow.Gap(2);
            flow.Text(Face.Strong, 10, end());
        }
    });

    // A single lamp that is dark speaks for itself; what darkens or dims more is worth a row.
    private static void Faults(PageFlow flow, TownStudy study)
    {
        if (study.Packs.All(p => p.Lamps == 0))
        {
            return;
        }

        flow.Page("If something goes dark");
        flow.Text(Face.Reports, 9, "All switches of the pack on. One lamp alone that is dark has an open joint of its own or a dead LED. Where two rows look alike, the current tells.");
        flow.Gap(1.5f);
        flow.Table(
            [0.06f, 0.26f, 0.36f, 0.1f, 0.22f],
            ["pack", "you see", "it may be", "it takes", "all well"],
            from pack in study.Packs
            from fault in study.Faults(pack.Supply.Id)
            where fault.IsWide
            select new[] { Number(pack.Number), fault.Sight, string.Join("; or ", fault.Words), FigureText.Of(fault.Current), WithBand(pack.Load) });
    }

    internal static string WithBand(Figure? figure) => figure is null ? "–" : FigureText.Range(figure) is { } band ? $"{FigureText.Of(figure)} ({band})" : FigureText.Of(figure);

    internal static string Millimetres(Figure metres) => $"{Math.Ceiling((metres.Value * 1000) - 1e-9).ToString("0", CultureInfo.InvariantCulture)} mm";

    internal static string Number(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
