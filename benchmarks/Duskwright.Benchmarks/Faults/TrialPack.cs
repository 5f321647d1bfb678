using Duskwright.Circuits.Lamps;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Supplies;
using Duskwright.Circuits.Tests.Supplies;
using Duskwright.Faults.Tagging;
using Duskwright.Plan.Parts;
using Duskwright.Study;

namespace Duskwright.Benchmarks.Faults;

/// <summary>A pack and the houses on it, as planned; each trial builds it anew from parts as they come.</summary>
internal sealed record TrialPack(string Name, string Cell, int Series, IReadOnlyList<TrialHouse> Houses)
{
    private const double HolderOhms = 0.2;

    internal int Lamps => Houses.Sum(h => h.Lamps.Count);

    /// <summary>The packs of a studied town.</summary>
    internal static List<TrialPack> Of(TownStudy study) =>
    [
        .. study.Packs.Where(p => p.Lamps > 0).Select(p => new TrialPack(
            p.Supply.Id,
            p.Supply.Part,
            p.Supply.Series,
            [.. study.Buildings.Where(b => b.Supply == p.Supply.Id).Select(b => new TrialHouse(
                b.Building.Key,
                b.PairLength.Value * b.Wire.PerMetre.Ohms,
                [.. b.Lamps.Select(l => (Law(l.Part), l.Resistor.Value))]))])),
    ];

    /// <summary>A town of its own: houses of one to four white lamps at 0.3 to 2 m, ten houses a pack.</summary>
    internal static List<TrialPack> Generated(int houses, int seed)
    {
        const int HousesOfPack = 10;
        var chance = new Random(seed);
        var white = new LedLaw(2.70, 1e-3, 2.18, 12);
        TrialHouse House(int h) => new($"house {h}", (0.3 + (1.7 * chance.NextDouble())) * 0.55, [.. Enumerable.Range(0, chance.Next(1, 5)).Select(_ => ((LampLaw)white, 820.0))]);
        return [.. Enumerable.Range(0, houses).Select(House).Chunk(HousesOfPack).Select((c, i) => new TrialPack($"{i + 1}", "LR6", 3, c))];
    }

    /// <summary>Built as planned, or from the parts of a draw.</summary>
    internal TaggedNetwork Build(TrialDraw? draw = null, bool fresh = false)
    {
        var cell = UsualCells.Of(Cell);
        var pack = new PackLaw(cell, Series, 1, HolderOhms);
        var state = CellState.At(cell, fresh ? 1 : draw?.ChargeLeft ?? 1);
        List<Element> elements = [new SourceElement("pack", 1, 0, pack.OpenVolts(state) * (draw?.SourceShare ?? 1), pack.Ohms(state))];
        var (lamps, pairs, nodes) = (new List<LampTag>(), new List<PairTag>(), 2);
        for (var h = 0; h < Houses.Count; h++)
        {
            var (house, plus, minus) = (Houses[h], nodes++, nodes++);
            var ohms = Math.Max(0.01, house.ConductorOhms * (draw?.LengthShares[h] ?? 1));
            pairs.Add(new PairTag(house.Name, [elements.Count, elements.Count + 1], plus, minus, [.. Enumerable.Range(lamps.Count, house.Lamps.Count)]));
            elements.Add(new ResistorElement($"plus of {house.Name}", 1, plus, ohms));
            elements.Add(new ResistorElement($"minus of {house.Name}", minus, 0, ohms));
            foreach (var (law, resistor) in house.Lamps)
            {
                var i = lamps.Count;
                lamps.Add(new LampTag($"L{i} of {house.Name}", elements.Count));
                elements.Add(new LampElement($"L{i} of {house.Name}", plus, minus, draw is null ? law : draw.Shifted(law, i), resistor * (draw?.ResistorShares[i] ?? 1)));
            }
        }

        return new TaggedNetwork(new Network(nodes, [.. elements]), [.. lamps], [.. pairs], [new PackTag("pack", 0, pack, state)]);
    }

    private static LampLaw Law(LampPart part)
    {
        var lit = new LedLaw(part.ReferenceVoltage.Volts, part.ReferenceCurrent.Amperes, part.Ideality, part.SeriesResistance.Ohms);
        return part.Kind == LampKind.Flickering ? new FlickerLaw(lit, part.OffCurrent!.Value.Amperes, part.OnShare!.Value, part.LeastVoltage!.Value.Volts) : lit;
    }
}

/// <summary>A house: its pair's resistance each way and its lamps with their resistors.</summary>
internal sealed record TrialHouse(string Name, double ConductorOhms, IReadOnlyList<(LampLaw Law, double ResistorOhms)> Lamps);

/// <summary>The parts of one trial: lengths even within a tenth, cells between fresh and 0.4 left, a batch, pieces and resistors.</summary>
internal sealed record TrialDraw(double ChargeLeft, double SourceShare, double BatchVolts, double[] LengthShares, double[] PieceVolts, double[] ResistorShares, double Severity)
{
    internal static TrialDraw Of(TrialPack pack, Random chance)
    {
        double Even(double half) => half * ((2 * chance.NextDouble()) - 1);
        double Normal() => Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
        double[] Many(int count, Func<double> value) => [.. Enumerable.Range(0, count).Select(_ => value())];
        return new TrialDraw(
            0.4 + (0.6 * chance.NextDouble()), 1 + (0.01 * Normal()), 0.05 * Normal(),
            Many(pack.Houses.Count, () => 1 + Even(0.1)), Many(pack.Lamps, () => 0.06 * Normal()), Many(pack.Lamps, () => 1 + Even(0.05)), Math.Exp(0.7 * Normal()));
    }

    internal LampLaw Shifted(LampLaw law, int lamp) => law switch
    {
        LedLaw led => led with { RefVolts = led.RefVolts + BatchVolts + PieceVolts[lamp] },
        FlickerLaw flicker => flicker with { Lit = flicker.Lit with { RefVolts = flicker.Lit.RefVolts + BatchVolts + PieceVolts[lamp] } },
        _ => law,
    };
}
