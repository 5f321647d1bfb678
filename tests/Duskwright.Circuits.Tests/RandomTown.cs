using Duskwright.Circuits.Lamps;
using Duskwright.Circuits.Networks;

namespace Duskwright.Circuits.Tests;

/// <summary>Circuits as makers build them: a pack, pairs of wire that branch from house to house, and lamps of every kind across each pair.</summary>
/// <param name="Volts">Open voltage of the pack, V.</param>
/// <param name="Ohms">Its resistance, Ω.</param>
/// <param name="Houses">The houses.</param>
internal sealed record RandomTown(double Volts, double Ohms, RandomTown.House[] Houses)
{
    internal static Gen<RandomTown> Any { get; } =
        from volts in Gen.Double[1, 12]
        from ohms in Gen.Double[0.05, 3]
        from houses in Gen.Select(Gen.Double[0.01, 20], Gen.Int[0, 10_000], Lamp.Any.Array[1, 4]).Select((wire, along, lamps) => new House(wire, along, lamps)).Array[1, 12]
        select new RandomTown(volts, ohms, houses);

    /// <summary>The pack's plus is node 1 and its minus node 0; the pair of house h ends at nodes 2 + 2h and 3 + 2h.</summary>
    internal Network Network => new(2 + (2 * Houses.Length), [new SourceElement("pack", 1, 0, Volts, Ohms), .. Houses.SelectMany(ElementsOf)]);

    /// <summary>The pack, or the house before it, that the pair of a house comes from: the nodes of plus and minus.</summary>
    internal (int Plus, int Minus) Feed(int house)
    {
        var parent = Houses[house].Along % (house + 1);
        return parent == 0 ? (1, 0) : Ends(parent - 1);
    }

    internal static (int Plus, int Minus) Ends(int house) => (2 + (2 * house), 3 + (2 * house));

    private IEnumerable<Element> ElementsOf(House house, int index)
    {
        var (feed, ends) = (Feed(index), Ends(index));
        yield return new ResistorElement($"plus {index}", feed.Plus, ends.Plus, house.WireOhms);
        yield return new ResistorElement($"minus {index}", ends.Minus, feed.Minus, house.WireOhms);
        for (var i = 0; i < house.Lamps.Length; i++)
        {
            var lamp = house.Lamps[i];
            var (anode, cathode) = lamp.Reversed ? (ends.Minus, ends.Plus) : (ends.Plus, ends.Minus);
            yield return new LampElement($"lamp {index}.{i}", anode, cathode, lamp.Law, lamp.ResistorOhms);
        }
    }

    /// <param name="WireOhms">Resistance of each of its two wires, Ω.</param>
    /// <param name="Along">Picks where its pair comes from.</param>
    /// <param name="Lamps">Its lamps.</param>
    internal sealed record House(double WireOhms, int Along, Lamp[] Lamps);

    internal sealed record Lamp(LampLaw Law, double ResistorOhms, bool Reversed)
    {
        internal static Gen<Lamp> Any { get; } =
            from kind in Gen.Int[0, 4]
            from shift in Gen.Double[-0.2, 0.2]
            from ohms in Gen.OneOf(Gen.Const(0.0), Gen.Double[20, 3000])
            from reversed in Gen.Int[0, 15]
            select new Lamp(
                kind switch
                {
                    0 => UsualLamps.Amber with { RefVolts = UsualLamps.Amber.RefVolts + shift },
                    1 => UsualLamps.Flickering,
                    2 => UsualLamps.Filament,
                    _ => UsualLamps.White with { RefVolts = UsualLamps.White.RefVolts + shift },
                },
                ohms,
                reversed == 0);
    }
}
