using Duskwright.Circuits.Lamps;
using Duskwright.Circuits.Wires;
using Duskwright.Light.Camera;
using Duskwright.Light.Colour;
using Duskwright.Light.Leaks;
using Duskwright.Light.Perception;

namespace Duskwright.Study.Figures;

/// <summary>Every formula by which this room computes a figure from others. Inputs are in the order of the words, SI units.</summary>
internal static class Laws
{
    internal static Law LampThroughResistor { get; } = new(
        "current = (pack − wire − lamp) ÷ resistor", "Ohm's law over one lamp's branch", x => (x[0] - x[1] - x[2]) / x[3]);

    /// <summary>Inputs: volts left to the branch, ohms in the branch, V_ref, I_ref, n, R.</summary>
    internal static Law LampOnItsCurve { get; } = new(
        "current = where the lamp's own curve and the wire leave the volts there are",
        "V = V_ref + n·V_T·ln(I ÷ I_ref) + R·(I − I_ref), Shockley's diode with series resistance",
        x => new LedLaw(x[2], x[3], x[4], x[5]).At(x[0], x[1]).Amps);

    /// <summary>Inputs: volts left to the branch, ohms in the branch, V_ref, I_ref, n, R, dark current at 3 V, lit share, least volts.</summary>
    internal static Law FlickeringLamp { get; } = new(
        "mean current = lit share × lit current + dark share × dark current",
        "state by state; figures of flickering lamps are common practice, no source",
        x => new FlickerLaw(new LedLaw(x[2], x[3], x[4], x[5]), x[6], x[7], x[8]).At(x[0], x[1]).Amps);

    /// <summary>Inputs: volts left to the branch, ohms in the branch, rated volts, rated amperes.</summary>
    internal static Law FilamentLamp { get; } = new(
        "current = rated current × (volts ÷ rated volts)^0.55", "usual exponents of lamp handbooks, from memory", x => new FilamentLaw(x[2], x[3]).At(x[0], x[1]).Amps);

    internal static Law Sum { get; } = new("the sum of its parts", "Kirchhoff's current law", x => x.Sum());

    internal static Law Product { get; } = new("one times the other", "arithmetic", x => x[0] * x[1]);

    internal static Law Facade { get; } = new("facade = 0.20 × light in the room ÷ π", "a matt wall of dark timber or brick throws back 0.20 (a lamp maker's table)", x => LeakSight.OutsideReflectance * x[0] / Math.PI);

    internal static Law Stops { get; } = new("stops = log₂ of one over the other", "definition of the stop", x => Exposure.Stops(x[0], x[1]));

    /// <summary>Inputs: luminance to show as a middle tone, ISO, f-number, stops it is set above that tone.</summary>
    internal static Law Shutter { get; } = new(
        "time = 12.5 × f-number² ÷ (luminance × ISO) × 2^stops", "ISO 2720, reflected light, K = 12.5", x => Exposure.Seconds(x[0], x[1], x[2]) * Math.Pow(2, x[3]));

    /// <summary>Inputs: luminance of the windows, stops a picture holds.</summary>
    internal static Law RoomLightForPair { get; } = new(
        "room light = π × windows ÷ (0.20 × 2^stops)", "facade = 0.20 × light in the room ÷ π, brought within the stops a picture holds", x => Math.PI * x[0] / (LeakSight.OutsideReflectance * Math.Pow(2, x[1])));

    internal static Law Modulation { get; } = new("modulation = (lit − dark) ÷ (lit + dark)", "definition (Michelson)", x => (x[0] - x[1]) / (x[0] + x[1]));

    /// <summary>Inputs: hours, hours a day.</summary>
    internal static Law Years { get; } = new("years = hours ÷ (hours a day × 365)", "arithmetic", x => x[0] / (x[1] * 365));

    /// <summary>Inputs: share passed unpainted, lux inside, lux of the room.</summary>
    internal static Law CoatsUntilUnseen { get; } = new(
        "coats = the least at which share × 10^(−0.6 × coats) × light inside is under 0.02 × 0.20 × light in the room",
        "optical density by its definition, 0.6 a coat from memory; 2 % is just seen side by side (photographic textbook)",
        x => LeakSight.CoatsUntilUnseen(new Covering("", x[0]), x[1], x[2]));

    /// <summary>Inputs: cd/m² inside, lux of the room, metres to the eye.</summary>
    internal static Law WidestSeam { get; } = new(
        "width = a minute of arc at the eye's distance × 0.02 × facade ÷ wall inside",
        "an eye of normal sharpness parts one minute of arc, from memory; 2 % is just seen (photographic textbook)",
        x => LeakSight.WidestUnseenSeam(x[0], x[1], x[2]));

    /// <summary>Inputs: hours to dim, hours burnt.</summary>
    internal static Law HoursLeft { get; } = new("hours left = hours to dim − hours burnt, never below 0", "arithmetic", x => Math.Max(0, x[0] - x[1]));

    internal static Law OneMore { get; } = new("factor = (lamps + 1) ÷ lamps", "light is additive", x => (x[0] + 1) / x[0]);

    internal static Law Ratio { get; } = new("one over the other", "arithmetic", x => x[0] / x[1]);

    internal static Law HeatInResistor { get; } = new("heat = current² × resistor", "Joule's law", x => x[0] * x[0] * x[1]);

    internal static Law VoltsUnderLoad { get; } = new("volts under load = open volts − current × resistance inside", "Ohm's law", x => x[0] - (x[1] * x[2]));

    internal static Law DropInPair { get; } = new("drop = current × wire and joints there and back", "Ohm's law", x => x[0] * 2 * x[1]);

    internal static Law PairByDistance { get; } = new("pair = distance × detour + slack", "common practice, no source", x => (x[0] * x[1]) + x[2]);

    /// <summary>Inputs: hour before, hour after, lightness before, lightness after, lightness to reach.</summary>
    internal static Law HourReached { get; } = new(
        "hours = straight between the two computed hours round it", "discharge computed step by step (two-well cells)",
        x => x[0] + ((x[1] - x[0]) * (x[2] - x[4]) / (x[2] - x[3])));

    internal static Law LightnessOfShare { get; } = new("lightness = 116 × ∛share − 16", "CIE 1976 L*, CIE 15", x => Lightness.OfShare(x[0]));

    /// <summary>Inputs: x and y of one light, x and y of the other.</summary>
    internal static Law ColourApart { get; } = new(
        "ΔE = √(Δa*² + Δb*²), both as bright as the white", "CIE 1976 L*a*b*, CIE 15; the eye takes lamplight (illuminant A) as white", x => ColourDifference.Between(new Chromaticity(x[0], x[1]), new Chromaticity(x[2], x[3]), ColourDifference.Lamplight));

    internal static Law RoomLightLimit { get; } = new(
        "room light = π × pane ÷ (1.7 × 0.8)", "1.7 times white reads as luminous: Bonato and Gilchrist, Perception 23 (1994) 991", x => ReadsAsLit.RoomLuxLimit(x[0]));

    /// <summary>Inputs, for each lamp of the room: its candelas, and the luminance one candela of it gives the pane.</summary>
    internal static Law PaneLuminance { get; } = new(
        "pane = the sum over its room's lamps of intensity × what the room and the pane make of one candela",
        "light is additive; each room solved patch by patch (Goral and others, Computer Graphics 18 (1984) 213)",
        x => Enumerable.Range(0, x.Count / 2).Sum(i => x[2 * i] * x[(2 * i) + 1]));

    internal static Law SteadyWireHeat { get; } = new(
        "temperature at which the wire in card settles", "Fourier's law through the card and a film of still air", x => WireHeat.SteadyCelsius(x[0], x[1], x[2]));

    internal static Law CurrentOfShort { get; } = new("current = open volts ÷ (all resistance there and back)", "Ohm's law", x => x[0] / (x[1] + x[2] + x[3] + x[4]));

    internal static Law PacksToBuy { get; } = new("cost = packs × price of one", "arithmetic; usual prices, common practice, no source", x => x[0] * x[1]);

    /// <summary>Inputs: open volts of the fuller row, of the emptier, ohms of either.</summary>
    internal static Law RowIntoRow { get; } = new("current = (fuller − emptier) ÷ (resistance of both)", "Ohm's law", x => (x[0] - x[1]) / (x[2] + x[3]));

    internal static Law ResistorExact { get; } = new("resistor = (supply − lamp) ÷ current", "Ohm's law", x => (x[0] - x[1]) / x[2]);

    internal static Law DropPerMetre { get; } = new("ohms of a metre of one conductor, at most = drop ÷ (2 × length × current)", "Ohm's law, both conductors counted", x => x[0] / (2 * x[1] * x[2]));

    internal static Law DropInWire { get; } = new("drop = 2 × length × ohms of a metre × current", "Ohm's law, both conductors counted", x => 2 * x[0] * x[1] * x[2]);
}
