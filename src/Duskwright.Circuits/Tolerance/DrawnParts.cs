using System.Numerics;
using Duskwright.Circuits.Lamps;
using Duskwright.Circuits.Networks;

namespace Duskwright.Circuits.Tolerance;

/// <summary>The parts of one draw: each as its spread makes it.</summary>
/// <remarks>Dimension 0 is the batch; what has a spread has a dimension of its own, and each unknown part one more.</remarks>
internal sealed class DrawnParts
{
    private const int Batch = 0;
    private const int NoDimension = -1;

    private readonly Network _network;
    private readonly Spreads _spreads;
    private readonly int[] _unknownAt;

    // By element: the dimension of a lamp's volts, a wire's length or a source's volts; of a resistor, joints or a source's resistance; of light.
    private readonly int[] _first;
    private readonly int[] _second;
    private readonly int[] _light;

    /// <summary>Numbers the dimensions.</summary>
    /// <param name="network">The circuit as planned.</param>
    /// <param name="spreads">How its parts spread.</param>
    /// <param name="seen">Lamps whose light will be asked for.</param>
    internal DrawnParts(Network network, Spreads spreads, IEnumerable<int> seen)
    {
        _network = network;
        _spreads = spreads;
        var count = network.Elements.Length;
        _unknownAt = [.. Enumerable.Repeat(NoDimension, count)];
        for (var i = 0; i < spreads.Unknowns.Length; i++)
        {
            Check(spreads.Unknowns[i]);
            _unknownAt[spreads.Unknowns[i].Element] = i;
        }

        Dimensions = Batch + 1 + spreads.Unknowns.Length;
        int Numbered(bool spread) => spread ? Dimensions++ : NoDimension;
        _first = new int[count];
        _second = new int[count];
        _light = [.. Enumerable.Repeat(NoDimension, count)];
        for (var i = 0; i < count; i++)
        {
            var isUnknown = _unknownAt[i] >= 0;
            var (first, second) = network.Elements[i] switch
            {
                LampElement lamp => (spreads.LampPieceVolts.GetValueOrDefault(i, spreads.PieceVolts) != 0, spreads.Resistor != 0 && lamp.ResistorOhms > 0),
                ResistorElement => (spreads.Wire != 0, spreads.JointOhms != 0),
                _ => (spreads.SourceVolts != 0, spreads.SourceOhms != 0),
            };
            (_first[i], _second[i]) = (Numbered(first || isUnknown), Numbered(second || isUnknown));
        }

        foreach (var lamp in seen.Where(l => spreads.PieceLight != 0 && _light[l] < 0))
        {
            _light[lamp] = Dimensions++;
        }
    }

    internal int Dimensions { get; private set; }

    /// <summary>Fills the elements of a draw.</summary>
    internal Element[] Of(StratifiedDraws draws, int draw)
    {
        var parts = new Element[_network.Elements.Length];
        for (var i = 0; i < parts.Length; i++)
        {
            parts[i] = Varied(draws, draw, i);
        }

        return parts;
    }

    /// <summary>Fills the numbers of the draws that are solved side by side.</summary>
    internal void Fill(LaneValues values, StratifiedDraws draws, int group)
    {
        Vector<double> Normals(int dimension) => dimension < 0 ? Vector<double>.Zero : draws.Normals(group, dimension);
        var batch = _spreads.BatchVolts * Normals(Batch);
        for (var i = 0; i < _first.Length; i++)
        {
            switch (_unknownAt[i] < 0 ? _network.Elements[i] : null)
            {
                case LampElement { Law: LedLaw led } lamp:
                    values.RefVolts[i] = new Vector<double>(led.RefVolts) + batch + (PieceVolts(i) * Normals(_first[i]));
                    values.Ohms[i] = lamp.ResistorOhms * Positive(Vector<double>.One + (_spreads.Resistor * Normals(_second[i])));
                    break;
                case ResistorElement wire:
                    values.Ohms[i] = (wire.Ohms * Positive(Vector<double>.One + (_spreads.Wire * Normals(_first[i])))) + (_spreads.JointOhms * Vector.Abs(Normals(_second[i])));
                    break;
                case SourceElement source:
                    values.OpenVolts[i] = source.OpenVolts * (Vector<double>.One + (_spreads.SourceVolts * Normals(_first[i])));
                    values.Ohms[i] = source.Ohms * Vector.Exp(_spreads.SourceOhms * Normals(_second[i]));
                    break;
                default:
                    for (var lane = 0; lane < LaneValues.Lanes; lane++)
                    {
                        values.Put(i, lane, Varied(draws, (group * LaneValues.Lanes) + lane, i));
                    }

                    break;
            }
        }
    }

    /// <summary>Light of a lamp in the draws that are solved side by side against one of the middle, at the same current.</summary>
    internal Vector<double> LightShares(StratifiedDraws draws, int group, int lamp) =>
        _light[lamp] < 0 ? Vector<double>.One : Vector.Exp(_spreads.PieceLight * draws.Normals(group, _light[lamp]));

    private static double Positive(double share) => Math.Max(LeastShare, share);

    private static Vector<double> Positive(Vector<double> share) => Vector.Max(new Vector<double>(LeastShare), share);

    // No spread turns a part into one of less than a twentieth.
    private const double LeastShare = 0.05;

    private double PieceVolts(int i) => _spreads.LampPieceVolts.GetValueOrDefault(i, _spreads.PieceVolts);

    private Element Known(StratifiedDraws draws, int draw, int i)
    {
        if (_unknownAt[i] < 0)
        {
            return _network.Elements[i];
        }

        var could = _spreads.Unknowns[_unknownAt[i]].CouldBe;
        var normal = draws.Normal(draw, Batch + 1 + _unknownAt[i]);
        return could[Math.Clamp((int)(NormalQuantile.ShareBelow(normal) * could.Length), 0, could.Length - 1)];
    }

    private Element Varied(StratifiedDraws draws, int draw, int i)
    {
        double Normal(int dimension) => dimension < 0 ? 0 : draws.Normal(draw, dimension);
        var (first, second) = (Normal(_first[i]), Normal(_second[i]));
        return Known(draws, draw, i) switch
        {
            LampElement lamp => lamp with
            {
                Law = Varied(lamp.Law, (_spreads.BatchVolts * draws.Normal(draw, Batch)) + (PieceVolts(i) * first)),
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
            var element => element,
        };
    }

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
