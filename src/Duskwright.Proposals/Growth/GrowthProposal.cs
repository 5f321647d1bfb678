using Duskwright.Harness.Routes;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Proposals.Wiring;
using Duskwright.Study;

namespace Duskwright.Proposals.Growth;

/// <summary>Where to tie in a building that is added to a town which is wired already.</summary>
/// <param name="Options">Every place that a pair can reach, the least wire first; a pack more comes last.</param>
/// <param name="Choices">For each kind of place the first that holds, the least wire first; where none of a kind holds, its first with what is against it, after those that hold.</param>
/// <param name="Why">Why there is none, or what keeps its pair from the bank; none where nothing does.</param>
public sealed record GrowthProposal(ItemList<TieInOption> Options, ItemList<GrowthEffect> Choices, string? Why)
{
    /// <summary>The town as it is compared with: houses whose pair is not drawn yet have the shortest.</summary>
    public required TownStudy Before { get; init; }

    // A pack so far over what it can do is over it wherever the house hangs: lamps that look alike (ΔL* 5) differ in current by an eighth at most.
    private const double FarOver = 1.25;

    /// <summary>The cheapest place that holds; none where none does.</summary>
    public GrowthEffect? Best => Choices.FirstOrDefault(c => c.Holds);

    /// <summary>Finds the places and computes the town with the building at the cheapest of each kind.</summary>
    /// <param name="study">The town's results.</param>
    /// <param name="added">The building with its lamps, placed on the board or with a rough distance; its switch is found here, and its name made one that is free.</param>
    /// <param name="cancel">Stops the search.</param>
    /// <returns>The proposal.</returns>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static GrowthProposal Of(TownStudy study, Building added, CancellationToken cancel = default)
    {
        var town = study.Town;
        var named = AddBuilding.Named(town, added).Added;
        if (!town.SwitchGroups.Any(g => g.Supply is not null))
        {
            return new GrowthProposal([], [], "No switch takes from a pack yet: share the lamps over packs first.") { Before = study };
        }

        if ((named.Leds ?? 0) + named.DescribedLamps().Count() == 0)
        {
            return new GrowthProposal([], [], $"{named.Name} has no lamp, so nothing has to be tied in.") { Before = study };
        }

        var (before, suggested) = Planned(study);
        var options = TieInOptions.Of(before, named, suggested);
        var full = new HashSet<string>(StringComparer.Ordinal);
        var choices = options.GroupBy(o => o.Kind).Select(kind => FirstThatHolds(before, [.. kind], full, cancel)).OrderBy(c => !c.Holds).ThenBy(c => c.Option.Kind == TieInKind.NewPack).ThenBy(c => c.Option.WireMetres).ThenBy(c => c.Option.Joints);
        return new GrowthProposal(options, choices.ToItemList(), Gap(town, named)) { Before = before };
    }

    /// <summary>The town with the shortest pair for every house whose pair is not drawn yet, and these pairs.</summary>
    internal static (TownStudy Study, ItemList<Route> Suggested) Planned(TownStudy study)
    {
        var routed = study.Town.Routes.Select(r => r.Building).ToHashSet(StringComparer.Ordinal);
        var suggested = RouteProposal.Of(study.Town).Edit.Routes.Where(r => !routed.Contains(r.Building)).ToItemList();
        return (suggested.Count == 0 ? study : study.After(new AcceptRoutes(suggested).Apply(study.Town)), suggested);
    }

    private static GrowthEffect FirstThatHolds(TownStudy study, List<TieInOption> kind, HashSet<string> full, CancellationToken cancel)
    {
        GrowthEffect? first = null;
        foreach (var option in kind.Where(o => o.Against.Count == 0))
        {
            if (first is not null && full.Contains(option.Supply))
            {
                continue;
            }

            cancel.ThrowIfCancellationRequested();
            var effect = GrowthEffect.Of(study, option);
            if (effect.Holds)
            {
                return effect;
            }

            first ??= effect;
            if (effect.Overdrawn > FarOver)
            {
                full.Add(option.Supply);
            }
        }

        return first ?? GrowthEffect.Of(study, kind[0]);
    }

    private static string? Gap(Town town, Building added)
    {
        if (town.Board is not { Bank: { } bank } board || added.Place is null)
        {
            return null;
        }

        var answer = Router.Route(BoardGround.Wireways(town), [BoardGround.Demand(board, added)], BoardGround.InMetres(bank.At), BoardGround.Rules(town))[0];
        return answer.NoRoute?.Replace(added.Key, added.Name, StringComparison.Ordinal) is { } words ? $"{words}." : null;
    }
}
