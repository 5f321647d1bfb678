using System.Diagnostics;

namespace Duskwright.Benchmarks.Editing;

/// <summary>The program as a maker starts it: a process of its own.</summary>
internal sealed class ServedProgram : IDisposable
{
    private const string Says = "Duskwright is at ";
    private readonly Process _process;

    private ServedProgram(Process process, string address) => (_process, Address) = (process, address);

    /// <summary>Where it is found in a browser.</summary>
    internal string Address { get; }

    /// <summary>Starts it on a town.</summary>
    /// <param name="program">Its assembly.</param>
    /// <param name="town">The town's file.</param>
    /// <param name="home">The folder it keeps its user's things in.</param>
    /// <returns>The program, once it has said where it is.</returns>
    /// <exception cref="InvalidOperationException">It ended without saying so.</exception>
    internal static async Task<ServedProgram> StartAsync(string program, string town, string home)
    {
        var process = Process.Start(new ProcessStartInfo("dotnet", [program, "serve", town]) { RedirectStandardOutput = true, Environment = { ["HOME"] = home, ["XDG_DATA_HOME"] = home } })!;
        while (await process.StandardOutput.ReadLineAsync() is { } line)
        {
            if (line.StartsWith(Says, StringComparison.Ordinal))
            {
                return new(process, line[Says.Length..].Split(' ')[0]);
            }
        }

        throw new InvalidOperationException($"{program} ended before it had opened the town.");
    }

    /// <summary>Ends it.</summary>
    public void Dispose()
    {
        _process.Kill(entireProcessTree: true);
        _process.WaitForExit();
        _process.Dispose();
    }
}
