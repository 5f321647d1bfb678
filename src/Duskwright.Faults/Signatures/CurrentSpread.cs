using System.Collections.Immutable;
using Duskwright.Circuits.Lamps;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Tolerance;
using Duskwright.Faults.Tagging;
using Duskwright.Faults.Testing;

namespace Duskwright.Faults.Signatures;

/// <summary>How far the current of a sound pack may lie from the planned one, by what is not known of its batch of lamps and its wires.</summary>
internal static class CurrentSpread
{
    // Lengths are cut as they come, to a tenth.
    private const double LengthShare = 0.1;

    /// <summary>Deviation of the logarithm of each pack's current, from the slopes at the sound circuit.</summary>
    internal static ImmutableArray<double> Of(TaggedNetwork tagged)
    {
        var factors = Factors(tagged);
        return [.. tagged.Packs.Select(p => Prediction.Of(new TestCircuit(tagged.Network, p.Source, factors)).Deviation)];
    }

    /// <summary>What is not known of the parts: the batch of the lamps, and the lengths.</summary>
    internal static ImmutableArray<Factor> Factors(TaggedNetwork tagged)
    {
        var elements = tagged.Network.Elements;
        int[] All<T>() => [.. Enumerable.Range(0, elements.Length).Where(i => elements[i] is T)];
        var (lamps, wires) = (All<LampElement>(), All<ResistorElement>());
        Factor Of(string name, double deviations, int[] places, Func<Element, double, Element> moved) =>
            new(name, [.. places.Select(p => (p, moved(elements[p], -1)))], [.. places.Select(p => (p, moved(elements[p], 1)))], deviations, true);
        return
        [
            Of("batch", 1, lamps, (e, sign) => e is LampElement { Law: LedLaw led } lamp ? lamp with { Law = led with { RefVolts = led.RefVolts - (sign * Spreads.Usual.BatchVolts) } } : e),
            Of("lengths", 1, wires, (e, sign) => e is ResistorElement wire ? wire with { Ohms = wire.Ohms * (1 - (sign * LengthShare)) } : e),
        ];
    }
}
