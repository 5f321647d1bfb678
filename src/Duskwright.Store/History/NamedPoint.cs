namespace Duskwright.Store.History;

/// <summary>A state the maker has given a name: "before the flood".</summary>
/// <param name="Name">The name.</param>
/// <param name="Revision">The revision it stands for.</param>
/// <param name="MadeAt">When the name was given.</param>
public sealed record NamedPoint(string Name, long Revision, DateTimeOffset MadeAt);
