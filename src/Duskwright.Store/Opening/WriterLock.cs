namespace Duskwright.Store.Opening;

/// <summary>The right to change a file, held by one Duskwright at a time.</summary>
/// <remarks>
/// A lock of the operating system on an empty file beside the town, so that it ends with the process however that ends. The empty
/// file stays: removing it could give the right to two at once. Not the town's own file, for closing any handle to that would drop SQLite's locks.
/// </remarks>
internal sealed class WriterLock : IDisposable
{
    private readonly FileStream _held;

    private WriterLock(FileStream held) => _held = held;

    /// <summary>Takes the right.</summary>
    /// <param name="path">The town's file.</param>
    /// <returns>The right; none where somebody else has it.</returns>
    /// <exception cref="UnauthorizedAccessException">Nothing may be written there.</exception>
    /// <exception cref="IOException">Nothing can be written there.</exception>
    internal static WriterLock? TryTake(string path)
    {
        var beside = $"{path}-lock";
        try
        {
            return new WriterLock(new FileStream(beside, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None));
        }
        catch (IOException) when (File.Exists(beside))
        {
            return null;
        }
    }

    public void Dispose() => _held.Dispose();
}
