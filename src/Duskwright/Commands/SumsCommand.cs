using System.CommandLine;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Figures;
using Duskwright.Study.Sums;

namespace Duskwright.Commands;

/// <summary>Quick questions that need no town.</summary>
internal static class SumsCommand
{
    private static readonly Town Nowhere = new() { Name = "" };

    internal static Command Create()
    {
        var cell = new Option<string>("--cell") { Description = "the cell or supply: LR6, LR03, LR20, usb-5v …", DefaultValueFactory = _ => "LR6" };
        var series = new Option<int>("--cells") { Description = "cells in a row", DefaultValueFactory = _ => 3 };
        var lamp = new Option<string>("--lamp") { Description = "the lamp's id in the catalogue", DefaultValueFactory = _ => "led-0603-warm-white" };
        var current = new Option<double>("--ma") { Description = "milliamperes: of one lamp, or for wire and fuse of all", DefaultValueFactory = _ => 2 };
        var ohms = new Option<double>("--ohm") { Description = "resistor at each lamp, 0 for none", DefaultValueFactory = _ => 820 };
        var count = new Option<int>("--lamps") { Description = "how many lamps", DefaultValueFactory = _ => 20 };
        var hours = new Option<double>("--hours") { Description = "hours a day", DefaultValueFactory = _ => 8 };
        var days = new Option<int>("--days") { Description = "days without changing cells", DefaultValueFactory = _ => 1 };
        var wire = new Option<string>("--wire") { Description = "the wire's id in the catalogue", DefaultValueFactory = _ => "cu-0.20" };
        var distance = new Option<double>("--mm") { Description = "distance in millimetres", DefaultValueFactory = _ => 1000 };
        var drop = new Option<double>("--drop") { Description = "volts that may be lost", DefaultValueFactory = _ => 0.1 };
        var json = Shared.Json();

        Command Question(string verb, string words, Func<ParseResult, SumAnswer> answer, params Option[] options)
        {
            var command = new Command(verb, words);
            foreach (var option in options.Append(json))
            {
                command.Add(option);
            }

            command.SetAction(parsed => Print(() => answer(parsed), parsed.GetValue(json)));
            return command;
        }

        Supply SupplyOf(ParseResult p) => new() { Id = "1", Part = Known(p.GetRequiredValue(cell), id => Catalogue.FindSupply(Nowhere, id)?.Id, "cell or supply"), Series = Between(p.GetValue(series), 1, 24, "--cells") };
        LampPart LampOf(ParseResult p) => Known(p.GetRequiredValue(lamp), id => Catalogue.FindLamp(Nowhere, id), "lamp");
        Show ShowOf(ParseResult p) => new() { HoursPerDay = Duration.FromHours(Between(p.GetValue(hours), 0.1, 24, "--hours")), Days = Between(p.GetValue(days), 1, 366, "--days") };
        Resistance OhmsOf(ParseResult p) => Resistance.FromOhms(Between(p.GetValue(ohms), 0, 1e6, "--ohm"));
        Current CurrentOf(ParseResult p) => Current.FromMilliamperes(Between(p.GetValue(current), 0.001, 100_000, "--ma"));
        Length LengthOf(ParseResult p) => Length.FromMillimetres(Between(p.GetValue(distance), 1, 100_000, "--mm"));

        return new Command("sums", "Quick questions that need no town.")
        {
            Question("resistor", "Which resistor goes in each lamp's lead?", p => QuickSums.WhichResistor(SupplyOf(p), LampOf(p), CurrentOf(p)), cell, series, lamp, current),
            Question("lamps", "How many lamps can one pack carry?", p => QuickSums.HowManyLamps(SupplyOf(p), LampOf(p), OhmsOf(p), ShowOf(p)), cell, series, lamp, ohms, hours, days),
            Question("hours", "How long do so many lamps last on a pack?", p => QuickSums.HowLong(SupplyOf(p), LampOf(p), OhmsOf(p), Between(p.GetValue(count), 1, 1000, "--lamps"), new Show { HoursPerDay = Duration.FromHours(Between(p.GetValue(hours), 0.1, 24, "--hours")) }), cell, series, lamp, ohms, count, hours),
            Question("wire", "Which wire carries a current over a distance?", p => QuickSums.WhichWire(LengthOf(p), CurrentOf(p), Voltage.FromVolts(Between(p.GetValue(drop), 0.001, 60, "--drop"))), distance, current, drop),
            Question("fuse", "Which fuse protects a pack?", p => QuickSums.WhichFuse(SupplyOf(p), CurrentOf(p), Known(p.GetRequiredValue(wire), id => Catalogue.FindWire(Nowhere, id), "wire"), LengthOf(p)), cell, series, current, wire, distance),
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

    private static T Known<T>(string id, Func<string, T?> find, string what)
        where T : class =>
        find(id) ?? throw new BadOption($"There is no {what} \"{id}\" in the catalogue.");

    private static T Between<T>(T value, T least, T most, string option)
        where T : IComparable<T> =>
        value.CompareTo(least) >= 0 && value.CompareTo(most) <= 0
            ? value
            : throw new BadOption($"{option} is {value}; {least} to {most} is allowed.");

    private sealed class BadOption(string message) : Exception(message);
}
