namespace Duskwright.Towns;

/// <summary>A town in the maker's own folder.</summary>
/// <param name="Name">The file's name without its ending.</param>
/// <param name="Path">Where it lies.</param>
/// <param name="ChangedAt">When it was last changed.</param>
public sealed record KeptTown(string Name, string Path, DateTimeOffset ChangedAt);
