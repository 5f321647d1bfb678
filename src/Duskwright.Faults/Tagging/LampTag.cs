namespace Duskwright.Faults.Tagging;

/// <summary>A lamp of a network.</summary>
/// <param name="Name">Its name in the plan.</param>
/// <param name="Element">Its place among the network's elements; a lamp element.</param>
public sealed record LampTag(string Name, int Element);
