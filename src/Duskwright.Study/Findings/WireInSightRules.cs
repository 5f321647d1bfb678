using Duskwright.Harness.Routes;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Study.Figures;
using Duskwright.Study.Operation;

namespace Duskwright.Study.Findings;

/// <summary>Pairs that lie in sight on the board between a house and its hole. A street lamp or boat has its wire in its post or under its keel.</summary>
internal static class WireInSightRules
{
    // So little a step, a plinth or a pinch of scatter hides: common practice, no source.
    private const double NoticedMetres = 0.02;

    // Nobody goes farther aside for it: common practice, no source.
    private const double AsideMetres = 0.2;

    // A detour is worth telling where it hides that much more.
    private const double WorthMetres = 0.01;

    internal static IEnumerable<Finding> Of(TownStudy study)
    {
        var town = study.Town;
        var laid = SharedRuns.Held(town);
        var placed = town.Buildings.Where(b => b.Place is not null).ToList();
        return placed
            .Where(b => b.Kind == BuildingKind.House && b.FeedHole is not null && b.State != BuildingState.Fixed && !laid.Contains(b.Key))
            .Where(b => study.Buildings.Any(r => r.Building.Key == b.Key && r.Lamps.Count > 0))
            .Select(b => OfHouse(town, b, placed))
            .OfType<Finding>();
    }

    private static Finding? OfHouse(Town town, Building building, List<Building> placed)
    {
        var place = building.Place!;
        var hole = town.Board!.FeedHoles.First(h => h.Id == building.FeedHole);

        // Nothing is led under a house that is glued, nor under one on another level.
        var (house, down) = (At(place.At), At(hole.At));
        var covers = placed.Where(b => b.Key == building.Key || (b.State != BuildingState.Fixed && b.Place!.Level == place.Level && Between(At(b.Place.At)))).ToList();
        var run = SurfaceRun.Of(house, down, [.. covers.Select(b => Footprint.Of(b.Place!))], NoticedMetres);
        if (run.SeenMetres < NoticedMetres)
        {
            return null;
        }

        var seen = Figure.Given("in sight", run.SeenMetres, "m", "straight from the house to its hole, less what houses stand on", Certainty.Computed);
        var under = run.Under.Select(i => covers[i]).Where(b => b.Key != building.Key).Select(b => b.Name).ToList();
        var better = under.Count > 0 && run.SeenMetres - run.LeastSeenMetres >= WorthMetres;
        bool Between(PlanePoint middle) => middle.DistanceTo(middle.NearestOn(house, down)) < AsideMetres;
        return new Finding
        {
            Rule = "wire-in-sight",
            Severity = Severity.Look,
            Subject = Subject.Building(building.Key),
            Words = better
                ? $"The pair of {building.Name} lies in sight for {{0}} between it and hole {hole.Id}; led under {string.Join(" and ", under)} it shows for {{1}}."
                : $"The pair of {building.Name} lies in sight for {{0}} between it and hole {hole.Id}.",
            Figures = better ? [seen, Figure.Given("in sight by the detour", run.LeastSeenMetres, "m", "the run of cells that shows the least", Certainty.Computed)] : [seen],
            Remedy = better
                ? $"Lead it so and set {string.Join(" and ", under)} down after it; paint or scatter hides the rest."
                : "Paint it as the ground is, cover it with scatter, or drill a hole nearer.",
        };
    }

    private static PlanePoint At(Point point) => new(point.X.Metres, point.Y.Metres);
}
