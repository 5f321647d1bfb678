using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Operation;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Results;

/// <summary>All that the result of one building reads, so that an edit elsewhere leaves it as it is.</summary>
/// <param name="Resolved">The building.</param>
/// <param name="Number">Its place in the document, from 1.</param>
/// <param name="Code">Its code.</param>
/// <param name="Places">Each lamp in its circuit; none where it is not fed.</param>
/// <param name="Brightest">The light of the brightest of each lamp's kind; 0 where it is not fed.</param>
/// <param name="Supplies">The town's supplies.</param>
/// <param name="SwitchGroups">The town's switch groups.</param>
/// <param name="Slack">The town's rule.</param>
/// <param name="DetourFactor">The town's rule.</param>
/// <param name="Company">The houses that light with it at the bank.</param>
internal sealed record BuildingQuery(
    ResolvedBuilding Resolved,
    int Number,
    string Code,
    ItemList<LampPlace?> Places,
    ItemList<double> Brightest,
    ItemList<Supply> Supplies,
    ItemList<SwitchGroup> SwitchGroups,
    Length? Slack,
    double? DetourFactor,
    ItemList<ResolvedBuilding> Company)
{
    internal static BuildingQuery Of(Town town, ResolvedBuilding resolved, int number, string code, CircuitResults circuits, Dictionary<(string Supply, string Part), double> brightest, RunCompany company)
    {
        var places = resolved.Lamps.Select(l => circuits.Lamps.GetValueOrDefault((l.Building, l.Name))).ToItemList();
        return new BuildingQuery(
            resolved,
            number,
            code,
            places,
            resolved.Lamps.Select((l, i) => places[i] is { } at ? brightest[(at.Run.Circuit.Packs[at.Run.Circuit.Lamps[at.Index].Pack].Input.Supply, l.Part.Id)] : 0).ToItemList(),
            town.Supplies,
            town.SwitchGroups,
            town.Wiring.Slack,
            town.Wiring.DetourFactor,
            places.OfType<LampPlace>().Select(p => p.Run.Circuit.Packs[p.Run.Circuit.Lamps[p.Index].Pack].Input).Distinct<PackInput>(ReferenceEqualityComparer.Instance).SelectMany(pack => company.Of(resolved.Building.Key, pack)).ToItemList());
    }

    // Few share a number and a code; hashing the whole would cost more than it saves.
    public override int GetHashCode() => HashCode.Combine(Number, Code);

    public bool Equals(BuildingQuery? other) =>
        other is not null
        && (Number, Code, Slack, DetourFactor) == (other.Number, other.Code, other.Slack, other.DetourFactor)
        && ReferenceEquals(Resolved, other.Resolved)
        && Places.Equals(other.Places)
        && Brightest.Equals(other.Brightest)
        && Company.SequenceEqual(other.Company, ReferenceEqualityComparer.Instance)
        && Supplies.Equals(other.Supplies)
        && SwitchGroups.Equals(other.SwitchGroups);
}
