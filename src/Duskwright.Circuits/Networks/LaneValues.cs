using System.Numerics;
using Duskwright.Circuits.Lamps;

namespace Duskwright.Circuits.Networks;

/// <summary>The numbers of as many networks of one structure as the vector unit holds, side by side: one network a lane.</summary>
/// <remarks>Arrays are by element, each vector by lane. Not safe for two threads at once.</remarks>
internal sealed class LaneValues
{
    private readonly Network _network;
    private readonly LampLaw?[] _laws;

    /// <summary>Takes the numbers of a network in every lane.</summary>
    /// <param name="network">The network, which is not changed.</param>
    internal LaneValues(Network network)
    {
        _network = network;
        var count = network.Elements.Length;
        _laws = new LampLaw?[count * Lanes];
        Ohms = new Vector<double>[count];
        OpenVolts = new Vector<double>[count];
        LimitAmps = new Vector<double>[count];
        RefVolts = new Vector<double>[count];
        RefAmps = new Vector<double>[count];
        InsideOhms = new Vector<double>[count];
        ThermalVolts = new Vector<double>[count];
        Signs = new Vector<double>[count];
        for (var i = 0; i < count; i++)
        {
            Put(i, network.Elements[i]);
        }
    }

    /// <summary>Networks side by side.</summary>
    internal static int Lanes => Vector<double>.Count;

    /// <summary>Resistance of a resistor, in a source, or in the lead of a lamp, Ω.</summary>
    internal Vector<double>[] Ohms { get; }

    /// <summary>Open voltage of a source, V.</summary>
    internal Vector<double>[] OpenVolts { get; }

    /// <summary>The most current of a source, A; zero where no source stands.</summary>
    internal Vector<double>[] LimitAmps { get; }

    /// <summary>Voltage of an LED at its reference current, V.</summary>
    internal Vector<double>[] RefVolts { get; }

    /// <summary>Reference current of an LED, A; one where no LED stands.</summary>
    internal Vector<double>[] RefAmps { get; }

    /// <summary>Resistance inside an LED, Ω.</summary>
    internal Vector<double>[] InsideOhms { get; }

    /// <summary>n·V_T of an LED, V; zero where no LED stands.</summary>
    internal Vector<double>[] ThermalVolts { get; }

    /// <summary>−1 where a lamp is the wrong way round, otherwise 1.</summary>
    internal Vector<double>[] Signs { get; }

    /// <summary>The lamp at a place in one lane; none where a resistor or source stands. An LED's voltage is in <see cref="RefVolts"/>.</summary>
    internal LampLaw? Law(int place, int lane) => _laws[(place * Lanes) + lane];

    /// <summary>The LED at a place, if in every lane either it or no lamp stands there.</summary>
    internal LedLaw? OnlyLed(int place)
    {
        LampLaw? only = null;
        for (var lane = 0; lane < Lanes; lane++)
        {
            var law = Law(place, lane);
            if (law is not null && only is not null && !ReferenceEquals(law, only))
            {
                return null;
            }

            only ??= law;
        }

        return only as LedLaw;
    }

    /// <summary>Takes the numbers of an element in every lane.</summary>
    internal void Put(int place, Element element)
    {
        for (var lane = 0; lane < Lanes; lane++)
        {
            Put(place, lane, element);
        }
    }

    /// <summary>Takes the numbers of an element that stands at a place, either way round, in one lane.</summary>
    internal void Put(int place, int lane, Element element)
    {
        var law = (element as LampElement)?.Law;
        var led = law as LedLaw;
        var source = element as SourceElement;
        var ohms = element switch
        {
            ResistorElement resistor => resistor.Ohms,
            LampElement lamp => lamp.ResistorOhms,
            SourceElement => source!.Ohms,
            _ => throw new ArgumentException($"{element.Name} is of a kind the solver does not know.", nameof(element)),
        };
        _laws[(place * Lanes) + lane] = law;
        Set(Ohms, place, lane, ohms);
        Set(OpenVolts, place, lane, source?.OpenVolts ?? 0);
        Set(LimitAmps, place, lane, source?.LimitAmps ?? 0);
        Set(RefVolts, place, lane, led?.RefVolts ?? 0);
        Set(RefAmps, place, lane, led?.RefAmps ?? 1);
        Set(InsideOhms, place, lane, led?.SeriesOhms ?? 0);
        Set(ThermalVolts, place, lane, led is null ? 0 : led.Ideality * LedLaw.BoltzmannOverCharge * led.TemperatureKelvin);
        Set(Signs, place, lane, element.A == _network.Elements[place].A ? 1 : -1);
    }

    private static void Set(Vector<double>[] vectors, int place, int lane, double value) => vectors[place] = vectors[place].WithElement(lane, value);
}
