using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Plan.Quantities;
using Duskwright.Proposals.Wiring;
using Duskwright.Study;
using Duskwright.Study.Results;

namespace Duskwright.Proposals.Growth;

/// <summary>What a town still takes: lamps on each pack and each tap, pairs in each wireway and through each hole.</summary>
/// <param name="Packs">Every pack with lamps.</param>
/// <param name="Taps">Every tap.</param>
/// <param name="Wireways">Every wireway that takes only so many pairs.</param>
/// <param name="Holes">Every hole that is drilled.</param>
public sealed record SpareRoom(ItemList<PackRoom> Packs, ItemList<TapRoom> Taps, ItemList<WirewayRoom> Wireways, ItemList<HoleRoom> Holes)
{
    // More than so many on one house nobody builds.
    private const int MostLamps = 128;

    /// <summary>Reckons it.</summary>
    /// <param name="study">The town's results.</param>
    /// <param name="cancel">Stops the trying at the taps.</param>
    /// <returns>The room there is.</returns>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static SpareRoom Of(TownStudy study, CancellationToken cancel = default)
    {
        var town = study.Town;
        if (study.Buildings.Count == 0)
        {
            return new SpareRoom([], [], [], []);
        }

        var reach = new TieInReach(GrowthProposal.Planned(study).Study);
        return new SpareRoom(
            study.Packs.Where(p => p.Lamps > 0).Select(p => PackRoom.Of(study, p)).ToItemList(),
            town.Taps.Where(t => town.SwitchGroups.Any(g => g.Id == t.SwitchGroup && g.Supply is not null)).Select(t => new TapRoom(t.Id, MoreAt(study, t, cancel))).ToItemList(),
            reach.Wireways.Where(w => w.CapacityPairs is not null).Select(w => new WirewayRoom(w.Id, w.TakenPairs, Math.Max(0, w.CapacityPairs!.Value - w.TakenPairs))).ToItemList(),
            (town.Board?.FeedHoles ?? []).Where(h => h.Bore is not null).Select(h => HoleOf(h, reach)).ToItemList());
    }

    private static HoleRoom HoleOf(FeedHole hole, TieInReach reach)
    {
        var through = reach.Through(hole.Id).ToList();
        var bore = hole.Bore!.Value.Millimetres;

        // Copper alone never fills more than the hole, so this many do not pass.
        var (more, fails) = (0, (int)Math.Pow(bore / reach.Usual.OuterDiameter.Millimetres, 2) + 1);
        while (fails - more > 1)
        {
            var pairs = (more + fails) / 2;
            (more, fails) = HoleDrill.Millimetres(through.Concat(Enumerable.Repeat(reach.Usual, pairs))) <= bore ? (pairs, fails) : (more, pairs);
        }

        return new HoleRoom(hole.Id, through.Count, more, hole.Bore.Value);
    }

    // The most lamps like the commonest on the switch, tried by halving, with which nobody on the switch is newly seen to be fainter than its like.
    private static int MoreAt(TownStudy study, Tap tap, CancellationToken cancel)
    {
        var town = study.Town;
        var least = 100 - town.Show.VisibleStep;
        var faint = study.FedBy([]).Where(f => f.Evenness < least).Select(f => f.Building).ToHashSet(StringComparer.Ordinal);
        var alike = study.Lamps.Where(l => l.SwitchGroup == tap.SwitchGroup).GroupBy(l => (l.Part.Id, Ohms: l.Resistor.Value)).MaxBy(g => g.Count());
        if (alike is null)
        {
            return 0;
        }

        var (led, ohms) = alike.Key;
        var (holds, fails) = (0, MostLamps + 1);
        while (fails - holds > 1)
        {
            cancel.ThrowIfCancellationRequested();
            var lamps = (holds + fails) / 2;
            var house = new Building { Name = "The house to come", Leds = lamps, Led = led, Resistor = ohms > 0 ? ResistorChoice.Of(Resistance.FromOhms(ohms)) : ResistorChoice.None, SwitchGroup = tap.SwitchGroup };
            var pair = new Route { Building = house.Key, From = tap.Id, Points = [], Length = Length.FromMetres(BoardGround.Rules(town).SlackMetres) };
            var then = study.After(town with { Buildings = town.Buildings.Append(house).ToItemList(), Routes = town.Routes.Append(pair).ToItemList() });
            (holds, fails) = then.FedBy([]).Any(f => f.Evenness < least && !faint.Contains(f.Building)) ? (holds, lamps) : (lamps, fails);
        }

        return holds;
    }
}

/// <summary>What a pack still takes.</summary>
/// <param name="Number">Its number on every drawing.</param>
/// <param name="Supply">Its id.</param>
/// <param name="Lamps">How many lamps it feeds.</param>
/// <param name="More">How many more like its commonest one it feeds until the show ends, within its limit and its fuse.</param>
public sealed record PackRoom(int Number, string Supply, int Lamps, int More)
{
    /// <summary>The share of a limit above which it counts as reached: a regulated supply's volts begin to fall.</summary>
    internal const double Full = 0.999;

    internal static PackRoom Of(TownStudy study, PackResult pack)
    {
        var each = pack.Load!.Value / pack.Lamps;
        var most = (double)Carrying.Most;
        if (pack.Carrying is { } carrying && pack.HoursToDim is not null)
        {
            most = carrying.DimByEnd.Value - 1;
        }

        if (pack.Part.CurrentLimit is { } limit)
        {
            most = Math.Min(most, limit.Amperes * pack.Supply.Parallel * Full / each);
        }

        if (pack.Supply.Fuse is { } id)
        {
            most = Math.Min(most, Catalogue.FindFuse(study.Town, id)!.Hold.Amperes / each);
        }

        return new PackRoom(pack.Number, pack.Supply.Id, pack.Lamps, Math.Max(0, (int)Math.Floor(most + 1e-9) - pack.Lamps));
    }
}

/// <summary>What a tap still takes.</summary>
/// <param name="Tap">Its id.</param>
/// <param name="More">How many lamps like the commonest on its switch a house at it may have until somebody on the switch is seen to be fainter than its like.</param>
public sealed record TapRoom(string Tap, int More);

/// <summary>What a wireway still takes.</summary>
/// <param name="Wireway">Its id.</param>
/// <param name="Pairs">The pairs in it, laid, planned or suggested.</param>
/// <param name="More">How many more it takes.</param>
public sealed record WirewayRoom(string Wireway, int Pairs, int More);

/// <summary>What a hole still takes.</summary>
/// <param name="Hole">Its id.</param>
/// <param name="Pairs">The pairs through it.</param>
/// <param name="More">How many more of the usual wire pass.</param>
/// <param name="Bore">Its bore.</param>
public sealed record HoleRoom(string Hole, int Pairs, int More, Length Bore);
