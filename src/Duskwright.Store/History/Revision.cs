namespace Duskwright.Store.History;

/// <summary>A state the town has been in, and the edit that led to it.</summary>
/// <param name="Id">Its number in the file, from 1 on; never used twice.</param>
/// <param name="Parent">The revision it was made from; none for the first.</param>
/// <param name="Label">What the edit did, in words.</param>
/// <param name="MadeAt">When.</param>
public sealed record Revision(long Id, long? Parent, string Label, DateTimeOffset MadeAt);
