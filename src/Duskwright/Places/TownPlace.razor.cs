using Duskwright.Plan;
using Duskwright.Study.Findings;
using Duskwright.Study.Results;

namespace Duskwright.Places;

/// <summary>The board; what is selected speaks in the margin.</summary>
public partial class TownPlace
{
    private bool _all;

    private ItemList<Plan.Document.Route> Suggested => Open.Town.Board is null || Open.Town.Routes.Count > 0 ? [] : Open.SuggestedRoutes.Edit.Routes;

    private List<Finding> Spoiling => [.. Open.Study.Findings.Where(f => f.Severity == Severity.Spoils)];

    private List<Finding> Others => [.. Open.Study.Findings.Where(f => f.Severity != Severity.Spoils)];

    private BuildingResult? House => Open.Study.Buildings.FirstOrDefault(b => b.Building.Key == View.At);

    private string Worst
    {
        get
        {
            var spoils = Open.Study.Findings.Count(f => f.Severity == Severity.Spoils);
            return spoils == 0 ? "Nothing spoils the show." : $"{spoils} {(spoils == 1 ? "thing spoils" : "things spoil")} the show or can do harm.";
        }
    }

    private static IEnumerable<(LampResult Lamp, (bool First, int Count) Place)> Kinds(BuildingResult house) =>
        house.Lamps.GroupBy(l => (l.Part.Id, l.Resistor.Value)).Select((g, i) => (g.First(), (i == 0, g.Count())));

    private IEnumerable<Finding> Notes(Subject subject) => Open.Study.Findings.Where(f => f.Subject == subject);
}
