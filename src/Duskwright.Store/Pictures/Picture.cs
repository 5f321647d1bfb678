namespace Duskwright.Store.Pictures;

/// <summary>A picture kept with the town: the photograph of a board.</summary>
/// <param name="Id">What it is asked for by: the SHA-256 of its bytes in hexadecimal.</param>
/// <param name="Name">What the maker called it.</param>
/// <param name="MediaType"><c>image/png</c> or <c>image/jpeg</c>, as its bytes say.</param>
/// <param name="ByteCount">How large it is.</param>
/// <param name="AddedAt">When it was added.</param>
public sealed record Picture(string Id, string Name, string MediaType, long ByteCount, DateTimeOffset AddedAt);
