using Duskwright.Study.Bench;

namespace Duskwright.Proposals;

/// <summary>A step with its place in the calendar.</summary>
/// <param name="Building">The building's key.</param>
/// <param name="Name">What the maker calls the building.</param>
/// <param name="Step">What is done.</param>
/// <param name="Begin">When it is begun.</param>
/// <param name="End">When the hands are free again.</param>
/// <param name="DryAt">When it is dry.</param>
public sealed record PlannedStep(string Building, string Name, BenchStep Step, DateTime Begin, DateTime End, DateTime DryAt);
