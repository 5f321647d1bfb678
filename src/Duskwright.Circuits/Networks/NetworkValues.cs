using Duskwright.Circuits.Lamps;

namespace Duskwright.Circuits.Networks;

/// <summary>The numbers of a network's parts apart from how they are joined.</summary>
/// <remarks>Arrays are by element. Not safe for two threads at once.</remarks>
internal sealed class NetworkValues
{
    private readonly Network _network;

    /// <summary>Takes the numbers of a network.</summary>
    /// <param name="network">The network, which is not changed.</param>
    internal NetworkValues(Network network)
    {
        _network = network;
        var count = network.Elements.Length;
        Ohms = new double[count];
        OpenVolts = new double[count];
        LimitAmps = new double[count];
        Laws = new LampLaw?[count];
        Turned = new bool[count];
        for (var i = 0; i < count; i++)
        {
            Put(i, network.Elements[i]);
        }
    }

    /// <summary>Resistance of a resistor, in a source, or in the lead of a lamp, Ω.</summary>
    internal double[] Ohms { get; }

    /// <summary>Open voltage of a source, V.</summary>
    internal double[] OpenVolts { get; }

    /// <summary>The most current of a source, A; zero where no source stands.</summary>
    internal double[] LimitAmps { get; }

    /// <summary>The lamps; none where a resistor or source stands.</summary>
    internal LampLaw?[] Laws { get; }

    /// <summary>Whether a lamp is the wrong way round.</summary>
    internal bool[] Turned { get; }

    /// <summary>Takes the numbers of an element that stands at a place, either way round.</summary>
    internal void Put(int place, Element element)
    {
        (Laws[place], OpenVolts[place], LimitAmps[place]) = (null, 0, 0);
        Turned[place] = element.A != _network.Elements[place].A;
        switch (element)
        {
            case ResistorElement resistor:
                Ohms[place] = resistor.Ohms;
                break;
            case LampElement lamp:
                (Ohms[place], Laws[place]) = (lamp.ResistorOhms, lamp.Law);
                break;
            case SourceElement source:
                (Ohms[place], OpenVolts[place], LimitAmps[place]) = (source.Ohms, source.OpenVolts, source.LimitAmps);
                break;
            default:
                throw new ArgumentException($"{element.Name} is of a kind the solver does not know.", nameof(element));
        }
    }
}
