using System.Buffers.Binary;
using Duskwright.Plan.Checks;
using Duskwright.Store.Schema;

namespace Duskwright.Store.Opening;

/// <summary>The first hundred bytes of a working file, read before anything is opened that might write.</summary>
/// <remarks>Source: SQLite, "Database File Format", section 1.3: page size at 16, pages at 28, user version at 60, application id at 68, big-endian.</remarks>
internal static class FileHead
{
    /// <summary>The application id of working files: DUSK in ASCII.</summary>
    internal const int ApplicationId = 0x4455534B;

    private const int Bytes = 100;
    private const int LargestPage = 65536;

    /// <summary>Whether a file begins as every SQLite file does.</summary>
    /// <param name="path">A file that is there and can be read.</param>
    /// <returns>Yes or no.</returns>
    internal static bool IsSqlite(string path)
    {
        using var stream = Reading(path);
        Span<byte> head = stackalloc byte[Bytes];
        return stream.ReadAtLeast(head, Bytes, throwOnEndOfStream: false) >= Magic.Length && head.StartsWith(Magic);
    }

    /// <summary>What is wrong with a file, as far as its first page tells.</summary>
    /// <param name="path">A file that is there and can be read.</param>
    /// <returns>The problem; none where there is none.</returns>
    internal static Problem? Check(string path)
    {
        using var stream = Reading(path);
        Span<byte> head = stackalloc byte[Bytes];
        var read = stream.ReadAtLeast(head, Bytes, throwOnEndOfStream: false);
        if (!head.StartsWith(Magic) || (read == Bytes && Number(head, 68) != ApplicationId))
        {
            return Refusal.NotATown(path);
        }

        // A log beside the file may hold pages that the file itself has not got yet.
        var pageBytes = BinaryPrimitives.ReadUInt16BigEndian(head[16..]) is var size and not 1 ? size : LargestPage;
        var wanted = read < Bytes ? Bytes : pageBytes * (long)(uint)Number(head, 28);
        if (stream.Length < wanted && !WriteAheadLog.HoldsPages(path))
        {
            return Refusal.CutShort(path, stream.Length, wanted);
        }

        return Number(head, 60) > SchemaSteps.Newest ? Refusal.Newer(path, Number(head, 60), SchemaSteps.Newest) : null;
    }

    internal static ReadOnlySpan<byte> Magic => "SQLite format 3\0"u8;

    private static int Number(ReadOnlySpan<byte> head, int at) => BinaryPrimitives.ReadInt32BigEndian(head[at..]);

    // Shared, because another Duskwright may be at work on it.
    private static FileStream Reading(string path) => new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
}
