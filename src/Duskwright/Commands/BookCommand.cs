using System.CommandLine;
using System.Text;
using Duskwright.Book.Drawings;
using Duskwright.Book.Lists;
using Duskwright.Book.Sheets;
using Duskwright.Plan.Document;
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
        var json = Shared.Json();
        var command = new Verb(
            "book",
            "Print the bench book as PDF, its drawings as SVG, every list as CSV and all of them as one workbook.",
            "Print at 100 %, not \"fit to page\": the labels are at true size, and a ruler on their sheet tells whether it worked. "
            + "The lists say the same as the book; lists.xlsx holds them all, a sheet for each.",
            "book examples/tavern.json --out tavern-book",
            "book examples/saltmarrow.json --out harbour --paper Letter")
        {
            town, folder, paper, json,
        };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(town), parsed.GetRequiredValue(folder), parsed.GetValue(paper), parsed.GetValue(json)));
        return command;
    }

    private static int Run(string path, string folder, PaperSize paper, bool json)
    {
        if (ReadTown.From(path) is not { } town)
        {
            return ExitCode.BadInput;
        }

        if (File.Exists(folder))
        {
            Console.Error.WriteLine($"{folder} is a file, and the book is written into a folder; name another.");
            return ExitCode.BadInput;
        }

        try
        {
            var files = Write(town, folder, paper);
            if (json)
            {
                ResultJson.Print(new { Town = town.Name, Paper = paper, Files = files });
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

    private static List<string> Write(Town town, string folder, PaperSize paper)
    {
        var (study, options) = (TownStudy.Of(town), BookToday.Of(town, paper));
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
            ("Solving every scene", () => _ = study.Scenes),
            ("Printing the book", () =>
            {
                Directory.CreateDirectory(folder);
                Into("bench-book.pdf", stream => BenchBook.WritePdf(study, options, stream));
            }
        ),
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
