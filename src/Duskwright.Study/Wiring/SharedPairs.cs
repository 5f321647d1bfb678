using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;

namespace Duskwright.Study.Wiring;

/// <summary>The pairs of one switch that several houses share: those that lead to taps, and those of houses from which further pairs go on.</summary>
internal sealed class SharedPairs
{
    private readonly List<(string Run, int From, int To, Span3 Ohms)> _pieces = [];
    private readonly Dictionary<string, int> _junctions = new(StringComparer.Ordinal);
    private readonly HashSet<string> _carrying = new(StringComparer.Ordinal);
    private readonly IReadOnlyDictionary<string, string> _starts;
    private readonly double _joint;

    private SharedPairs(ResolvedTown resolved, string group)
    {
        var town = resolved.Town;
        _joint = town.Wiring.JointResistance?.Ohms ?? Usual.JointOhms;
        _starts = resolved.Starts;
        var begun = _starts.Values.ToHashSet(StringComparer.Ordinal);
        var waiting = town.Taps.Where(t => t.SwitchGroup == group).Select(t => (Run: t.Id, Ohms: Ohms(town, t)))
            .Concat(resolved.Buildings.Where(b => begun.Contains(b.Building.Key) && b.Lamps.Any(l => l.SwitchGroup == group)).Select(b => (Run: b.Building.Key, Ohms: OneJointLess(b.Pair))))
            .ToList();

        // Each after the one that feeds it.
        while (waiting.FindIndex(w => _starts.GetValueOrDefault(w.Run) is not { } from || _junctions.ContainsKey(from)) is >= 0 and var next)
        {
            var (run, ohms) = waiting[next];
            waiting.RemoveAt(next);
            _pieces.Add((run, From(run), _junctions.Count + 1, ohms));
            _junctions.Add(run, _junctions.Count + 1);
            _carrying.Add(run);
        }
    }

    internal static WirePart WireOf(Town town, Tap tap) => Usual.WireOf(town, tap.Wire);

    internal static SharedPairs Of(ResolvedTown resolved, string group) => new(resolved, group);

    internal ItemList<SharedPairInput> Inputs(Corner corner) => _pieces.Select(p => new SharedPairInput(p.From, p.To, p.Ohms.At(corner)) { Run = p.Run }).ToItemList();

    /// <summary>The junction at which a building's own pair begins, or at which its lamps hang where further pairs go on from it.</summary>
    internal int Junction(string building) => _carrying.Contains(building) ? _junctions[building] : From(building);

    /// <summary>One conductor from that junction to the building's lamps: where further pairs go on from it, the joint in the house alone.</summary>
    internal double OwnOhms(ResolvedPair pair, Corner corner) => _carrying.Contains(pair.Building) ? _joint : pair.ConductorOhms.At(corner);

    /// <summary>One conductor from the switch to a building's lamps, with all its joints.</summary>
    internal double PathOhms(ResolvedPair pair)
    {
        var ohms = OwnOhms(pair, Corner.Typical);
        for (var at = Junction(pair.Building); at != 0;)
        {
            var (_, from, _, piece) = _pieces[at - 1];
            ohms += piece.Typical;
            at = from;
        }

        return ohms;
    }

    private int From(string run) => _starts.TryGetValue(run, out var from) ? _junctions.GetValueOrDefault(from) : 0;

    private Span3 OneJointLess(ResolvedPair pair) => new(pair.ConductorOhms.Low - _joint, pair.ConductorOhms.Typical - _joint, pair.ConductorOhms.High - _joint);

    private Span3 Ohms(Town town, Tap tap) => Span3.Exactly((tap.Length.Metres * WireOf(town, tap).PerMetre.Ohms) + _joint);
}
