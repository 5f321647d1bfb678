namespace Duskwright.Circuits.Tests.Solving;

/// <summary>Textbook feeders and rings: a pair of wires with loads along it, which is what a pair from house to house is.</summary>
/// <remarks>Sources: V. K. Mehta and R. Mehta, Principles of Power System, chapter 13; B. L. Theraja, A Textbook of Electrical Technology,
/// volume III, chapter 40; example and page in each row of tests/Reference/worked-examples.csv.</remarks>
public sealed class DistributorTests
{
    // A uniform load is drawn in so many equal pieces, each in its middle, which makes drops exact and losses good to 1e-6.
    private const int Pieces = 1000;
    private const double FeedOhms = 1e-7;

    [Theory]
    [MemberData(nameof(Examples))]
    public void A_feeder_or_ring_has_the_printed_volts_and_amperes(string id, string quantity)
    {
        var example = WorkedExample.Of(id, quantity);
        example.Check(Answer(example));
    }

    // DIST-16 is left out: its book puts the uniform load of either side on the nearer feed, which Kirchhoff's laws do not; see the next test.
    public static TheoryData<string, string> Examples() =>
        WorkedExample.Named(e => e.Id.StartsWith("DIST", StringComparison.Ordinal) && e.Id != "DIST-16");

    // By hand from the inputs of DIST-16: of a load at x of 1000 m the feed at A bears 1 − x/1000: 96 + 36 + 30 + 4 A, and half of 500 A.
    [Fact]
    public void A_feeder_fed_alike_at_both_ends_shares_each_load_by_distance() =>
        Assert.Equal(416, Feeder.Of(WorkedExample.Of("DIST-16", "current_from_a")).AmpsA, 0.001);

    [Fact]
    public void Every_kind_of_feeder_is_among_the_examples() =>
        Assert.Equal(
            [
                "feeder-area-for-drop", "feeder-fed-both-ends-concentrated", "feeder-fed-both-ends-uniform", "feeder-fed-one-end-concentrated",
                "feeder-fed-one-end-uniform", "feeder-mixed-loads", "ring-feeder",
            ],
            Examples().Select(row => WorkedExample.Of(row.Data.Item1, row.Data.Item2).Topic).Distinct().Order(StringComparer.Ordinal));

    private static double Answer(WorkedExample e) => e.Quantity switch
    {
        "drop_at_150m" => 1000 - Feeder.Of(e, 1000, null).VoltsAt(150),
        "drop_total" or "drop_total_fed_one_end" => 1000 - Feeder.Of(e, 1000, null).Least,
        "drop_max_fed_both_ends" or "drop_max" => 1000 - Feeder.Of(e, 1000, 1000).Least,
        "feed_a_v" => e["v_minimum_v"] + 1000 - Feeder.UniformAlone(e, e["position_of_minimum_m"]).Least,
        "feed_b_v" when e.Has("v_minimum_v") => e["v_minimum_v"] + 1000 - Feeder.UniformAlone(e, e["length_m"] - e["position_of_minimum_m"]).Least,
        "feed_b_v" => e["v_at_node4_v"] + (Feeder.Of(e).AmpsB * e.List("legs_ohm")[^1]),
        "conductor_area" => e["resistivity_ohm_m"] * 2 * 1e9 * (1000 - Feeder.WithLoopOhms(e, 1).Least) / e["drop_max_v"],
        "v_minimum" => Feeder.Of(e).Least,
        "v_end" => Feeder.Of(e).VoltsAt(e["length_m"]),
        "current_from_a" or "current_first_leg" => Feeder.Of(e).AmpsA,
        "current_from_b" => Feeder.Of(e).AmpsB,
        "loss" => Feeder.Of(e).LossWatts,
        ['v', '_', 'n', 'o', 'd', 'e', var node] => Feeder.Of(e).VoltsAtLoad(node - '1'),
        ['v', '_', .. var metres, 'm'] => Feeder.Of(e).VoltsAt(double.Parse(metres)),
        _ => throw new NotSupportedException($"No answer is known for {e.Quantity} of {e.Id}."),
    };

    /// <summary>A distributor solved as a network with a node at every load; between two nodes the voltage is straight.</summary>
    private sealed class Feeder
    {
        private readonly CircuitSketch.Solved _solved;
        private readonly IReadOnlyList<double> _loadsAt;
        private readonly List<double> _places;
        private readonly bool _ring;

        private Feeder(double loopOhmsPerMetre, double length, double feedA, double? feedB, bool ring, IReadOnlyList<(double At, double Amps)> loads, IReadOnlyList<double> loadsAt)
        {
            (_loadsAt, _ring) = (loadsAt, ring);
            _places = [.. loads.Select(l => l.At).Concat([0, length]).Distinct().Order()];
            var sketch = new CircuitSketch().Pack("A", Name(0), "0", feedA, FeedOhms);
            if (feedB is { } volts)
            {
                sketch.Pack("B", Name(length), "0", volts, FeedOhms);
            }

            for (var i = 1; i < _places.Count; i++)
            {
                var end = ring && i == _places.Count - 1 ? Name(0) : Name(_places[i]);
                sketch.Wire($"piece {i}", Name(_places[i - 1]), end, loopOhmsPerMetre * (_places[i] - _places[i - 1]));
            }

            foreach (var (at, amps) in loads)
            {
                sketch.Draw($"load at {Name(at)}", Name(at), "0", amps);
            }

            _solved = sketch.Solve();
        }

        internal double AmpsA => _ring ? _solved.Amps("piece 1") : _solved.Amps("A");

        internal double AmpsB => _solved.Amps("B");

        internal double Least => _solved.Solution.NodeVolts.Skip(1).Min();

        internal double LossWatts => _solved.Sketch.Network.Elements.OfType<Circuits.Networks.ResistorElement>()
            .Select((e, i) => e.Ohms * Math.Pow(_solved.Amps($"piece {i + 1}"), 2)).Sum();

        internal double VoltsAt(double metres)
        {
            var after = _places.FindIndex(p => p >= metres);
            var (from, to) = (_places[Math.Max(0, after - 1)], _places[after]);
            var along = after == 0 ? 0 : (metres - from) / (to - from);
            return ((1 - along) * _solved.Volts(Name(from))) + (along * _solved.Volts(Name(to)));
        }

        internal double VoltsAtLoad(int index) => VoltsAt(_loadsAt[index]);

        internal static Feeder Of(WorkedExample e) => Of(e, First(e, "feed_a_v", "feed_v"), e.Has("feed_b_v") ? e["feed_b_v"] : e.Has("v_at_node4_v") ? e["v_at_node4_v"] : null);

        internal static Feeder Of(WorkedExample e, double feedA, double? feedB)
        {
            if (e.Has("legs_ohm"))
            {
                // Legs given as resistances: their length in ohms, one ohm a metre, up to the node of known voltage.
                var nodes = Sums(e.List("legs_ohm")).Take(4).ToList();
                return new Feeder(1, nodes[^1], feedA, feedB, ring: false, Concentrated(e, nodes), nodes);
            }

            var ring = e.Has("legs_m");
            var length = ring ? e.List("legs_m").Sum() : e.Has("length_m") ? e["length_m"] : e.List("positions_m")[^1];
            var places = ring ? Sums(e.List("legs_m")).SkipLast(1).ToList() : e.Has("positions_m") ? e.List("positions_m") : [];
            return new Feeder(LoopOhmsPerMetre(e), length, feedA, feedB, ring, [.. Concentrated(e, places), .. Uniform(e, length)], places);
        }

        internal static Feeder UniformAlone(WorkedExample e, double length) => new(LoopOhmsPerMetre(e), length, 1000, null, ring: false, [.. Uniform(e, length)], []);

        internal static Feeder WithLoopOhms(WorkedExample e, double loopOhmsPerKilometre) =>
            new(loopOhmsPerKilometre / 1e3, e.List("positions_m")[^1], 1000, null, ring: false, Concentrated(e, e.List("positions_m")), e.List("positions_m"));

        private static double LoopOhmsPerMetre(WorkedExample e) =>
            e.Has("conductor_area_mm2") ? 2 * e["resistivity_ohm_m"] / (e["conductor_area_mm2"] * 1e-6) : First(e, "loop_resistance_ohm_per_m", "resistance_ohm_per_m");

        private static double First(WorkedExample e, string name, string otherwise) => e[e.Has(name) ? name : otherwise];

        private static List<(double At, double Amps)> Concentrated(WorkedExample e, IReadOnlyList<double> places) =>
            e.Has("loads_a") ? [.. places.Zip(e.List("loads_a"))] : [];

        private static IEnumerable<(double At, double Amps)> Uniform(WorkedExample e, double length) =>
            e.Has("loading_a_per_m") ? Enumerable.Range(0, Pieces).Select(i => (length * (i + 0.5) / Pieces, e["loading_a_per_m"] * length / Pieces)) : [];

        private static IEnumerable<double> Sums(IEnumerable<double> legs)
        {
            var sum = 0.0;
            return [.. legs.Select(leg => sum += leg)];
        }

        private static string Name(double metres) => $"{metres:R} m";
    }
}
