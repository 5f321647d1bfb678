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
            if (File.Exists(full) && WorkingFile.IsOne(full))
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
}
