using System.Collections.Concurrent;
using System.Security.Cryptography;

namespace Duskwright.Serve;

/// <summary>Books that were printed and wait to be taken away: files of the system's temporary folder, so that a large book never stands in memory.</summary>
public sealed class PrintRoom : IDisposable
{
    private const int NameBytes = 16;
    private readonly ConcurrentDictionary<string, string> _files = new(StringComparer.Ordinal);

    /// <summary>Prints a book and keeps it.</summary>
    /// <param name="print">Writes it.</param>
    /// <returns>The name by which it is taken.</returns>
    public string Print(Action<Stream> print)
    {
        var path = Path.GetTempFileName();
        try
        {
            using var stream = File.Create(path);
            print(stream);
        }
        catch
        {
            File.Delete(path);
            throw;
        }

        var name = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(NameBytes));
        _files[name] = path;
        return name;
    }

    /// <summary>Where a book lies.</summary>
    /// <param name="name">Its name.</param>
    /// <returns>The path; none where there is none of that name.</returns>
    public string? Find(string name) => _files.GetValueOrDefault(name);

    /// <summary>Throws a book away.</summary>
    /// <param name="name">Its name.</param>
    public void Discard(string name)
    {
        if (_files.TryRemove(name, out var path))
        {
            File.Delete(path);
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        foreach (var name in _files.Keys)
        {
            Discard(name);
        }
    }
}
