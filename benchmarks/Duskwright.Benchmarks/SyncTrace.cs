using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;

namespace Duskwright.Benchmarks;

/// <summary>The system calls of a writer: whether each acknowledgement comes after the log was written and synchronised.</summary>
internal static partial class SyncTrace
{
    /// <summary>Traces a writer.</summary>
    /// <param name="folder">A folder for the file and the trace.</param>
    /// <param name="strokes">How many strokes it does.</param>
    /// <returns>Acknowledgements seen, and those that came before their sync; none where no tracer is installed.</returns>
    internal static (int Acknowledged, int TooEarly)? Of(string folder, int strokes)
    {
        var trace = Path.Combine(folder, "trace");
        var start = new ProcessStartInfo("strace", ["-f", "-e", "trace=openat,pwrite64,write,fsync,fdatasync", "-s", "16", "-o", trace, "dotnet", KilledLife.Writer, KillsWriter.Word, Path.Combine(folder, "traced.town"), "1", strokes.ToString(CultureInfo.InvariantCulture)]) { RedirectStandardOutput = true };
        try
        {
            using var tracer = Process.Start(start)!;
            tracer.StandardOutput.ReadToEnd();
            tracer.WaitForExit();
        }
        catch (Win32Exception)
        {
            return null;
        }

        return Judged(File.ReadLines(trace));
    }

    private static (int Acknowledged, int TooEarly) Judged(IEnumerable<string> calls)
    {
        var (acknowledged, tooEarly) = (0, 0);
        string? log = null;
        var (written, synchronised) = (false, false);
        foreach (var call in calls)
        {
            if (OpensLog().Match(call) is { Success: true } opens)
            {
                log = opens.Groups[1].Value;
            }
            else if (Call().Match(call) is { Success: true } on && on.Groups[2].Value == log)
            {
                // Writing on after a sync calls for another.
                (written, synchronised) = on.Groups[1].Value == "pwrite64" ? (true, false) : (written, true);
            }
            else if (call.Contains("\"will ", StringComparison.Ordinal))
            {
                (written, synchronised) = (false, false);
            }
            else if (call.Contains("\"did ", StringComparison.Ordinal))
            {
                acknowledged++;
                tooEarly += written && synchronised ? 0 : 1;
            }
        }

        return (acknowledged, tooEarly);
    }

    [GeneratedRegex("openat\\([^\"]*\"[^\"]*traced\\.town-wal\".* = (\\d+)")]
    private static partial Regex OpensLog();

    [GeneratedRegex("(pwrite64|fsync|fdatasync)\\((\\d+)")]
    private static partial Regex Call();
}
