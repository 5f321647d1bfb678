using Duskwright.Circuits.Lamps;

namespace Duskwright.Circuits.Networks;

/// <summary>The numbers of a network's parts apart from how they are joined, to be varied from draw to draw.</summary>
/// <remarks>Arrays are by element. Not safe for two threads at once.</remarks>
public sealed class NetworkValues
{
    private readonly Network _network;

    /// <summary>Takes the numbers of a network.</summary>
    /// <param name="network">The network, which is not changed.</param>
    public NetworkValues(Network network)
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
            Reset(i);
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

    /// <summary>Number of elements.</summary>
    internal int Count => Ohms.Length;

    /// <summary>Gives a resistor another resistance.</summary>
    /// <param name="element">Its place among the elements.</param>
    /// <param name="ohms">Ω, from <see cref="Network.LeastOhms"/> on.</param>
    /// <exception cref="ArgumentException">No resistor stands there, or the resistance is not allowed.</exception>
    public void SetResistor(int element, double ohms)
    {
        Check<ResistorElement>(element, ohms, Network.LeastOhms);
        Ohms[element] = ohms;
    }

    /// <summary>Gives a lamp another law of the same kind and another resistor.</summary>
    /// <param name="element">Its place among the elements.</param>
    /// <param name="law">What it does at a voltage; a plain LED stays a plain LED.</param>
    /// <param name="resistorOhms">Resistance in its lead, Ω, zero or more.</param>
    /// <exception cref="ArgumentException">No lamp stands there, it is of another kind, or the resistance is not allowed.</exception>
    public void SetLamp(int element, LampLaw law, double resistorOhms)
    {
        Check<LampElement>(element, resistorOhms, 0);
        var kind = ((LampElement)_network.Elements[element]).Law.GetType();
        if (law.GetType() != kind)
        {
            throw new ArgumentException($"{_network.Elements[element].Name} is a {kind.Name} and stays one; a {law.GetType().Name} was given.", nameof(law));
        }

        Laws[element] = law;
        Ohms[element] = resistorOhms;
    }

    /// <summary>Gives a source another voltage and resistance.</summary>
    /// <param name="element">Its place among the elements.</param>
    /// <param name="openVolts">Voltage with nothing connected, V, finite.</param>
    /// <param name="ohms">Resistance inside, Ω, from <see cref="Network.LeastOhms"/> on.</param>
    /// <exception cref="ArgumentException">No source stands there, or a number is not allowed.</exception>
    public void SetSource(int element, double openVolts, double ohms)
    {
        Check<SourceElement>(element, ohms, Network.LeastOhms);
        OpenVolts[element] = double.IsFinite(openVolts)
            ? openVolts
            : throw new ArgumentException($"{_network.Elements[element].Name} has {openVolts} V; a finite voltage is allowed.", nameof(openVolts));
        Ohms[element] = ohms;
    }

    /// <summary>Gives a part the network's own numbers again.</summary>
    /// <param name="element">Its place among the elements.</param>
    public void Reset(int element) => Put(element, _network.Elements[element]);

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

    private void Check<T>(int element, double ohms, double least)
        where T : Element
    {
        var at = _network.Elements[element];
        if (at is not T)
        {
            throw new ArgumentException($"{at.Name} is a {at.GetType().Name}, not a {typeof(T).Name}.", nameof(element));
        }

        if (!double.IsFinite(ohms) || ohms < least)
        {
            throw new ArgumentException($"{at.Name} has {ohms} Ω; a finite resistance from {least} Ω is allowed.", nameof(ohms));
        }
    }
}
