using Duskwright.Plan.Document;

namespace Duskwright.Plan.Edits;

/// <summary>An entry added to the log. A step that marks how far a building is built takes its state along; withdrawn, it gives it back.</summary>
/// <param name="Entry">The entry.</param>
public sealed record EnterInLog(LogEntry Entry) : TownEdit
{
    // The step whose end a state is; what comes between leaves the state as it is.
    private static readonly (string Step, BuildingState State)[] Marks =
        [("cut", BuildingState.Shell), ("fit", BuildingState.Fitted), ("glue-in", BuildingState.Fixed)];

    /// <inheritdoc/>
    public override string Label => "Enter it in the log";

    /// <inheritdoc/>
    public override Town Apply(Town town)
    {
        var corrected = Entry.Corrects is null ? null : town.StandingLog().FirstOrDefault(l => l.Id == Entry.Corrects);
        return town with
        {
            Log = town.Log.Add(Entry),
            Buildings = town.Buildings.Select(b => Reached(GivenBack(b, corrected))).ToItemList(),
        };
    }

    private static BuildingState? StateOf(LogEntry entry, Building building) =>
        entry.Kind is LogKind.StepDone or LogKind.Seal && entry.Building == building.Key && Marks.FirstOrDefault(m => m.Step == entry.Step) is { Step: not null } mark ? mark.State : null;

    private static Building GivenBack(Building building, LogEntry? corrected) =>
        corrected is not null && StateOf(corrected, building) == building.State ? building with { State = building.State - 1 } : building;

    private Building Reached(Building building) =>
        StateOf(Entry, building) is { } state && state > building.State ? building with { State = state } : building;
}
