using Duskwright.Light.Perception;
using Duskwright.Plan;
using Duskwright.Plan.Parts;
using Duskwright.Study.Figures;
using Duskwright.Study.Results;

namespace Duskwright.Study.Operation;

/// <summary>How the lamps of one pack fade, read off a circuit that has been run down.</summary>
internal static class FadeFigures
{
    private const double SecondsPerHour = 3600;

    internal static PackFade Of(CircuitRun run, int pack)
    {
        var shares = Shares(run, pack);
        return new PackFade(shares, Of(run, pack, shares));
    }

    private static Dictionary<int, ItemList<double>> Shares(CircuitRun run, int pack)
    {
        var shares = new Dictionary<int, ItemList<double>>();
        for (var lamp = 0; lamp < run.Circuit.Lamps.Count; lamp++)
        {
            if (run.Circuit.Lamps[lamp].Pack == pack)
            {
                var fresh = run.Light(0, lamp);
                var index = lamp;
                shares[lamp] = Enumerable.Range(0, run.Steps.Length).Select(s => fresh > 0 ? run.Light(s, index) / fresh : 0).ToItemList();
            }
        }

        return shares;
    }

    private static Fade Of(CircuitRun run, int pack, Dictionary<int, ItemList<double>> shares)
    {
        var (hours, worst, volts, amps, left) = (new List<double>(), new List<double>(), new List<double>(), new List<double>(), new List<double>());
        var circuitPack = run.Circuit.Packs[pack];
        var store = run.Circuit.Packs.Take(pack).Count(p => p.Law is not null);
        for (var s = 0; s < run.Steps.Length; s++)
        {
            var step = run.Steps[s];
            hours.Add(step.LitSeconds / SecondsPerHour);
            worst.Add(Lightness.OfShare(shares.Values.Min(list => list[s])));
            volts.Add(step.Solution.NodeVolts[circuitPack.Plus]);
            amps.Add(step.Solution.ElementAmps[circuitPack.Source]);
            left.Add(circuitPack.Law is { } law ? law.Cell.Left(step.Packs[store]) : 1);
        }

        return new Fade(hours.ToItemList(), worst.ToItemList(), volts.ToItemList(), amps.ToItemList(), left.ToItemList());
    }

    /// <summary>The hour at which the worst lamp falls to a share of its light; none where it does not within the hours computed.</summary>
    internal static Figure? HoursTo(Fade fade, double share, string name)
    {
        var wanted = Lightness.OfShare(share);
        for (var i = 1; i < fade.Hours.Count; i++)
        {
            if (fade.WorstLightness[i] <= wanted && fade.WorstLightness[i - 1] > wanted)
            {
                Figure Computed(string what, double value, string unit) => Figure.Given(what, value, unit, "computed step by step", Certainty.Computed);
                return Figure.From(
                    Laws.HourReached,
                    name,
                    "h",
                    Computed("hour before", fade.Hours[i - 1], "h"),
                    Computed("hour after", fade.Hours[i], "h"),
                    Computed("worst lamp before", fade.WorstLightness[i - 1], "L*"),
                    Computed("worst lamp after", fade.WorstLightness[i], "L*"),
                    Figure.From(Laws.LightnessOfShare, "lightness to reach", "L*", Figure.Given("share of its fresh light", share, "share", "the town's own limit", Certainty.Assumed)));
            }
        }

        return null;
    }
}

/// <summary>How one pack of a circuit fades: each lamp's share of its own light at the start by its index in the circuit, and the pack's own course.</summary>
internal sealed record PackFade(IReadOnlyDictionary<int, ItemList<double>> Shares, Fade Fade);
