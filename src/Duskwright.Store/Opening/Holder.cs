using System.Globalization;
using System.Text.Json;

namespace Duskwright.Store.Opening;

/// <summary>Who has a town's file open to change it, so that whoever comes second can be told where to go.</summary>
/// <param name="Process">The number of the process.</param>
/// <param name="Machine">The machine it runs on.</param>
/// <param name="Since">Since when.</param>
/// <param name="Address">Where the town is found in a browser; none where it is not served.</param>
/// <remarks>It lies in a file of its own beside the town: the lock itself cannot be read while it is held. Only to be believed while it is.</remarks>
public sealed record Holder(int Process, string Machine, DateTimeOffset Since, string? Address)
{
    private const long MostBytes = 4096;

    /// <summary>Who and since when: "process 4711 on tern, since 2026-11-26 03:12, at http://127.0.0.1:5187/".</summary>
    public string Words => string.Create(CultureInfo.InvariantCulture, $"process {Process} on {Machine}, since {Since.LocalDateTime:yyyy-MM-dd HH:mm}{(Link is { } link ? $", at {link}" : "")}");

    /// <summary>The address, where it is one of this machine that a browser may be sent to.</summary>
    public Uri? Link => Uri.TryCreate(Address, UriKind.Absolute, out var link) && link.IsLoopback && link.Scheme == Uri.UriSchemeHttp ? link : null;

    /// <summary>Reads who holds a file.</summary>
    /// <param name="path">The town's file.</param>
    /// <returns>Who; none where nobody has said so.</returns>
    public static Holder? Of(string path)
    {
        try
        {
            return new FileInfo(At(path)) is { Exists: true, Length: <= MostBytes } ? JsonSerializer.Deserialize<Holder>(File.ReadAllBytes(At(path))) : null;
        }
        catch (Exception unread) when (unread is IOException or UnauthorizedAccessException or JsonException)
        {
            // Who it is helps, that somebody has it is known without.
            return null;
        }
    }

    /// <summary>Says that this process holds a file.</summary>
    /// <param name="path">The town's file.</param>
    /// <param name="clock">The time.</param>
    /// <param name="address">Where the town is found in a browser.</param>
    internal static void Say(string path, TimeProvider clock, string? address) =>
        WhereItCan(() => File.WriteAllBytes(At(path), JsonSerializer.SerializeToUtf8Bytes(new Holder(Environment.ProcessId, Environment.MachineName, clock.GetUtcNow(), address))));

    /// <summary>Says no more that this process holds a file.</summary>
    /// <param name="path">The town's file.</param>
    internal static void Unsay(string path) => WhereItCan(() => File.Delete(At(path)));

    // On a full disk, or in a folder that has gone, the lock holds all the same; only its holder goes unnamed.
    private static void WhereItCan(Action write)
    {
        try
        {
            write();
        }
        catch (Exception unsaid) when (unsaid is IOException or UnauthorizedAccessException)
        {
            return;
        }
    }

    private static string At(string path) => $"{path}-holder";
}
