using System.Collections.Immutable;
using System.Globalization;
using Duskwright.Harness.Growth;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Quantities;
using Duskwright.Proposals.Wiring;
using Duskwright.Study;

namespace Duskwright.Proposals.Growth;

/// <summary>Every place at which a new building could be tied in, the least wire first.</summary>
internal sealed class TieInOptions
{
    private const string AtBank = "bank";

    // One joint on each conductor, at the bank or a tap, and one in the house.
    private const int JointsOfPair = 4;
    private const int JointsOfBranch = 2;

    private readonly TownStudy _study;
    private readonly Town _town;
    private readonly Building _added;
    private readonly TieInReach _reach;
    private readonly Dictionary<string, string> _supplyOf;
    private readonly Dictionary<string, Route> _suggested;

    private TieInOptions(TownStudy study, Building added, IEnumerable<Route> suggested)
    {
        _suggested = suggested.ToDictionary(r => r.Building, StringComparer.Ordinal);
        (_study, _town, _added, _reach) = (study, study.Town, added, new TieInReach(study));
        _supplyOf = _town.SwitchGroups.Where(g => g.Supply is not null).ToDictionary(g => g.Id, g => g.Supply!, StringComparer.Ordinal);
    }

    /// <param name="study">The town with a pair drawn for every house that can have one.</param>
    /// <param name="added">The building.</param>
    /// <param name="suggested">Those of these pairs that are only suggested.</param>
    internal static ItemList<TieInOption> Of(TownStudy study, Building added, IEnumerable<Route> suggested)
    {
        var options = new TieInOptions(study, added, suggested);
        var all = study.Town.Board?.Bank is { } bank && added.Place is not null ? options.OnBoard(study.Town.Board, bank) : options.ByDistance();

        // A pack more is dearer than any wire; of equal wire, fewer joints, and then the order of the document.
        return all.OrderBy(o => o.Kind == TieInKind.NewPack).ThenBy(o => Math.Round(o.WireMetres, 6)).ThenBy(o => o.Joints).ToItemList();
    }

    private IEnumerable<TieInOption> ByDistance()
    {
        var metres = _study.After(_town with { Buildings = _town.Buildings.Append(_added).ToItemList() }).Buildings[^1].PairLength.Value;
        return FromBank(2 * metres, null);
    }

    private IEnumerable<TieInOption> OnBoard(Board board, Bank bank)
    {
        var held = SharedRuns.Held(_town);
        var taps = _town.Taps.Where(t => t.Points.Count > 0 && _supplyOf.ContainsKey(t.SwitchGroup)).ToDictionary(t => t.Id, StringComparer.Ordinal);
        var routed = _town.Routes.Select(r => r.Building).ToHashSet(StringComparer.Ordinal);
        var houses = _town.Buildings
            .Where(b => b.Place is not null && routed.Contains(b.Key) && SharedRuns.Switches(b) is [{ } group] && _supplyOf.ContainsKey(group))
            .ToDictionary(b => b.Key, StringComparer.Ordinal);
        ImmutableArray<TiePoint> points =
        [
            new(AtBank, BoardGround.InMetres(bank.At)),
            .. taps.Values.Select(t => new TiePoint($"tap {t.Id}", BoardGround.InMetres(t.Points[^1]))),
            .. houses.Values.Select(b => BoardGround.Demand(board, b)).Select(d => new TiePoint($"house {d.Building}", d.From, d.Hole)),
        ];
        ImmutableArray<TieLine> lines = [.. taps.Values.Where(t => t.Points.Count > 1 && !held.Contains(t.Id)).Select(t => new TieLine(t.Id, [.. t.Points.Select(BoardGround.InMetres)]))];
        foreach (var run in TieInGround.Runs(_reach.Wireways, BoardGround.Demand(board, _added), points, lines, BoardGround.Rules(_town)))
        {
            if (run.CutShare is { } share)
            {
                yield return FromNewTap(taps[run.Id], share, run);
            }
            else if (run.Id == AtBank)
            {
                foreach (var own in FromBank(2 * run.Metres, run))
                {
                    yield return own;
                }
            }
            else if (run.Id.StartsWith("tap ", StringComparison.Ordinal))
            {
                var tap = taps[run.Id[4..]];
                yield return Option(TieInKind.Tap, $"From tap {tap.Id}", tap.SwitchGroup, 2 * run.Metres, JointsOfBranch, Pair(run, tap.Id)) with { Against = _reach.Against(tap) };
            }
            else
            {
                var house = houses[run.Id[6..]];
                var on = Option(TieInKind.House, $"On from {house.Name}", SharedRuns.Switches(house)[0]!, 2 * run.Metres, JointsOfBranch, Pair(run, house.Key));
                yield return on with { Against = _reach.Against(house, _added), Edit = on.Edit with { Neighbour = _suggested.GetValueOrDefault(house.Key) } };
            }
        }
    }

    private IEnumerable<TieInOption> FromBank(double wireMetres, TieRun? run)
    {
        var pair = run is null ? null : Pair(run, null);
        foreach (var group in _town.SwitchGroups.Where(g => g.Supply is not null))
        {
            yield return Option(TieInKind.Bank, "A pair of its own from the bank", group.Id, wireMetres, JointsOfPair, pair);
        }

        if (NewPack() is { } pack)
        {
            yield return new TieInOption(
                TieInKind.NewPack,
                $"A pack of its own, like pack {_town.Supplies[^1].Id}, and a pair from the bank",
                pack.Supply.Id,
                wireMetres,
                JointsOfPair,
                new TieIn(_added with { SwitchGroup = pack.Switch.Id }, pair, [], Label($"with pack {pack.Supply.Id}")) { Pack = pack });
        }
    }

    private (Supply Supply, SwitchGroup Switch)? NewPack()
    {
        if (_town.Supplies.Count == 0)
        {
            return null;
        }

        string Free(IEnumerable<string> names, IEnumerable<string> taken) => names.Except(taken, StringComparer.OrdinalIgnoreCase).First();
        var supply = _town.Supplies[^1] with { Id = Free(Numbers(_town.Supplies.Count), _town.Supplies.Select(s => s.Id)), Name = null };
        var letters = Enumerable.Range(0, 26).Select(i => ((char)('A' + i)).ToString()).Concat(Numbers(_town.SwitchGroups.Count));
        return (supply, new SwitchGroup { Id = Free(letters, _town.SwitchGroups.Select(g => g.Id)), Supply = supply.Id });
    }

    private TieInOption FromNewTap(Tap tap, double share, TieRun run)
    {
        var taken = _town.Taps.Select(t => t.Id).Concat(_town.Buildings.Select(b => b.Key)).Concat(_town.Buildings.Select(b => b.Code).OfType<string>()).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var id = Numbers(taken.Count).Select(n => $"T{tap.SwitchGroup}{n}").First(n => !taken.Contains(n));
        var slack = BoardGround.Rules(_town).SlackMetres;
        var (before, beyond) = TapCut.Of(tap, id, share, run.Points[0], slack, _town.Board!);
        var more = before.Length.Metres + beyond.Length.Metres - tap.Length.Metres;
        var option = Option(TieInKind.NewTap, $"From a new tap in the pair to tap {tap.Id}", tap.SwitchGroup, 2 * (run.Metres + more), JointsOfPair, Pair(run, id));
        return option with { Edit = option.Edit with { Taps = [before, beyond] } };
    }

    private TieInOption Option(TieInKind kind, string words, string group, double wireMetres, int joints, Route? pair) => new(
        kind, $"{words}, switch {group}", _supplyOf[group], wireMetres, joints, new TieIn(_added with { SwitchGroup = group }, pair, [], Label($"on switch {group}")));

    private string Label(string where) => $"Add {_added.Name} {where}";

    private Route Pair(TieRun run, string? from) => new()
    {
        Building = _added.Key,
        From = from,
        Points = run.Points.Reverse().Select(p => Point.At(Math.Round(1000 * p.X, 1), Math.Round(1000 * p.Y, 1))).ToItemList(),
        Length = Length.FromMillimetres(Math.Round(1000 * run.Metres)),
        Wireways = run.Wireways.ToItemList(),
    };

    private static IEnumerable<string> Numbers(int taken) => Enumerable.Range(1, taken + 1).Select(n => n.ToString(CultureInfo.InvariantCulture));
}
