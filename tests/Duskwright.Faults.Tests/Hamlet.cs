using Duskwright.Circuits.Lamps;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Supplies;
using Duskwright.Faults.Tagging;

namespace Duskwright.Faults.Tests;

/// <summary>An invented hamlet on three cells: houses of a few white lamps, each lamp behind its own resistor, each house on a pair of its own.</summary>
internal static class Hamlet
{
    internal static CellLaw Cell { get; } = new(9000, 0.8, 3e-5, [new(1, 1.6, 0.25), new(0.5, 1.25, 0.4), new(0, 0.85, 1.3)], 0.9);

    /// <summary>White lamp: V = 2.70 + 0.055·ln(I/1 mA) + 12 Ω·(I − 1 mA), common practice, no source.</summary>
    internal static LedLaw White { get; } = new(2.70, 1e-3, 0.055 / (LedLaw.BoltzmannOverCharge * LedLaw.RoomKelvin), 12);

    /// <summary>Houses called A, B …, lamps A1, A2 …</summary>
    /// <param name="resistorOhms">Resistor of each lamp, Ω.</param>
    /// <param name="lampsOfHouse">Number of lamps in each house.</param>
    internal static TaggedNetwork Of(double resistorOhms, params int[] lampsOfHouse)
    {
        var state = CellState.At(Cell, 1);
        var pack = new PackLaw(Cell, 3, 1, 0.2);
        List<Element> elements = [new SourceElement("pack", 1, 0, pack.OpenVolts(state), pack.Ohms(state))];
        var (lamps, pairs) = (new List<LampTag>(), new List<PairTag>());
        for (var h = 0; h < lampsOfHouse.Length; h++)
        {
            var (name, plus, minus) = ((char)('A' + h), 2 + (2 * h), 3 + (2 * h));
            elements.Add(new ResistorElement($"plus of {name}", 1, plus, 0.5));
            elements.Add(new ResistorElement($"minus of {name}", minus, 0, 0.5));
            var first = lamps.Count;
            for (var l = 1; l <= lampsOfHouse[h]; l++)
            {
                lamps.Add(new LampTag($"{name}{l}", elements.Count));
                elements.Add(new LampElement($"{name}{l}", plus, minus, White, resistorOhms));
            }

            pairs.Add(new PairTag($"pair of {name}", [elements.Count - lampsOfHouse[h] - 2, elements.Count - lampsOfHouse[h] - 1], plus, minus, [.. Enumerable.Range(first, lampsOfHouse[h])]));
        }

        var network = new Network(2 + (2 * lampsOfHouse.Length), [.. elements]);
        return new TaggedNetwork(network, [.. lamps], [.. pairs], [new PackTag("pack", 0, pack, state)]);
    }

    /// <summary>Any hamlet.</summary>
    internal static Gen<TaggedNetwork> Any { get; } =
        Gen.Select(Gen.OneOf(Gen.Const(0.0), Gen.Double[47, 1500]), Gen.Int[1, 4].Array[1, 5]).Select(Of);
}
