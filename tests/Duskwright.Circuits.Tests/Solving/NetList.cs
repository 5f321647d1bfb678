using Duskwright.Circuits.Lamps;
using Duskwright.Circuits.Networks;

namespace Duskwright.Circuits.Tests.Solving;

/// <summary>A network written as a net list; node n is called "n" and n.</summary>
internal static class NetList
{
    // The simulator reckons with the constants of CODATA 2014 (its const.h, from memory); the product n·V_T is what a lamp has.
    private const double TheirBoltzmannOverCharge = 1.38064852e-23 / 1.6021766208e-19;

    internal static IEnumerable<string> Of(Network network)
    {
        yield return $".options reltol=1e-6 abstol=1e-12 vntol=1e-9 gmin=1e-15 temp={N(LedLaw.RoomKelvin - 273.15)} tnom={N(LedLaw.RoomKelvin - 273.15)}";
        for (var i = 0; i < network.Elements.Length; i++)
        {
            foreach (var line in Of(network.Elements[i], i))
            {
                yield return line;
            }
        }
    }

    /// <summary>The name under which the current of a lamp or source is read, in the element's own direction.</summary>
    internal static string Ammeter(int element) => $"v{element}#branch";

    internal static string Node(int node) => node == 0 ? "0" : $"n{node}";

    private static string[] Of(Element element, int i)
    {
        var (a, b) = (Node(element.A), Node(element.B));
        return element switch
        {
            ResistorElement r => [$"r{i} {a} {b} {N(r.Ohms)}"],

            // A is the minus of a source.
            SourceElement { LimitAmps: < double.PositiveInfinity } s => [$"v{i} {a} s{i} 0", Current(i, $"s{i}", b, Limited(s, $"({N(s.OpenVolts)}+v(s{i},{b}))/{N(s.Ohms)}"))],
            SourceElement s => [$"v{i} {a} s{i} {N(-s.OpenVolts)}", $"r{i} s{i} {b} {N(s.Ohms)}"],
            LampElement { Law: LedLaw led } lamp => [.. Behind(lamp, i), .. Diode(led, i, From(lamp, i), b), $"rl{i} w{i} {b} {N(1 / LampLaw.LeakSiemens)}"],
            LampElement { Law: FilamentLaw filament } lamp => [.. Behind(lamp, i), Current(i, From(lamp, i), b, FilamentAmps(filament, $"v({From(lamp, i)},{b})"))],
            LampElement { Law: FlickerLaw flicker } lamp => Flicker(lamp, flicker, i),
            _ => throw new NotSupportedException($"{element.Name} has no net list."),
        };
    }

    // Past its limit a supply gives way as steeply as through a million times its own resistance.
    private static string Limited(SourceElement source, string free) =>
        $"({free})<={N(source.LimitAmps)}?({free}):({N(source.LimitAmps)}+1e-6*(({free})-{N(source.LimitAmps)}))";

    private static string From(LampElement lamp, int i) => lamp.ResistorOhms > 0 ? $"m{i}" : $"w{i}";

    // An ammeter stands before every lamp.
    private static string[] Behind(LampElement lamp, int i) =>
        lamp.ResistorOhms > 0 ? [$"v{i} {Node(lamp.A)} w{i} 0", $"r{i} w{i} m{i} {N(lamp.ResistorOhms)}"] : [$"v{i} {Node(lamp.A)} w{i} 0"];

    private static string[] Diode(LedLaw led, int i, string anode, string cathode)
    {
        var thermal = led.Ideality * LedLaw.BoltzmannOverCharge * led.TemperatureKelvin;
        var saturation = led.RefAmps * Math.Exp(-(led.RefVolts - (led.SeriesOhms * led.RefAmps)) / thermal);
        return [$"d{i} {anode} {cathode} led{i}", $".model led{i} d(is={N(saturation)} n={N(led.Ideality * LedLaw.BoltzmannOverCharge / TheirBoltzmannOverCharge)} rs={N(led.SeriesOhms)})"];
    }

    // The lit state stands apart on a copy of the branch's voltage; the branch carries its share of that current and of the dark one's.
    private static string[] Flicker(LampElement lamp, FlickerLaw law, int i)
    {
        var (a, b) = (Node(lamp.A), Node(lamp.B));
        var thermal = N(law.Lit.Ideality * LedLaw.BoltzmannOverCharge * law.Lit.TemperatureKelvin);
        var lit = $"{N(law.Lit.RefAmps)}*exp((v(y{i})-{N(law.Lit.RefVolts)})/{thermal})/(1+exp(({N(law.LeastVolts)}-v(y{i}))/0.02))";
        return
        [
            $"v{i} {a} w{i} 0",
            $"e{i} x{i} 0 w{i} {b} 1",
            $"vl{i} x{i} z{i} 0",
            $"r{i} z{i} y{i} {N(lamp.ResistorOhms)}",
            Current(i, $"y{i}", "0", lit),
            $"f{i} w{i} {b} vl{i} {N(law.OnShare)}",
            $"rd{i} w{i} {b} {N(((3 / law.OffAmpsAt3Volts) + lamp.ResistorOhms) / (1 - law.OnShare))}",
        ];
    }

    private static string Current(int i, string from, string to, string amps) => $"b{i} {from} {to} i={amps}";

    // The handbook's power law, with the cold filament straight below 0.5 % of its voltage.
    private static string FilamentAmps(FilamentLaw law, string volts) =>
        $"{N(law.RatedAmps / law.RatedVolts)}*{volts}*(({volts}/{N(law.RatedVolts)})^2+2.5e-5)^(-0.225)";

    private static string N(double value) => Ngspice.Number(value);
}
