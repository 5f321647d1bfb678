using System.Collections.Immutable;
using Duskwright.Harness.Tiles;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Study;
using Duskwright.Study.Results;

namespace Duskwright.Proposals.Tiles;

/// <summary>The tiles of one supply, plugged one way and another and solved each time.</summary>
internal sealed class TileTrial
{
    private readonly TownStudy _study;
    private readonly string _supply;
    private readonly double _wireOhms;
    private readonly Dictionary<string, ItemList<double>> _alone = new(StringComparer.Ordinal);

    internal TileTrial(TownStudy study, string supply, TilePlugs plugs)
    {
        (_study, _supply, Plugs) = (study, supply, plugs);
        _wireOhms = plugs.AcrossMetres * study.UsualWire.PerMetre.Ohms;
        Tiles =
        [
            .. study.Buildings
                .Where(b => b.Building.Tile is not null && b.Lamps.Any(l => l.Supply == supply))
                .GroupBy(b => b.Building.Tile!, StringComparer.Ordinal)
                .Select(t => Load(t.Key, [.. t.Select(b => b.Building)], t.Sum(b => b.Lamps.Count(l => l.Supply == supply)))),
        ];
    }

    internal TilePlugs Plugs { get; }

    internal ImmutableArray<TileLoad> Tiles { get; }

    /// <summary>One plug with worn contacts and the wire across a tile, one conductor, Ω.</summary>
    internal double WornOhms => Plugs.WornOhms + _wireOhms;

    /// <summary>The tiles as they are plugged, every contact worn; a tile that plugs into one that is left out is left out too.</summary>
    internal TileArrangement Of(ImmutableArray<int> into, IReadOnlySet<int>? without = null)
    {
        var there = Enumerable.Range(0, Tiles.Length).Where(t => Way(into, t).All(at => without?.Contains(at) != true)).ToList();
        var after = there.OrderBy(t => Way(into, t).Count()).ToList();
        var pieces = after.Select(t => new BusPiece(into[t] + 1, t + 1, WornOhms)).ToItemList();
        var bus = _study.OnBus(_supply, pieces, after.SelectMany(t => Tiles[t].Buildings.Select(b => new FeedHouse(b, t + 1))).ToItemList());
        var tileOf = there.SelectMany(t => Tiles[t].Buildings.Select(b => (Building: b, Tile: t))).ToDictionary(x => x.Building, x => x.Tile, StringComparer.Ordinal);
        var faintest = bus.Buildings.Select(b => (Tile: tileOf[b.Building], Share: b.Light.Zip(_alone[b.Building], (now, was) => was > 0 ? now / was : 1).Min())).MinBy(x => x.Share);
        return new TileArrangement(
            into.ToItemList(),
            faintest.Tile,
            faintest.Share,
            bus.SocketVolts - bus.Buildings.Min(b => b.Volts),
            bus.Amps,
            there.Max(t => there.Where(u => Way(into, u).Contains(t)).Sum(u => Tiles[u].Lamps)));
    }

    // From a tile to the socket, the tile itself first.
    private static IEnumerable<int> Way(ImmutableArray<int> into, int tile)
    {
        for (var at = tile; at != PluggedTiles.Socket; at = into[at])
        {
            yield return at;
        }
    }

    private TileLoad Load(string tile, List<Building> buildings, int lamps)
    {
        var alone = _study.OnBus(_supply, [new BusPiece(0, 1, Plugs.FreshOhms + _wireOhms)], buildings.Select(b => new FeedHouse(b.Key, 1)).ToItemList());
        foreach (var building in alone.Buildings)
        {
            _alone[building.Building] = building.Light;
        }

        return new TileLoad(tile, buildings.Select(b => b.Key).ToItemList(), lamps, alone.Buildings.Sum(b => b.Amps));
    }
}
