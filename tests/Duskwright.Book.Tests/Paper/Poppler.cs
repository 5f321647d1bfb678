using System.Diagnostics;

namespace Duskwright.Book.Tests.Paper;

/// <summary>The programs of poppler-utils, a second reader of PDF beside the library; tests that need them are skipped where they are not installed.</summary>
internal static class Poppler
{
    /// <summary>What a program says of a file.</summary>
    internal static string Ask(string program, byte[] file, params string[] options)
    {
        using var folder = new Folder();
        var path = folder.Holding(file);
        return Run(program, [.. options, path, .. program == "pdftotext" ? ["-"] : Array.Empty<string>()]);
    }

    /// <summary>A page as grey dots, 600 to the inch.</summary>
    internal static GreyPage Page(byte[] file, int number)
    {
        using var folder = new Folder();
        var page = number.ToString(System.Globalization.CultureInfo.InvariantCulture);
        var path = folder.Holding(file);
        Run("pdftoppm", ["-r", "600", "-gray", "-f", page, "-l", page, "-singlefile", path, Path.Combine(folder.Path, "page")]);
        return GreyPage.Read(File.ReadAllBytes(Path.Combine(folder.Path, "page.pgm")), 600);
    }

    private static string Run(string program, IEnumerable<string> options)
    {
        var path = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Select(p => Path.Combine(p, program)).FirstOrDefault(File.Exists);
        if (path is null)
        {
            Assert.Skip($"{program} of poppler-utils is not installed.");
        }

        using var process = Process.Start(new ProcessStartInfo(path, options) { RedirectStandardOutput = true })!;
        var said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.Equal(0, process.ExitCode);
        return said;
    }

    private sealed class Folder : IDisposable
    {
        internal string Path { get; } = Directory.CreateTempSubdirectory("duskwright-").FullName;

        public void Dispose() => Directory.Delete(Path, recursive: true);

        internal string Holding(byte[] file)
        {
            var path = System.IO.Path.Combine(Path, "book.pdf");
            File.WriteAllBytes(path, file);
            return path;
        }
    }
}
