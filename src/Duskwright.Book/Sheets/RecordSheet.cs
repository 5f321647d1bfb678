using System.Globalization;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Study;
using Duskwright.Study.Bench;
using Duskwright.Study.Figures;
using Duskwright.Study.Results;

namespace Duskwright.Book.Sheets;

/// <summary>What was built, what was read, and what nobody knows any more; with room to write.</summary>
internal static class RecordSheet
{
    private const int RoomToWrite = 12;

    internal static void Draw(PageFlow flow, TownStudy study)
    {
        var houses = study.Buildings.Where(b => b.Lamps.Count > 0).ToList();
        if (houses.Count == 0)
        {
            return;
        }

        var log = study.Town.StandingLog().ToList();
        flow.Page("As it was built");
        flow.Text(Face.Reports, 9, "For whoever opens this town next. What is not known was assumed, and its effect is in every range of this book. Strike out what turns out otherwise and write beside it.");
        flow.Gap(2);
        flow.Table(
            [0.07f, 0.17f, 0.08f, 0.25f, 0.2f, 0.23f],
            ["label", "house", "state", "in it", "not known", "last seen or read"],
            houses.Select(h => new[] { h.Code, h.Building.Name, h.Building.State.ToString().ToLowerInvariant(), Contents(h), NotKnown(h), Last(log, h.Building) }));
        flow.Page("What was done and read");
        flow.Table(
            [0.16f, 0.2f, 0.15f, 0.49f],
            ["day", "where", "what", "seen, read, written"],
            log.Select(l => new[] { Day(l), Where(study, l), What(l.Kind), LogText.Reading(l) }).Concat(Enumerable.Repeat((string[])["________________", "____________________", "_______________", ""], RoomToWrite)));
    }

    private static string Contents(BuildingResult house) => string.Join("; ", house.Lamps
        .GroupBy(l => (l.Part.Name, Resistor: l.Resistor.Value > 0 ? FigureText.Of(l.Resistor) : "no resistor"))
        .Select(g => $"{g.Count()} × {g.Key.Name}, {g.Key.Resistor}"));

    private static string NotKnown(BuildingResult house)
    {
        List<string> unknown =
        [
            .. house.Lamps.Any(l => l.PartUnknown) ? ["which LEDs"] : Array.Empty<string>(),
            .. house.Lamps.Any(l => l.Resistor.Certainty == Certainty.Assumed) ? ["the resistors"] : Array.Empty<string>(),
            .. house.Building.Wire == PartId.Unknown ? ["the wire"] : Array.Empty<string>(),
            .. house.PairLength.Certainty == Certainty.Measured || house.Building.PairLength is not null ? Array.Empty<string>() : ["the pair's length as laid"],
        ];
        return unknown.Count == 0 ? "nothing" : string.Join(", ", unknown);
    }

    private static string Last(List<LogEntry> log, Building building) =>
        log.LastOrDefault(l => l.Building == building.Key && (l.Lit is not null || l.Looks.Count > 0 || l.Current is not null || l.Passed is not null)) is { } entry ? $"{Day(entry)}: {LogText.Reading(entry)}" : "";

    private static string Day(LogEntry entry) => entry.Date.ToString("d MMM yyyy", CultureInfo.InvariantCulture);

    private static string Where(TownStudy study, LogEntry entry) =>
        study.Buildings.FirstOrDefault(b => b.Building.Key == entry.Building) is { } house ? house.Building.Name
        : study.Packs.FirstOrDefault(p => p.Supply.Id == entry.Supply) is { } pack ? $"pack {pack.Number}"
        : "the town";

    private static string What(LogKind kind) => kind switch
    {
        LogKind.Reading => "read or seen",
        LogKind.Seal => "closed for good",
        LogKind.Fault => "a fault",
        LogKind.CellsChanged => "fresh cells",
        LogKind.StepDone => "step done",
        LogKind.Test => "test",
        LogKind.Burnt => "burnt",
        LogKind.CellsOut => "cells out",
        _ => "note",
    };
}
