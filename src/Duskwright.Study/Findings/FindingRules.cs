using Duskwright.Plan;

namespace Duskwright.Study.Findings;

/// <summary>Every rule, and the order in which findings are shown.</summary>
internal static class FindingRules
{
    internal static ItemList<Finding> Of(TownStudy study, Memo memo)
    {
        // Light is the longest of the work: all rooms are lit side by side before the first rule asks for one of them.
        _ = study.Panes;
        return UnknownRules.MeasureFirst(study)
            .Concat(PackRules.Of(study, memo))
            .Concat(SafetyRules.Of(study))
            .Concat(LampRules.Of(study))
            .Concat(SightRules.Of(study))
            .Concat(LeakRules.Of(study))
            .Concat(UnknownRules.Ranges(study))
            .Concat(BuildingRules.Of(study))
            .Concat(WireInSightRules.Of(study))
            .OrderByDescending(f => f.Severity)
            .ToItemList();
    }
}
