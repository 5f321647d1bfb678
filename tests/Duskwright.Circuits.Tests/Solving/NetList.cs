using Duskwright.Circuits.Lamps;
using Duskwright.Circuits.Networks;

namespace Duskwright.Circuits.Tests.Solving;

/// <summary>A network written as a net list; node n is called "n" and n.</summary>
internal static class NetList
{
    internal static IEnumerable<string> Of(Network network)
    {
        yield return $".options reltol=1e-6 abstol=1e-15 vntol=1e-9 gmin=1e-15 temp={N(LedLaw.RoomKelvin - 273.15)} tnom={N(LedLaw.RoomKelvin - 273.15)}";
        for (var i = 0; i < network.Elements.Length; i++)
        {
            foreach (var line in Of(network.Elements[i], i))
            {
                yield return line;
            }
        }
    }

    internal static string Node(int node) => node == 0 ? "0" : $"n{node}";

    private static string[] Of(Element element, int i)
    {
        var (a, b) = (Node(element.A), Node(element.B));
        return element switch
        {
            ResistorElement r => [$"r{i} {a} {b} {N(r.Ohms)}"],

            // A is the minus of a source.
            SourceElement s => [$"v{i} s{i} {a} {N(s.OpenVolts)}", $"r{i} s{i} {b} {N(s.Ohms)}"],
            LampElement { Law: LedLaw led } lamp => [.. Behind(lamp, i), .. Diode(led, i, From(lamp, i), b)],
            LampElement { Law: FilamentLaw filament } lamp => [.. Behind(lamp, i), Current(i, From(lamp, i), b, FilamentAmps(filament, $"v({From(lamp, i)},{b})"))],
            LampElement { Law: FlickerLaw flicker } lamp => Flicker(lamp, flicker, i),
            _ => throw new NotSupportedException($"{element.Name} has no net list."),
        };
    }

    private static string From(LampElement lamp, int i) => lamp.ResistorOhms > 0 ? $"m{i}" : Node(lamp.A);

    private static string[] Behind(LampElement lamp, int i) => lamp.ResistorOhms > 0 ? [$"r{i} {Node(lamp.A)} m{i} {N(lamp.ResistorOhms)}"] : [];

    private static string[] Diode(LedLaw led, int i, string anode, string cathode)
    {
        var thermal = led.Ideality * LedLaw.BoltzmannOverCharge * led.TemperatureKelvin;
        var saturation = led.RefAmps * Math.Exp(-(led.RefVolts - (led.SeriesOhms * led.RefAmps)) / thermal);
        return [$"d{i} {anode} {cathode} led{i}", $".model led{i} d(is={N(saturation)} n={N(led.Ideality)} rs={N(led.SeriesOhms)})"];
    }

    // The lit state stands apart on a copy of the branch's voltage; the branch carries its share of that current and of the dark one's.
    private static string[] Flicker(LampElement lamp, FlickerLaw law, int i)
    {
        var (a, b) = (Node(lamp.A), Node(lamp.B));
        var thermal = N(law.Lit.Ideality * LedLaw.BoltzmannOverCharge * law.Lit.TemperatureKelvin);
        var lit = $"{N(law.Lit.RefAmps)}*exp((v(y{i})-{N(law.Lit.RefVolts)})/{thermal})/(1+exp(({N(law.LeastVolts)}-v(y{i}))/0.02))";
        return
        [
            $"e{i} x{i} 0 {a} {b} 1",
            $"v{i} x{i} z{i} 0",
            $"r{i} z{i} y{i} {N(lamp.ResistorOhms)}",
            Current(i, $"y{i}", "0", lit),
            $"f{i} {a} {b} v{i} {N(law.OnShare)}",
            $"rd{i} {a} {b} {N(((3 / law.OffAmpsAt3Volts) + lamp.ResistorOhms) / (1 - law.OnShare))}",
        ];
    }

    private static string Current(int i, string from, string to, string amps) => $"b{i} {from} {to} i={amps}";

    // The handbook's power law, with the cold filament straight below 0.5 % of its voltage.
    private static string FilamentAmps(FilamentLaw law, string volts) =>
        $"{N(law.RatedAmps / law.RatedVolts)}*{volts}*(({volts}/{N(law.RatedVolts)})^2+2.5e-5)^(-0.225)";

    private static string N(double value) => Ngspice.Number(value);
}
