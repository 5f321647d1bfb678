using Duskwright.Plan;
using Duskwright.Plan.Document;

namespace Duskwright.Study.Bench;

/// <summary>One step with where it stands.</summary>
/// <param name="Step">What is done.</param>
/// <param name="Tick">The entry that says it is done; none where it is not, or where nobody ticked it.</param>
/// <param name="IsDone">Whether it is done.</param>
/// <param name="WaitsFor">The keys of the steps before it that are not done.</param>
/// <param name="ReadyAt">When what was done before it is dry; none where nothing that was ticked is waited for.</param>
/// <param name="Untested">The keys of the tests it waits for that were not made, or not passed the last time.</param>
public sealed record StepWork(BenchStep Step, LogEntry? Tick, bool IsDone, ItemList<string> WaitsFor, DateTime? ReadyAt, ItemList<string> Untested);
