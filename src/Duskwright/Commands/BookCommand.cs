using System.CommandLine;
using Duskwright.Book.Sheets;
using Duskwright.Study;

namespace Duskwright.Commands;

/// <summary>Prints the bench book into a folder.</summary>
internal static class BookCommand
{
    internal static Command Create()
    {
        var town = Shared.TownPath();
        var folder = Shared.Out("the folder to write into; made where it is not there");
        var paper = new Option<PaperSize>("--paper") { Description = "A4 or Letter", DefaultValueFactory = _ => PaperSize.A4 };
        var command = new Command("book", "Print the bench book as PDF.") { town, folder, paper };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(town), parsed.GetRequiredValue(folder), parsed.GetValue(paper)));
        return command;
    }

    private static int Run(string path, string folder, PaperSize paper)
    {
        if (ReadTown.From(path) is not { } town)
        {
            return ExitCode.BadInput;
        }

        try
        {
            Directory.CreateDirectory(folder);
            var file = Path.Combine(folder, "bench-book.pdf");
            using var stream = File.Create(file);
            BenchBook.WritePdf(TownStudy.Of(town), new BookOptions(paper, DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime)), stream);
            Console.Out.WriteLine(file);
            return ExitCode.Fine;
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException)
        {
            Console.Error.WriteLine($"{folder} cannot be written: {refused.Message}");
            return ExitCode.BadInput;
        }
    }
}
