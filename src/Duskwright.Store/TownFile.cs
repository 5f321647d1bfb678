using Duskwright.Plan.Format;
using Duskwright.Store.Exchange;
using Duskwright.Store.Opening;

namespace Duskwright.Store;

/// <summary>A town in a file of either form: the working file or the exchange form, told apart by what they hold and not by their names.</summary>
public static class TownFile
{
    /// <summary>Reads a town and leaves no trace.</summary>
    /// <param name="path">Where it is.</param>
    /// <returns>The town, or every problem found.</returns>
    public static TownReadResult Read(string path)
    {
        var full = Path.GetFullPath(path);
        try
        {
            if (File.Exists(full) && FileHead.IsSqlite(full))
            {
                return WorkingFile.Read(full);
            }
        }
        catch (Exception kept) when (kept is IOException or UnauthorizedAccessException)
        {
            return new TownReadResult(null, [Refusal.NotReadable(full, kept)]);
        }

        var opened = ExchangeFile.Open(full);
        return new TownReadResult(opened.File?.Town, opened.Problems);
    }

    /// <summary>Whether bytes are meant as a town of either form, and not as a list of houses.</summary>
    /// <param name="bytes">A whole file.</param>
    /// <returns>Yes for an SQLite file and for text that begins with a bracket.</returns>
    public static bool IsOne(ReadOnlySpan<byte> bytes) =>
        bytes.StartsWith(FileHead.Magic) || bytes.TrimStart("\uFEFF \t\r\n"u8).StartsWith("{"u8);

    /// <summary>Opens a town to work on it. One in the exchange form is worked on in a working file of its name beside it, and is itself never written to.</summary>
    /// <param name="path">Where it is.</param>
    /// <param name="clock">The time.</param>
    /// <returns>The working file; in memory only where none can be made beside; or every problem found.</returns>
    public static WorkingFileResult Open(string path, TimeProvider clock)
    {
        var full = Path.GetFullPath(path);
        try
        {
            if (File.Exists(full) && FileHead.IsSqlite(full))
            {
                return WorkingFile.Open(full, clock);
            }
        }
        catch (Exception kept) when (kept is IOException or UnauthorizedAccessException)
        {
            return new WorkingFileResult(null, [Refusal.NotReadable(full, kept)]);
        }

        var read = ExchangeFile.Open(full);
        return read.File is { } exchange ? Beside(exchange, clock) : new WorkingFileResult(null, read.Problems);
    }

    private static WorkingFileResult Beside(ExchangeFile exchange, TimeProvider clock)
    {
        var beside = Path.ChangeExtension(exchange.Path, WorkingFile.Ending);
        var label = $"Read {Path.GetFileName(exchange.Path)}";
        var opened = File.Exists(beside) ? WorkingFile.Open(beside, clock) : WorkingFile.Create(beside, exchange.Town, label, clock);
        if (opened.File is not { } file)
        {
            return opened.Problems is [{ Rule: "not-writable" }] && !File.Exists(beside)
                ? new WorkingFileResult(WorkingFile.InMemory(exchange.Town, label, clock), [])
                : opened;
        }

        var problems = file.TakeIn(exchange);
        if (problems.Count > 0)
        {
            file.Dispose();
            return new WorkingFileResult(null, problems);
        }

        return opened;
    }
}
