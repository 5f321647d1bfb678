using Duskwright.Circuits.Lamps;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Supplies;
using Duskwright.Circuits.Tolerance;
using Duskwright.Faults.Testing;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Results;

/// <summary>What is not known exactly about the parts of a house alone on a supply.</summary>
internal static class TestPointParts
{
    // Makers' limits, and a length or fuse between its two ends, count as two deviations; what is not known is even between its ends.
    private const double LimitDeviations = 2;
    private static readonly double EvenDeviations = Math.Sqrt(3);

    // A maker tells what is left in cells to a tenth at best; assumed.
    private const double ChargeShare = 0.1;

    // The lit share of flickering lamps is common practice, 0.65; parts lie within a tenth of it, assumed.
    private const double OnShareSpread = 0.1;

    private static readonly Spreads Usual = Spreads.Usual;

    internal static System.Collections.Immutable.ImmutableArray<Factor> Of(TestPointQuery query, CircuitNetwork circuit)
    {
        var (least, most) = (CircuitNetwork.Of(query.Least).Network.Elements, CircuitNetwork.Of(query.Most).Network.Elements);
        var unknown = query.UnknownLamps.ToHashSet();
        return
        [
            .. circuit.Lamps.SelectMany(l => Lamp(circuit.Network.Elements, least, most, l, unknown.Contains((l.Building, l.Input.Name)))),
            .. circuit.Lamps.Where(l => !unknown.Contains((l.Building, l.Input.Name))).GroupBy(l => l.Input.Part.Id, StringComparer.Ordinal).Select(g => Batch(circuit.Network.Elements, g.Key, [.. g.Select(l => l.Element)])),
            .. circuit.Pairs.Select(p => Pair(circuit.Network.Elements, least, most, $"pair of {p.Building} on {p.Group}", (p.Plus, p.Minus), query.UnknownPairs.Contains(p.Building))),
            .. circuit.Shared.Select(p => Pair(circuit.Network.Elements, least, most, $"shared pair to {p.Run} at {p.Plus}", (p.Plus, p.Minus), query.UnknownPairs.Contains(p.Run))),
            .. circuit.Packs.SelectMany(p => Supply(circuit.Network.Elements, p)),
        ];
    }

    private static IEnumerable<Factor> Lamp(IReadOnlyList<Element> elements, IReadOnlyList<Element> least, IReadOnlyList<Element> most, CircuitLamp lamp, bool unknown)
    {
        var (e, name) = (lamp.Element, $"{lamp.Input.Name} of {lamp.Building}");
        var (sound, low, high) = ((LampElement)elements[e], (LampElement)least[e], (LampElement)most[e]);
        if (unknown)
        {
            yield return new Factor($"what {name} is", [(e, low)], [(e, high)], EvenDeviations, true);
            yield break;
        }

        yield return new Factor($"volts of {name}", [(e, sound with { Law = low.Law })], [(e, sound with { Law = high.Law })], LimitDeviations, true);
        if (low.ResistorOhms > high.ResistorOhms)
        {
            yield return new Factor($"resistor of {name}", [(e, sound with { ResistorOhms = low.ResistorOhms })], [(e, sound with { ResistorOhms = high.ResistorOhms })], LimitDeviations, true);
        }

        if (sound.Law is FlickerLaw flicker)
        {
            LampElement With(double share) => sound with { Law = flicker with { OnShare = Math.Clamp(share, 0, 1) } };
            var watched = FlickerWatch.ShareDeviation(flicker.OnShare, TestPointBands.ChangesPerSecond, TestPointBands.WatchSeconds(1, flicker.OnShare));
            yield return new Factor($"lit share of {name}", [(e, With(flicker.OnShare - OnShareSpread))], [(e, With(flicker.OnShare + OnShareSpread))], LimitDeviations, true);
            yield return new Factor($"luck of the watch at {name}", [(e, With(flicker.OnShare - watched))], [(e, With(flicker.OnShare + watched))], 1, false);
        }
    }

    private static Factor Batch(IReadOnlyList<Element> elements, string part, int[] lamps)
    {
        Element Moved(int e, double volts) => elements[e] is LampElement lamp ? lamp with { Law = Shifted(lamp.Law, volts) } : elements[e];
        return new Factor($"batch of {part}", [.. lamps.Select(e => (e, Moved(e, Usual.BatchVolts)))], [.. lamps.Select(e => (e, Moved(e, -Usual.BatchVolts)))], 1, true);
    }

    private static LampLaw Shifted(LampLaw law, double volts) => law switch
    {
        LedLaw led => led with { RefVolts = led.RefVolts + volts },
        FlickerLaw flicker => flicker with { Lit = flicker.Lit with { RefVolts = flicker.Lit.RefVolts + volts } },
        FilamentLaw filament => filament with { RatedVolts = filament.RatedVolts + volts },
        _ => law,
    };

    private static Factor Pair(IReadOnlyList<Element> elements, IReadOnlyList<Element> least, IReadOnlyList<Element> most, string name, (int Plus, int Minus) pair, bool unknown)
    {
        // A length that is said is still cut as it comes.
        (int, Element) Cut(int e, double share) => (e, ((ResistorElement)elements[e]) with { Ohms = Math.Max(Network.LeastOhms, ((ResistorElement)elements[e]).Ohms * (1 + share)) });
        var isSaid = ((ResistorElement)least[pair.Plus]).Ohms == ((ResistorElement)most[pair.Plus]).Ohms;
        return isSaid
            ? new Factor(name, [Cut(pair.Plus, Usual.Wire), Cut(pair.Minus, Usual.Wire)], [Cut(pair.Plus, -Usual.Wire), Cut(pair.Minus, -Usual.Wire)], 1, true)
            : new Factor(
                name,
                [(pair.Plus, least[pair.Plus]), (pair.Minus, least[pair.Minus])],
                [(pair.Plus, most[pair.Plus]), (pair.Minus, most[pair.Minus])],
                unknown ? EvenDeviations : LimitDeviations,
                true);
    }

    private static IEnumerable<Factor> Supply(IReadOnlyList<Element> elements, CircuitPack pack)
    {
        var (e, sound) = (pack.Source, (SourceElement)elements[pack.Source]);
        Factor Of(string what, SourceElement low, SourceElement high, double deviations) => new($"{what} of {pack.Input.Supply}", [(e, low)], [(e, high)], deviations, false);
        yield return Of("volts", sound with { OpenVolts = sound.OpenVolts * (1 - Usual.SourceVolts) }, sound with { OpenVolts = sound.OpenVolts * (1 + Usual.SourceVolts) }, 1);
        yield return Of("resistance", sound with { Ohms = sound.Ohms * Math.Exp(Usual.SourceOhms) }, sound with { Ohms = sound.Ohms * Math.Exp(-Usual.SourceOhms) }, 1);
        if (pack.Law is { } law)
        {
            SourceElement With(double left) => sound with { OpenVolts = law.OpenVolts(CellState.At(law.Cell, left)), Ohms = law.Ohms(CellState.At(law.Cell, left)) };
            yield return Of("charge", With(Math.Max(0, pack.Input.ChargeLeft - ChargeShare)), With(Math.Min(1, pack.Input.ChargeLeft + ChargeShare)), LimitDeviations);
        }
    }
}
