using System.CommandLine;
using System.Text;
using Duskwright.Book.Drawings;
using Duskwright.Book.Lists;
using Duskwright.Book.Sheets;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Store.History;
using Duskwright.Study;
using Duskwright.Towns;

namespace Duskwright.Commands;

/// <summary>Prints the bench book and its lists into a folder.</summary>
internal static class BookCommand
{
    internal static Command Create()
    {
        var town = Shared.TownPath();
        var folder = Shared.Out("the folder to write into; made where it is not there");
        var paper = Typed.OneOf("--paper", "A4 or Letter", PaperSize.A4);
        var only = new Option<string?>("--only") { Description = "print a part alone: labels, tonight, house:KEY, pack:ID, or a sheet by its word: tiles, bank, cut" };
        var since = new Option<string?>("--since") { Description = "an earlier state of the town (a file); only sheets that have changed since are printed" };
        var json = Shared.Json();
        var command = new Verb(
            "book",
            "Print the bench book as PDF, its drawings as SVG, every list as CSV and all of them as one workbook.",
            "Print at 100 %, not \"fit to page\": the labels are at true size, and a ruler on their sheet tells whether it worked. "
            + "The lists say the same as the book; lists.xlsx holds them all, a sheet for each. A list of houses, as import reads it, is printed as well.",
            "book examples/tavern.json --out tavern-book",
            "book examples/saltmarrow.json --out harbour --paper Letter",
            "book examples/saltmarrow.json --out labels --only labels",
            "book examples/ten-lines.csv --out labels --only labels",
            "book examples/saltmarrow.json --out chandlery --only house:chandlery")
        {
            town, folder, paper, only, since, json,
        };
        command.SetAction((parsed, cancel) => Task.FromResult(Run(
            parsed.GetRequiredValue(town), parsed.GetRequiredValue(folder), parsed.GetValue(paper), parsed.GetValue(only), parsed.GetValue(since), parsed.GetValue(json), cancel)));
        return command;
    }

    private static int Run(string path, string folder, PaperSize paper, string? only, string? since, bool json, CancellationToken cancel)
    {
        if (ReadTown.OrList(path) is not { } town)
        {
            return ExitCode.BadInput;
        }

        Town? before = null;
        if (since is not null && (before = ReadTown.From(since)) is null)
        {
            return ExitCode.BadInput;
        }

        var study = TownStudy.Of(town);
        if (BookToday.Choice(study, only) is not { } choice)
        {
            Console.Error.WriteLine($"--only is {only}; labels, tonight (where the calendar has work), house: with a house's key ({string.Join(", ", town.Buildings.Take(3).Select(b => b.Key))} …), pack: with a pack's id ({string.Join(", ", town.Supplies.Select(s => s.Id))}) or a sheet ({string.Join(", ", BenchBook.SheetWords(study))}) is allowed.");
            return ExitCode.BadInput;
        }

        if (File.Exists(folder))
        {
            Console.Error.WriteLine($"{folder} is a file, and the book is written into a folder; name another.");
            return ExitCode.BadInput;
        }

        try
        {
            var options = BookToday.Of(town, paper) with
            {
                Choice = choice,
                Since = before is null ? null : new Printing(TownStudy.Of(before), Path.GetFileName(since!), Comparison.Between(before, town).Select(d => d.Words).ToItemList()),
            };
            var files = Write(study, options, folder, cancel);
            if (json)
            {
                ResultJson.Print(new { Town = town.Name, Paper = paper, Only = only, Files = files });
            }
            else if (files.Count == 0)
            {
                Console.Out.WriteLine("No sheet has changed since; there is nothing to print.");
            }
            else
            {
                files.ForEach(Console.Out.WriteLine);
            }

            return ExitCode.Fine;
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException)
        {
            Console.Error.WriteLine($"{folder} cannot be written: {refused.Message}");
            return ExitCode.BadInput;
        }
    }

    private static List<string> Write(TownStudy study, BookOptions options, string folder, CancellationToken cancel)
    {
        var files = new List<string>();
        void Into(string name, Action<Stream> write)
        {
            using var stream = File.Create(Path.Combine(folder, name));
            write(stream);
            files.Add(Path.Combine(folder, name));
        }

        LongWork.Run(
            ("Running the packs down", () => _ = study.Packs),
            ("Looking for what spoils the show", () => _ = study.Findings),
            ("Solving every scene", () => _ = study.Scenes));
        Directory.CreateDirectory(folder);
        var pages = 0;
        LongWork.Run("Printing the book", progress => Into("bench-book.pdf", stream => pages = BenchBook.WritePdf(study, options, stream, progress, cancel)));
        if (pages == 0)
        {
            File.Delete(files[0]);
            return [];
        }

        if (options.Choice != BookChoice.Whole || options.Since is not null)
        {
            return files;
        }

        LongWork.Run(
            ("Drawing its pictures", () =>
            {
                foreach (var (name, drawing) in BookDrawings.Of(study, options))
                {
                    Into($"{name}.svg", stream => stream.Write(Encoding.UTF8.GetBytes(SvgFile.Of(drawing, Palette.Paper))));
                }
            }
        ),
            ("Writing the lists", () =>
            {
                var lists = TownLists.Of(study);
                Into(XlsxFile.FileName, stream => XlsxFile.Write(lists, stream));
                foreach (var list in lists)
                {
                    Into(list.FileName, stream => stream.Write(CsvFile.Of(list)));
                }
            }
        ));
        return files;
    }
}
