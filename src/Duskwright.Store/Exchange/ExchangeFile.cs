using System.Security.Cryptography;
using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Plan.Format;

namespace Duskwright.Store.Exchange;

/// <summary>A town in a JSON file: read, kept in hand, and saved so that the file is at every moment either the old town or the new one.</summary>
/// <remarks>Never changed in place: saving gives a new one that knows the file as it now is. Not locked; a file that somebody else changed since it was read is never overwritten.</remarks>
public sealed class ExchangeFile
{
    private readonly byte[]? _hash;

    private ExchangeFile(string path, Town town, byte[]? hash)
    {
        Path = path;
        Town = town;
        _hash = hash;
    }

    /// <summary>Where the file is, as a full path.</summary>
    public string Path { get; }

    /// <summary>The town as it was last read or saved.</summary>
    public Town Town { get; }

    /// <summary>The SHA-256 of the file's bytes as last read or saved.</summary>
    internal byte[] Mark => _hash ?? [];

    /// <summary>Opens a file.</summary>
    /// <param name="path">Where it is.</param>
    /// <returns>The file, or every problem found.</returns>
    public static ExchangeFileResult Open(string path)
    {
        var full = System.IO.Path.GetFullPath(path);
        byte[] bytes;
        try
        {
            if (new FileInfo(full).Length > TownJson.MostBytes)
            {
                return Refused(full, "too-large", $"{Named(full)} is larger than the {TownJson.MostBytes / 1048576} MB that are read.", "Check that this is a town and not a picture.");
            }

            bytes = File.ReadAllBytes(full);
        }
        catch (Exception missing) when (missing is FileNotFoundException or DirectoryNotFoundException)
        {
            return Refused(full, "no-file", $"There is no file {Named(full)} in {System.IO.Path.GetDirectoryName(full)}.", "Look at the spelling and the folder.");
        }
        catch (Exception kept) when (kept is IOException or UnauthorizedAccessException)
        {
            return Refused(full, "not-readable", $"{Named(full)} cannot be read: {kept.Message}", "Close it in other programs, and look whether you may read it.");
        }

        var read = TownJson.Read(bytes);
        return read.Town is { } town
            ? new ExchangeFileResult(new ExchangeFile(full, town, SHA256.HashData(bytes)), [])
            : new ExchangeFileResult(null, read.Problems);
    }

    /// <summary>Begins a file that is not there yet.</summary>
    /// <param name="path">Where it is to be.</param>
    /// <param name="town">The town.</param>
    /// <returns>The file once saved, or why it could not be; a file that is there already is a problem.</returns>
    public static ExchangeFileResult Create(string path, Town town) =>
        new ExchangeFile(System.IO.Path.GetFullPath(path), town, null).Save(town);

    /// <summary>Saves a town in place of the one read.</summary>
    /// <param name="town">The town.</param>
    /// <returns>The file as saved, or why it could not be; the old file is then untouched.</returns>
    public ExchangeFileResult Save(Town town)
    {
        var bytes = System.Text.Encoding.UTF8.GetBytes(TownJson.Write(town));
        var aside = $"{Path}.{Guid.NewGuid():N}.part";
        try
        {
            if (ChangedBySomebodyElse())
            {
                return _hash is null
                    ? Refused(Path, "already-there", $"There is a file {Named(Path)} already.", "Choose another name, or open that one.")
                    : Refused(Path, "changed-meanwhile", $"{Named(Path)} was changed or removed by somebody else since it was opened, and has been left as it is.", "Open it again, or save under another name.");
            }

            // The temporary file lies in the same folder, so that the rename is one step of the file system.
            using (var stream = new FileStream(aside, FileMode.CreateNew, FileAccess.Write))
            {
                stream.Write(bytes);
                stream.Flush(flushToDisk: true);
            }

            File.Move(aside, Path, overwrite: _hash is not null);
            return new ExchangeFileResult(new ExchangeFile(Path, town, SHA256.HashData(bytes)), []);
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            return Refused(Path, "not-saved", $"{Named(Path)} could not be saved: {failed.Message}", "Look at the folder and the room on the disk; the old file is as it was.");
        }
        finally
        {
            if (File.Exists(aside))
            {
                File.Delete(aside);
            }
        }
    }

    private bool ChangedBySomebodyElse() =>
        _hash is null
            ? File.Exists(Path)
            : !File.Exists(Path) || !SHA256.HashData(File.ReadAllBytes(Path)).AsSpan().SequenceEqual(_hash);

    private static string Named(string path) => System.IO.Path.GetFileName(path);

    private static ExchangeFileResult Refused(string path, string rule, string message, string remedy) =>
        new(null, [new Problem(path, rule, message, remedy)]);
}
