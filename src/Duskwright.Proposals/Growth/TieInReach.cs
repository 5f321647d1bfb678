using System.Collections.Immutable;
using Duskwright.Harness.Routes;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Proposals.Wiring;
using Duskwright.Study;
using Duskwright.Study.Results;

namespace Duskwright.Proposals.Growth;

/// <summary>What hands can still reach of a town's wiring, and what its wireways and holes hold already.</summary>
internal sealed class TieInReach
{
    private readonly Town _town;
    private readonly ILookup<string, WirePart> _through;
    private readonly WirePart _usual;

    internal TieInReach(TownStudy study)
    {
        _town = study.Town;
        _usual = study.UsualWire;
        var wires = study.Buildings.ToDictionary(b => b.Building.Key, b => (b.Building.FeedHole, b.Wire), StringComparer.Ordinal);

        // Through the hole of a house go the pair that feeds it and those that go on from it.
        var pairs = study.Buildings.Where(b => b.Lamps.Count > 0).Select(b => (b.Building.FeedHole, b.Wire))
            .Concat(_town.Routes.Where(r => r.From is not null && wires.ContainsKey(r.From)).Select(r => (wires[r.From!].FeedHole, wires[r.Building].Wire)))
            .Concat(_town.Taps.Where(t => t.From is not null && wires.ContainsKey(t.From)).Select(t => (wires[t.From!].FeedHole, t.Wire is null ? _usual : Catalogue.FindWire(_town, t.Wire)!)));
        _through = pairs.Where(p => p.FeedHole is not null).ToLookup(p => p.FeedHole!, p => p.Item2, StringComparer.Ordinal);
    }

    /// <summary>The wireways with every pair that runs in them, laid or only planned.</summary>
    internal ImmutableArray<WirewayLine> Wireways
    {
        get
        {
            var held = _town.Routes.SelectMany(r => r.Wireways).Concat(_town.Taps.SelectMany(t => t.Wireways)).CountBy(id => id, StringComparer.Ordinal).ToDictionary(StringComparer.Ordinal);
            return _town.Board is null ? [] : [.. BoardGround.Wireways(_town).Select(w => w with { TakenPairs = held.GetValueOrDefault(w.Id) })];
        }
    }

    internal WirePart Usual => _usual;

    internal IEnumerable<WirePart> Through(string hole) => _through[hole];

    internal ItemList<string> Against(Tap tap) => tap.Laid && !UnderHatch(tap.Points[^1])
        ? [$"Tap {tap.Id} is laid and no hatch opens over it."]
        : [];

    internal ItemList<string> Against(Building house, Building added)
    {
        var against = new List<string>();
        if (house.State == BuildingState.Fixed && house.Roof?.LiftsOff != true)
        {
            against.Add($"{house.Name} is glued down and its roof does not lift off: nobody reaches its joints.");
        }

        var hole = house.FeedHole is { } id ? _town.Board!.FeedHoles.First(h => h.Id == id) : null;
        if (hole is { Shut: true })
        {
            against.Add($"Hole {hole.Id} is shut.");
        }
        else if (hole?.Bore is { } bore)
        {
            var more = added.Wire is { } said && said != PartId.Unknown ? Catalogue.FindWire(_town, said)! : _usual;
            var drill = HoleDrill.Millimetres(_through[hole.Id].Append(more));
            if (drill > bore.Millimetres)
            {
                against.Add(FormattableString.Invariant($"Hole {hole.Id} is drilled {bore.Millimetres:0.#} mm; one pair more needs {drill:0.#} mm."));
            }
        }

        return against.ToItemList();
    }

    private bool UnderHatch(Point point)
    {
        var at = BoardGround.InMetres(point);
        return _town.Board!.Scenery.Any(s => s.Kind == SceneryKind.Hatch && s.Points.Count > 2 && ObstacleGround.Encloses([.. s.Points.Select(BoardGround.InMetres)], at));
    }
}
