using System.Collections.Immutable;
using Duskwright.Circuits.Metering;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Solving;
using Duskwright.Faults.Signatures;
using Duskwright.Faults.Tagging;

namespace Duskwright.Faults.Finding;

/// <summary>What the resistance and the diode range of a meter show at the ends of a pair taken off the bank.</summary>
/// <remarks>
/// The resistance range drives less than an LED needs, so that sound LEDs show no number. The diode range drives about 1 mA from
/// 2.2 to 3.2 V, which differs between meters and is averaged out: white LEDs may or may not show. Typical, from memory.
/// </remarks>
public static class PairMeter
{
    private const double OhmsOpenVolts = 0.4;
    private const double OhmsAmps = 1e-3;

    // Above this damp card and meters that drive more than others show numbers too; typical, from memory.
    private const double MostOhms = 100_000;

    private const double NearOpenShare = 0.9;
    private static readonly double[] DiodeOpenVolts = [2.2, Meter.Usual.DiodeOpenVolts, 3.2];

    // Wires as cut and parts as sold lie within a tenth; leads and touching points add some tenths of an ohm; assumed.
    private const double OhmsShare = 0.1;
    private const double LeadOhms = 0.5;
    private const double DiodeDeviation = 0.1;

    // What a slip shows: any resistance from a tenth of an ohm up, any volts up to three.
    private static readonly double SlipDecades = Math.Log(MostOhms / 0.1);
    private const double SlipVolts = 3;

    // The integral of Student's t with four degrees of freedom where its top is 1.
    private const double TailArea = 8.0 / 3;

    /// <summary>Weighs readings at one pair.</summary>
    /// <param name="alone">What hangs on the pair, on one pack, whose place the meter takes.</param>
    /// <param name="readings">The readings.</param>
    /// <param name="misread">How often a reading is told wrongly, 0 to 1, more than 0.</param>
    /// <returns>The likelihoods.</returns>
    /// <exception cref="InvalidOperationException">A circuit has no solution; the message names the element.</exception>
    public static PairFinding Weigh(TaggedNetwork alone, IReadOnlyList<PairReading> readings, double misread)
    {
        var sound = OperatingPoint.Solve(alone.Network);
        var source = alone.Packs[0].Source;
        double Agreement(Network network) => readings.Aggregate(1.0, (p, reading) => p * Likely(network, source, reading, misread));
        return new PairFinding(
            Agreement(alone.Network),
            FaultyNetwork.Faults(alone).Where(f => f.Kind != FaultKind.CellFlat)
                .ToImmutableDictionary(f => (f.Kind, f.Place), f => Agreement(FaultyNetwork.InCircuit(alone, sound, f).In(alone.Network))));
    }

    /// <summary>What a usual meter shows.</summary>
    /// <param name="network">What hangs on the pair, on one pack.</param>
    /// <param name="source">The pack's place among the elements; the meter takes its place.</param>
    /// <param name="range">The meter's range.</param>
    /// <param name="reversed">Whether its leads are changed over.</param>
    /// <returns>Ω or V; none where it shows no number.</returns>
    /// <exception cref="InvalidOperationException">The circuit has no solution; the message names the element.</exception>
    public static double? Shows(Network network, int source, PairRange range, bool reversed) =>
        range == PairRange.Ohms ? Ohms(network, source, reversed) : Diode(network, source, reversed, Meter.Usual.DiodeOpenVolts);

    private static double Likely(Network network, int source, PairReading reading, double misread) => reading.Range == PairRange.Ohms
        ? Likely(reading.Value, Ohms(network, source, reading.Reversed), o => Math.Sqrt((OhmsShare * OhmsShare * o * o) + (LeadOhms * LeadOhms)), misread, 1 / (SlipDecades * Math.Max(LeadOhms, reading.Value ?? 1)))
        : DiodeOpenVolts.Average(open => Likely(reading.Value, Diode(network, source, reading.Reversed, open), _ => DiodeDeviation, misread, 1 / SlipVolts));

    private static double Likely(double? read, double? expected, Func<double, double> deviation, double misread, double slip) => (read, expected) switch
    {
        (null, null) => 1 - misread,
        (null, _) => misread,
        (_, null) => misread * slip,
        ({ } r, { } e) => ((1 - misread) * Likelihood.Tail((r - e) / deviation(e)) / (TailArea * deviation(e))) + (misread * slip),
    };

    private static double? Ohms(Network network, int source, bool reversed)
    {
        var (volts, amps) = On(network, source, reversed, OhmsOpenVolts, OhmsAmps);
        return volts < MostOhms * amps ? volts / amps : null;
    }

    private static double? Diode(Network network, int source, bool reversed, double openVolts)
    {
        var (volts, _) = On(network, source, reversed, openVolts, Meter.Usual.DiodeAmps);
        return volts < NearOpenShare * openVolts ? volts : null;
    }

    private static (double Volts, double Amps) On(Network network, int source, bool reversed, double openVolts, double shortAmps)
    {
        var pack = (SourceElement)network.Elements[source];
        var inside = openVolts / shortAmps;
        var meter = reversed ? new SourceElement("meter", pack.Minus, pack.Plus, openVolts, inside) : new SourceElement("meter", pack.Plus, pack.Minus, openVolts, inside);
        var solution = OperatingPoint.Solve(new Network(network.NodeCount, network.Elements.SetItem(source, meter)));
        if (solution.Status != SolveStatus.Solved)
        {
            throw new InvalidOperationException($"The circuit has no solution at {solution.FailedAt} ({solution.Status}).");
        }

        var amps = solution.ElementAmps[source];
        return (openVolts - (amps * inside), amps);
    }
}
