using System.Diagnostics;
using System.Globalization;
using Duskwright.Store;

namespace Duskwright.Benchmarks;

/// <summary>One life of a writer: begun, heard, killed; and what it had acknowledged by then.</summary>
internal sealed class KilledLife
{
    private const int MostStrokes = 16;
    private const int MostMillisecondsMore = 60;
    private readonly List<(string Verb, string Word, string Value)> _heard = [];

    /// <summary>Edits acknowledged, by revision: the mark each left.</summary>
    internal Dictionary<long, string> Marks { get; } = [];

    /// <summary>Whether it was killed before it had opened its file.</summary>
    internal bool InStarting => _heard.Count == 0;

    /// <summary>Strokes acknowledged.</summary>
    internal int Acknowledged { get; private set; }

    /// <summary>Whether it was killed with a stroke begun and not acknowledged.</summary>
    internal bool MidStroke => _heard is [.., ("will", _, _)];

    /// <summary>Begins a writer and kills it at a random moment.</summary>
    /// <param name="path">The file it writes.</param>
    /// <param name="random">Where the moment comes from.</param>
    /// <returns>The life.</returns>
    /// <exception cref="InvalidOperationException">It ended before it was killed.</exception>
    internal static KilledLife Live(string path, Random random)
    {
        var start = new ProcessStartInfo("dotnet", [Writer, KillsWriter.Word, path, random.Next().ToString(CultureInfo.InvariantCulture)]) { RedirectStandardOutput = true, RedirectStandardError = true };
        using var writer = Process.Start(start)!;
        var life = new KilledLife();
        using var enough = new ManualResetEventSlim();
        var wished = random.Next(MostStrokes + 1);
        var hearing = Task.Run(() =>
        {
            while (writer.StandardOutput.ReadLine() is { } line)
            {
                life.Hear(line);
                if (life.Acknowledged >= wished)
                {
                    enough.Set();
                }
            }

            enough.Set();
        });

        // One in seven is killed while it starts, opens or makes its file; the others in the midst of their strokes.
        if (random.Next(7) == 0)
        {
            Thread.Sleep(random.Next(400));
        }
        else
        {
            // By strokes and not by the clock, so that as much is at stake on a busy machine as on an idle one.
            enough.Wait();
            Thread.Sleep(random.Next(MostMillisecondsMore));
        }

        if (writer.HasExited)
        {
            throw new InvalidOperationException($"The writer ended by itself: {writer.StandardError.ReadToEnd()}");
        }

        writer.Kill();
        writer.WaitForExit();
        hearing.Wait();
        return life;
    }

    /// <summary>What is wrong with the file it left.</summary>
    /// <param name="path">The file.</param>
    /// <returns>What is missing or unsound, in words; none where all is well.</returns>
    internal string? Wrong(string path)
    {
        if (InStarting && !File.Exists(path))
        {
            return null;
        }

        var opened = WorkingFile.Open(path, TimeProvider.System);
        if (opened.File is not { } file)
        {
            return opened.Problems[0].Message;
        }

        using (file)
        {
            foreach (var (revision, mark) in Marks)
            {
                if (KillsWriter.MarkOf(file.TownAt(revision).Town!) != mark)
                {
                    return $"revision {revision} lost its mark";
                }
            }

            return InStarting || Stands(file) ? null : $"stands on revision {file.Head.Id} after {string.Join(' ', _heard[^1])}";
        }
    }

    internal static string Writer => Path.Combine(AppContext.BaseDirectory, "Duskwright.Benchmarks.dll");

    private void Hear(string line)
    {
        var words = line.Split(' ');
        if (words[0] == "did" && _heard[^1].Word == "mark")
        {
            Marks[long.Parse(words[1], CultureInfo.InvariantCulture)] = _heard[^1].Value;
        }

        Acknowledged += words[0] == "did" ? 1 : 0;
        _heard.Add((words[0], words[1], words[^1]));
    }

    // The last stroke acknowledged is there; one begun after it is there in whole or not at all.
    private bool Stands(WorkingFile file)
    {
        var last = _heard.FindLast(h => h.Verb != "will").Value;
        var begun = _heard[^1] is var h && h.Verb == "will" ? h : default;
        return file.Head.Id.ToString(CultureInfo.InvariantCulture) is var at
            && (at == last || (begun.Word == "mark" ? KillsWriter.MarkOf(file.Town) == begun.Value && file.Head.Label == begun.Value : at == begun.Value));
    }
}
