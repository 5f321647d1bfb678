using Duskwright.Circuits.Lamps;
using Duskwright.Circuits.Networks;

namespace Duskwright.Circuits.Tests.Solving;

/// <summary>Seeded towns of 5 to 500 lamps: trees and meshes, one to three supplies that may share a return, lamps of every kind.</summary>
internal static class RandomNetwork
{
    // A flickering lamp whose lit state has no resistance of its own, which a net list can state without solving for it.
    private static readonly FlickerLaw Flickering = UsualLamps.Flickering with { Lit = UsualLamps.Flickering.Lit with { SeriesOhms = 0 } };

    internal static Network Of(int seed)
    {
        var chance = new Random(seed);
        double Between(double low, double high) => low + ((high - low) * chance.NextDouble());

        var lamps = (int)(5 * Math.Pow(100, chance.NextDouble()));

        // The simulator's Newton gives up where many lamps of its own making, which it knows by a formula only, meet in one town.
        var kinds = lamps < 40 && seed % 4 == 0 ? 0 : lamps < 150 ? 1 : 2;
        var mesh = seed % 2 == 1;
        var supplies = 1 + (seed % 3);
        List<Element> elements = [];

        // Node 0 is the common return at the bank; behind it stands each supply's own lead.
        var nodes = 1;
        var feeds = new List<(int Plus, int Minus)>();
        for (var s = 0; s < supplies; s++)
        {
            var (plus, minus) = (nodes++, nodes++);
            var limit = seed % 10 == 0 && s == 0 ? 0.01 * lamps : double.PositiveInfinity;
            elements.Add(new SourceElement($"supply {s}", plus, minus, Between(4, 5.2), Between(0.1, 1.5), limit));
            elements.Add(new ResistorElement($"lead {s}", minus, 0, Between(0.02, 0.3)));
            feeds.Add((plus, 0));
        }

        while (lamps > 0)
        {
            var (plus, minus) = feeds[chance.Next(feeds.Count)];
            var (farPlus, farMinus) = (nodes++, nodes++);
            elements.Add(new ResistorElement("plus", plus, farPlus, Between(0.05, 3)));
            elements.Add(new ResistorElement("minus", farMinus, minus, Between(0.05, 3)));
            for (var here = chance.Next(1, 5); here > 0 && lamps > 0; here--, lamps--)
            {
                elements.Add(Lamp(chance, kinds, farPlus, farMinus, Between));
            }

            feeds.Add((farPlus, farMinus));
        }

        for (var tie = mesh ? chance.Next(1, 8) : 0; tie > 0; tie--)
        {
            var (one, other) = (feeds[chance.Next(feeds.Count)], feeds[chance.Next(feeds.Count)]);
            if (one.Plus != other.Plus)
            {
                elements.Add(new ResistorElement("tie", one.Plus, other.Plus, Between(0.1, 5)));
            }
        }

        return new Network(nodes, [.. elements]);
    }

    private static LampElement Lamp(Random chance, int firstKind, int plus, int minus, Func<double, double, double> between)
    {
        var (anode, cathode) = chance.Next(30) == 0 ? (minus, plus) : (plus, minus);
        return chance.Next(firstKind, 10) switch
        {
            1 => new LampElement("mill", anode, cathode, UsualLamps.Filament with { RatedVolts = between(5, 7) }, between(0, 60)),
            0 => new LampElement("hearth", anode, cathode, Flickering, between(20, 300)),
            2 => new LampElement("bare", anode, cathode, UsualLamps.White with { RefVolts = between(2.6, 2.8) }, 0),
            3 or 4 => new LampElement("lantern", anode, cathode, UsualLamps.Amber with { RefVolts = between(1.7, 1.85) }, between(100, 1500)),
            _ => new LampElement("room", anode, cathode, UsualLamps.White with { RefVolts = between(2.6, 2.8) }, between(100, 1500)),
        };
    }
}
