using Duskwright.Plan.Document;

namespace Duskwright.Store.Bench;

/// <summary>A log entry as it came from the bench. It is kept for good, also where the edit that took it into the town is undone.</summary>
/// <param name="Key">The sender's own mark, so that an entry sent twice is entered once.</param>
/// <param name="Entry">What was done, seen or read.</param>
/// <param name="ReceivedAt">When it came.</param>
public sealed record BenchEntry(string Key, LogEntry Entry, DateTimeOffset ReceivedAt);
