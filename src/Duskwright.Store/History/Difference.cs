namespace Duskwright.Store.History;

/// <summary>One thing in which two towns differ.</summary>
/// <param name="Thing">What it belongs to: <c>buildings/chandlery</c>, <c>show</c>.</param>
/// <param name="Field">Which of its fields: <c>leds</c>, <c>place.x_mm</c>; empty where the whole thing is new or gone.</param>
/// <param name="Was">The value in the first; none where it is not there.</param>
/// <param name="Is">The value in the second; none where it is not there.</param>
public sealed record Difference(string Thing, string Field, string? Was, string? Is);
