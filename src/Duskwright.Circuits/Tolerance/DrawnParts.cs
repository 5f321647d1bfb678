using Duskwright.Circuits.Lamps;
using Duskwright.Circuits.Networks;

namespace Duskwright.Circuits.Tolerance;

/// <summary>The parts of one draw: each as its spread makes it.</summary>
/// <remarks>Dimension 0 is the batch; each element has three of its own (a lamp's: volts, resistor, light), and each unknown part one more.</remarks>
internal sealed class DrawnParts
{
    private const int Shared = 1;
    private const int PerElement = 3;

    private readonly Network _network;
    private readonly Spreads _spreads;
    private readonly int[] _unknownAt;

    internal DrawnParts(Network network, Spreads spreads)
    {
        _network = network;
        _spreads = spreads;
        _unknownAt = [.. Enumerable.Repeat(-1, network.Elements.Length)];
        for (var i = 0; i < spreads.Unknowns.Length; i++)
        {
            Check(spreads.Unknowns[i]);
            _unknownAt[spreads.Unknowns[i].Element] = i;
        }
    }

    internal int Dimensions => Shared + (PerElement * _network.Elements.Length) + _spreads.Unknowns.Length;

    /// <summary>Fills the elements of a draw.</summary>
    internal Element[] Of(StratifiedDraws draws, int draw)
    {
        var batch = _spreads.BatchVolts * draws.Normal(draw, 0);
        var parts = new Element[_network.Elements.Length];
        for (var i = 0; i < parts.Length; i++)
        {
            parts[i] = Varied(Known(draws, draw, i), i, batch, draws.Normal(draw, Shared + (PerElement * i)), draws.Normal(draw, Shared + (PerElement * i) + 1));
        }

        return parts;
    }

    /// <summary>Light of a lamp in this draw against one of the middle, at the same current.</summary>
    internal double LightShare(StratifiedDraws draws, int draw, int lamp) =>
        Math.Exp(_spreads.PieceLight * draws.Normal(draw, Shared + (PerElement * lamp) + 2));

    private static double Positive(double share) => Math.Max(0.05, share);

    private Element Known(StratifiedDraws draws, int draw, int i)
    {
        if (_unknownAt[i] < 0)
        {
            return _network.Elements[i];
        }

        var could = _spreads.Unknowns[_unknownAt[i]].CouldBe;
        var normal = draws.Normal(draw, Shared + (PerElement * _network.Elements.Length) + _unknownAt[i]);
        return could[Math.Clamp((int)(NormalQuantile.ShareBelow(normal) * could.Length), 0, could.Length - 1)];
    }

    private Element Varied(Element element, int i, double batch, double first, double second) => element switch
    {
        LampElement lamp => lamp with
        {
            Law = Varied(lamp.Law, batch + (_spreads.LampPieceVolts.GetValueOrDefault(i, _spreads.PieceVolts) * first)),
            ResistorOhms = lamp.ResistorOhms * Positive(1 + (_spreads.Resistor * second)),
        },
        ResistorElement wire => wire with
        {
            Ohms = (wire.Ohms * Positive(1 + (_spreads.Wire * first))) + (_spreads.JointOhms * Math.Abs(second)),
        },
        SourceElement source => source with
        {
            OpenVolts = source.OpenVolts * (1 + (_spreads.SourceVolts * first)),
            Ohms = source.Ohms * Math.Exp(_spreads.SourceOhms * second),
        },
        _ => element,
    };

    // A filament has no threshold to shift: its current lies where its volts would, as a share.
    private static LampLaw Varied(LampLaw law, double volts) => law switch
    {
        LedLaw led => led with { RefVolts = led.RefVolts + volts },
        FlickerLaw flicker => flicker with { Lit = flicker.Lit with { RefVolts = flicker.Lit.RefVolts + volts } },
        FilamentLaw filament => filament with { RatedAmps = filament.RatedAmps * Positive(1 - (volts / filament.RatedVolts)) },
        _ => law,
    };

    private void Check(UnknownPart unknown)
    {
        if (unknown.Element < 0 || unknown.Element >= _network.Elements.Length || unknown.CouldBe.IsEmpty
            || unknown.CouldBe.Any(e => e.A != _network.Elements[unknown.Element].A || e.B != _network.Elements[unknown.Element].B))
        {
            throw new ArgumentException($"Unknown part {unknown.Element} is no element of the network, or may be nothing, or something between other nodes.", nameof(unknown));
        }
    }
}
