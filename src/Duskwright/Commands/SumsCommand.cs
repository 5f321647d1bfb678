using System.CommandLine;
using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Figures;
using Duskwright.Study.Sums;

namespace Duskwright.Commands;

/// <summary>Quick questions that need no town.</summary>
internal static class SumsCommand
{
    internal static Command Create()
    {
        var cell = new Option<string>("--cell") { Description = "the cell or supply: LR6, LR03, LR20, usb-5v …", DefaultValueFactory = _ => "LR6" };
        var series = Typed.Whole("--cells", "cells in a row", 3, 1, 24);
        var lamp = new Option<string>("--lamp") { Description = "the lamp's id in the catalogue", DefaultValueFactory = _ => "led-0603-warm-white" };
        var current = Typed.Number("--ma", "milliamperes: of one lamp, or for wire and fuse of all", 2, 0.001, 100_000);
        var ohms = Typed.Number("--ohm", "resistor at each lamp, 0 for none", 820, 0, 1e6);
        var count = Typed.Whole("--lamps", "how many lamps", 20, 1, 1000);
        var hours = Typed.Number("--hours", "hours a day", 8, 0.1, 24);
        var days = Typed.Whole("--days", "days without changing cells", 1, 1, 366);
        var wire = new Option<string>("--wire") { Description = "the wire's id in the catalogue", DefaultValueFactory = _ => "cu-0.20" };
        var distance = Typed.Number("--mm", "distance in millimetres", 1000, 1, 100_000);
        var drop = Typed.Number("--drop", "volts that may be lost", 0.1, 0.001, 60);
        var json = Shared.Json();

        Command Question(string verb, string words, string example, Func<ParseResult, SumAnswer> answer, params Option[] options)
        {
            var command = new Verb(verb, words, "What is not said is taken as a beginner usually has it; the brackets above tell. No town is needed.", $"sums {verb}", $"sums {verb} {example}");
            foreach (var option in options.Append(json))
            {
                command.Add(option);
            }

            command.SetAction(parsed => Print(() => answer(parsed), parsed.GetValue(json)));
            return command;
        }

        Supply SupplyOf(ParseResult p) => Harmless(new() { Id = "1", Part = Known(p.GetRequiredValue(cell), "cell or supply", Catalogue.Parts.Supplies, s => s.Id).Id, Series = p.GetValue(series) });
        LampPart LampOf(ParseResult p) => Known(p.GetRequiredValue(lamp), "lamp", Catalogue.Parts.Lamps, l => l.Id);
        WirePart WireOf(ParseResult p) => Known(p.GetRequiredValue(wire), "wire", Catalogue.Parts.Wires, w => w.Id);
        Duration HoursOf(ParseResult p) => Duration.FromHours(p.GetValue(hours));
        Resistance OhmsOf(ParseResult p) => Resistance.FromOhms(p.GetValue(ohms));
        Current CurrentOf(ParseResult p) => Current.FromMilliamperes(p.GetValue(current));
        Length LengthOf(ParseResult p) => Length.FromMillimetres(p.GetValue(distance));

        return new Verb("sums", "Quick questions that need no town.", "Each question answers with what a beginner usually has where nothing is said.", "sums resistor --cells 3 --ma 2", "sums hours --lamps 30 --ohm 820", "sums wire --mm 1500 --ma 150")
        {
            Question("resistor", "Which resistor goes in each lamp's lead?", "--cells 2 --lamp led-0603-amber --ma 1.5", p => QuickSums.WhichResistor(SupplyOf(p), LampOf(p), CurrentOf(p)), cell, series, lamp, current),
            Question("lamps", "How many lamps can one pack carry?", "--hours 6 --days 2", p => QuickSums.HowManyLamps(SupplyOf(p), LampOf(p), OhmsOf(p), new Show { HoursPerDay = HoursOf(p), Days = p.GetValue(days) }), cell, series, lamp, ohms, hours, days),
            Question("hours", "How long do so many lamps last on a pack?", "--lamps 30 --cell LR03", p => QuickSums.HowLong(SupplyOf(p), LampOf(p), OhmsOf(p), p.GetValue(count), new Show { HoursPerDay = HoursOf(p) }), cell, series, lamp, ohms, count, hours),
            Question("wire", "Which wire carries a current over a distance?", "--mm 2500 --ma 150 --drop 0.2", p => QuickSums.WhichWire(LengthOf(p), CurrentOf(p), Voltage.FromVolts(p.GetValue(drop))), distance, current, drop),
            Question("fuse", "Which fuse protects a pack?", "--ma 120 --wire awg-28 --mm 1500", p => QuickSums.WhichFuse(SupplyOf(p), CurrentOf(p), WireOf(p), LengthOf(p)), cell, series, current, wire, distance),
        };
    }

    private static int Print(Func<SumAnswer> question, bool json)
    {
        SumAnswer answer;
        try
        {
            answer = question();
        }
        catch (BadOption bad)
        {
            Console.Error.WriteLine(bad.Message);
            return ExitCode.BadInput;
        }

        if (json)
        {
            ResultJson.Print(new { answer.Headline, answer.Text, answer.Figures, answer.Warnings });
        }
        else
        {
            Console.Out.WriteLine(FigureText.Of(answer.Headline));
            Console.Out.WriteLine(answer.Text);
            foreach (var warning in answer.Warnings)
            {
                Console.Out.WriteLine($"Mind: {warning}");
            }
        }

        return ExitCode.Fine;
    }

    private static Supply Harmless(Supply supply) =>
        TownChecks.Of(new Town { Name = "", Supplies = [supply] }) is [var problem, ..] ? throw new BadOption($"{problem.Message} {problem.Remedy}") : supply;

    private static T Known<T>(string id, string what, IEnumerable<T> parts, Func<T, string> idOf)
        where T : class =>
        parts.FirstOrDefault(p => string.Equals(idOf(p), id, StringComparison.OrdinalIgnoreCase))
        ?? throw new BadOption($"There is no {what} \"{id}\" in the catalogue. Known are {string.Join(", ", parts.Select(idOf))}.");

    private sealed class BadOption(string message) : Exception(message);
}
