namespace Duskwright.Towns;

/// <summary>A town that the maker has: in their own folder, or opened lately from elsewhere.</summary>
/// <param name="Name">What it calls itself; the file's name where it cannot be read.</param>
/// <param name="Path">Where it lies.</param>
/// <param name="ChangedAt">When it was last changed.</param>
/// <param name="Houses">How many houses it has.</param>
/// <param name="Unreadable">Why it cannot be read, in a sentence; none where it can.</param>
/// <param name="SharesName">Whether another of them calls itself the same, so that only the file tells them apart.</param>
public sealed record KeptTown(string Name, string Path, DateTimeOffset ChangedAt, int Houses, string? Unreadable, bool SharesName)
{
    /// <summary>The file's name without its ending.</summary>
    public string FileName => System.IO.Path.GetFileNameWithoutExtension(Path);

    /// <summary>What tells it from every other: its name, and the file's where the name is not enough.</summary>
    public string Called => SharesName ? $"{Name}, file {FileName}" : Name;
}
