using System.Collections.Immutable;
using System.Globalization;
using Duskwright.Circuits.Fitting;
using Duskwright.Circuits.Lamps;
using Duskwright.Circuits.Supplies;
using Duskwright.Circuits.Tolerance;
using Duskwright.Plan;
using Duskwright.Plan.Parts;
using Duskwright.Study.Figures;
using Duskwright.Study.Results;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Operation;

/// <summary>What the spread of a circuit is computed from: the circuit at its three corners, and which of its parts are not known.</summary>
/// <remarks>An unknown lamp or pair is drawn from its corners; all else from its tolerance.</remarks>
internal sealed record SpreadQuery(CircuitInput Least, CircuitInput Typical, CircuitInput Most, ItemList<UnknownLamp> UnknownLamps, ItemList<string> UnknownPairs, double DimShare)
{
    private const int Draws = 2000;

    // Sixty runs give the range of the hours to about a tenth of itself, and take about as long as all draws at one hour.
    private const int Runs = 60;
    private const int Seed = 1;
    private const double MostLitHours = 2000;
    private const double CoarseStepShare = 0.05;
    private const double SecondsPerHour = 3600;

    private static readonly string Source = string.Create(
        CultureInfo.InvariantCulture, $"{Draws:N0} circuits drawn from parts as they are sold, and from all that what is not known may be");

    internal static IEnumerable<SpreadQuery> Of(ResolvedTown resolved)
    {
        var corners = new[] { Corner.Low, Corner.Typical, Corner.High }.Select(c => CircuitInputs.Of(resolved, c)).ToList();
        var lamps = resolved.Buildings
            .SelectMany(b => b.Lamps.Where(l => l.PartUnknown || l.ResistorOrigin == ResistorOrigin.Unknown))
            .Select(l => new UnknownLamp(l.Building, l.Name))
            .ToHashSet();
        var pairs = resolved.Buildings.Where(b => b.Pair.WireUnknown || b.Pair.Origin == LengthOrigin.Unknown).Select(b => b.Pair.Building).ToHashSet(StringComparer.Ordinal);
        for (var c = 0; c < corners[1].Count; c++)
        {
            var fed = corners[1][c].Packs.SelectMany(p => p.Groups).SelectMany(g => g.Pairs).ToList();
            yield return new SpreadQuery(
                corners[0][c],
                corners[1][c],
                corners[2][c],
                fed.SelectMany(p => p.Lamps.Select(l => new UnknownLamp(p.Building, l.Name))).Where(lamps.Contains).ToItemList(),
                fed.Select(p => p.Building).Where(pairs.Contains).Distinct().ToItemList(),
                resolved.Town.Show.DimShare);
        }
    }

    /// <summary>Draws the circuit and says what came out, pack by pack.</summary>
    internal ItemList<SpreadResult> Answer()
    {
        var circuit = CircuitNetwork.Of(Typical);
        var spreads = Spreads.Usual with
        {
            // Makers' halves of ranges count as two deviations.
            LampPieceVolts = circuit.Lamps.ToImmutableDictionary(l => l.Element, l => l.Input.Part.VoltageSpread.Volts / 2),
            Unknowns = Unknowns(circuit),
        };
        var kinds = Kinds(circuit);
        var drawn = MonteCarlo.Run(
            circuit.Network,
            spreads,
            [.. kinds.Select(k => new Neighbours(k.Part.Name, [.. k.Lamps.Select(l => l.Element)], k.Part.MostCurrent?.Amperes ?? double.PositiveInfinity))],
            [.. circuit.Packs.Select(p => Probe.Amps(p.Input.Supply, p.Source))],
            Draws,
            Seed);
        var hours = Hours(circuit, spreads);
        var disturbed = FlickerDisturbance.Of(circuit.Network);
        return circuit.Packs
            .Select((pack, p) => new SpreadResult
            {
                Supply = pack.Input.Supply,
                Load = Range("current with all switches on", "A", drawn.Probes[p].Value, Source),
                Hours = pack.Law is null ? null : hours,
                Kinds = kinds.Select((k, i) => (Kind: k, Spread: drawn.Neighbours[i])).Where(x => x.Kind.Pack == p).Select(x => Kind(x.Kind, x.Spread)).ToItemList(),
                Disturbed = Disturbed(circuit, p, disturbed),
            })
            .ToItemList();
    }

    private static List<(int Pack, LampPart Part, List<CircuitLamp> Lamps)> Kinds(CircuitNetwork circuit) =>
        [.. circuit.Lamps.GroupBy(l => (l.Pack, l.Input.Part)).Where(g => g.Count() > 1).Select(g => (g.Key.Pack, g.Key.Part, g.ToList()))];

    private static KindSpread Kind((int Pack, LampPart Part, List<CircuitLamp> Lamps) kind, NeighbourSpread spread)
    {
        Figure Share(string name, double value) => Figure.Given(name, value, "share", Source, Certainty.Computed);
        return new KindSpread(
            kind.Part.Name,
            kind.Lamps.Count,
            Share("a lamp and the next differ visibly, ΔL* above 5", spread.PairDiffers),
            Share("some lamp is visibly darker than the brightest", spread.AnyDiffers),
            Range("current of the greediest lamp over the mean", "", spread.GreatestShare, Source),
            kind.Part.MostCurrent is null ? null : Share("some lamp takes more than it may for long", spread.Overloaded));
    }

    private static DisturbedNeighbour? Disturbed(CircuitNetwork circuit, int pack, ImmutableArray<DisturbedLamp> disturbed) =>
        (from lamp in circuit.Lamps
         where lamp.Pack == pack && lamp.Law is not FlickerLaw
         from step in disturbed
         where step.Element == lamp.Element
         orderby step.Difference descending
         select new DisturbedNeighbour(
             lamp.Building,
             lamp.Input.Name,
             Figure.Given("lightness lost while all flickering lamps are lit", step.Difference, "L*", "states of the flickering lamps solved one by one", Certainty.Computed))).FirstOrDefault();

    private static Figure Range(string name, string unit, Estimate estimate, string source) =>
        Figure.Given(name, estimate.Likely, unit, source, Certainty.Computed).Between(estimate.Low, estimate.High);

    private ImmutableArray<UnknownPart> Unknowns(CircuitNetwork circuit)
    {
        var (least, most) = (CircuitNetwork.Of(Least), CircuitNetwork.Of(Most));
        var lamps = circuit.Lamps.Where(l => UnknownLamps.Contains(new UnknownLamp(l.Building, l.Input.Name))).Select(l => l.Element);
        var wires = circuit.Pairs.Where(p => UnknownPairs.Contains(p.Building)).SelectMany(p => new[] { p.Plus, p.Minus });
        return [.. lamps.Concat(wires).Select(e => new UnknownPart(e, [least.Network.Elements[e], circuit.Network.Elements[e], most.Network.Elements[e]]))];
    }

    private Figure? Hours(CircuitNetwork circuit, Spreads spreads)
    {
        if (circuit.Stores.IsEmpty)
        {
            return null;
        }

        var settings = new DischargeSettings(Typical.LitHoursPerDay * SecondsPerHour, MostLitHours * SecondsPerHour, stepShare: CoarseStepShare);
        var seconds = RunTimeSpread.Run(circuit.Network, circuit.Stores, spreads, settings, Runs, Seed, DimShare);
        return Range(
            "hours until the worst lamp is dim or the cells are at their end",
            "h",
            new Estimate(seconds.Low / SecondsPerHour, seconds.Likely / SecondsPerHour, seconds.High / SecondsPerHour),
            string.Create(CultureInfo.InvariantCulture, $"{Runs} packs run down, drawn from cells and parts as they are sold"));
    }
}

/// <summary>A lamp of which the maker knows neither kind nor resistor.</summary>
internal sealed record UnknownLamp(string Building, string Lamp);
