using Duskwright.Plan.Document;

namespace Duskwright.Plan.Edits;

/// <summary>A suggested calendar taken into the town, in place of the one before.</summary>
/// <param name="Calendar">The calendar.</param>
public sealed record AcceptCalendar(BenchCalendar Calendar) : TownEdit
{
    /// <inheritdoc/>
    public override string Label => "Take this calendar";

    /// <inheritdoc/>
    public override Town Apply(Town town) => town with { Calendar = Calendar };
}
