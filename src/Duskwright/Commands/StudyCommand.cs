using System.CommandLine;
using Duskwright.Plan.Document;
using Duskwright.Study;
using Duskwright.Study.Figures;
using Duskwright.Study.Findings;
using Spectre.Console;

namespace Duskwright.Commands;

/// <summary>Computes everything about a town and prints what matters.</summary>
internal static class StudyCommand
{
    // A file or a pipe has no width of its own; wide enough for the table of packs.
    private const int RedirectedColumns = 160;

    internal static Command Create()
    {
        var (town, json) = (Shared.TownPath(), Shared.Json());
        var command = new Verb(
            "study",
            "Compute a town: packs, hours, currents, findings.",
            "What spoils the show comes first, each with its number and what would help. --json gives every number with its formula, inputs and source.",
            "study examples/saltmarrow.json",
            "study examples/tavern.json --json")
        {
            town, json,
        };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(town), parsed.GetValue(json)));
        return command;
    }

    private static int Run(string path, bool json)
    {
        if (ReadTown.From(path) is not { } town)
        {
            return ExitCode.BadInput;
        }

        var study = TownStudy.Of(town);
        LongWork.Run(("Running the packs down", () => _ = study.Packs), ("Looking for what spoils the show", () => _ = study.Findings), ("Solving every scene", () => _ = study.Scenes));
        if (json)
        {
            LongWork.Run(("Building each pack from parts as they are sold", () => study.Packs.ToList().ForEach(p => study.Spread(p.Supply.Id))));
            PrintJson(study);
        }
        else
        {
            PrintText(town, study);
        }

        return study.Findings.Any(f => f.Severity == Severity.Spoils) ? ExitCode.SpoilsTheShow : ExitCode.Fine;
    }

    private static void PrintJson(TownStudy study) => ResultJson.Print(new
    {
        Town = study.Town.Name,
        Packs = study.Packs.Select(p => new
        {
            p.Supply.Id,
            p.Supply.Name,
            p.Words,
            p.SwitchGroups,
            p.Buildings,
            p.Lamps,
            p.Load,
            p.Volts,
            p.HoursToDim,
            p.HoursToSpoiled,
            p.Fade,
            p.Carrying,
            p.ShortCircuit,
            Spread = study.Spread(p.Supply.Id),
            Faults = study.Faults(p.Supply.Id).Select(f => new { f.Sight, f.Words, f.Current, f.Remedy }),
        }),
        Buildings = study.Buildings.Select(b => new
        {
            b.Building.Key,
            b.Building.Name,
            b.Code,
            b.Supply,
            b.Current,
            b.PairLength,
            b.PairDrop,
            Lamps = b.Lamps.Select(l => new { l.Name, l.Room, Part = l.Part.Id, l.PartUnknown, l.SwitchGroup, l.Resistor, l.ResistorPower, l.Current, l.Volts, l.PaneLuminance, l.ReadsAsLitTo }),
            b.Tests,
        }),
        Scenes = study.Scenes.Select(s => new { s.Scene.Name, s.Lamps, s.Buildings, s.Packs, s.Unfed }),
        Findings = study.Findings.Select(f => new { f.Rule, f.Severity, f.Subject, f.Text, f.Figures, f.Remedy }),
        study.LoadList,
        study.SwitchList,
        study.CutList,
        ReelCuts = study.ReelCuts.Select(w => new
        {
            Wire = w.Wire.Id,
            w.Words,
            w.TooLong,
            Reels = w.Reels.Select(r => new { r.Name, r.IsNew, r.Millimetres, r.LeftMillimetres, Cuts = r.Cuts.Select(c => new { c.Row.Label, c.Conductors, c.Row.CutMillimetres, c.LeftMillimetres }) }),
        }),
        study.Joints,
        study.Ends,
        study.Laying,
        study.PartsList,
        study.PartsCost,
        study.Labels,
        study.Cautions,
    });

    private static void PrintText(Town town, TownStudy study)
    {
        var console = AnsiConsole.Console;
        if (Console.IsOutputRedirected)
        {
            console.Profile.Width = RedirectedColumns;
        }

        console.MarkupLineInterpolated($"[bold]{town.Name}[/]  {study.Buildings.Count} buildings, {study.Lamps.Count} lamps, {study.Packs.Count} packs, a show of {FigureText.Of(town.Show.HoursPerDay.Hours * town.Show.Days, "h")}");
        var table = new Table().Border(TableBorder.Simple).AddColumns("pack", "what", "lamps", "current", "volts", "half light after", "a third after");
        foreach (var pack in study.Packs)
        {
            table.AddRow(new[]
            {
                $"{pack.Supply.Id} {pack.Supply.Name}".Trim(), pack.Words, $"{pack.Lamps}", WithRange(pack.Load), WithRange(pack.Volts),
                pack.HoursToDim is null && pack.Fade is not null ? "never" : WithRange(pack.HoursToDim), WithRange(pack.HoursToSpoiled),
            }.Select(Markup.Escape).ToArray());
        }

        console.Write(table);
        foreach (var finding in study.Findings)
        {
            var mark = finding.Severity switch { Severity.Spoils => "▲ spoils the show", Severity.Look => "○ worth a look", _ => "✓ sound" };
            console.WriteLine($"{mark}: {finding.Text}{(finding.Remedy is { } remedy ? $" {remedy}{(remedy.EndsWith('.') ? "" : ".")}" : "")}");
        }

        console.WriteLine();
        console.WriteLine("This guides, it does not certify. Mains wiring belongs to an electrician.");
    }

    private static string WithRange(Figure? figure) => figure is null
        ? "–"
        : FigureText.Range(figure) is { } range ? $"{FigureText.Of(figure)} ({range})" : FigureText.Of(figure);
}
