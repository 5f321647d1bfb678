using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Study.Figures;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Lists;

/// <summary>Makes the cut list: tails and pairs of what is not fixed yet.</summary>
internal static class CutRows
{
    internal static ItemList<CutRow> Of(TownStudy study, ResolvedTown resolved)
    {
        var town = study.Town;
        var labels = study.Labels.ToLookup(l => l.Code, l => l.Terminal, StringComparer.Ordinal);
        var names = town.Buildings.ToDictionary(b => b.Key, b => b.Name, StringComparer.Ordinal);
        var starts = resolved.Starts;
        string Start(string run) => starts.TryGetValue(run, out var from) ? names.TryGetValue(from, out var house) ? $"the joint in {house}" : $"tap {from}" : "the bank";
        var routes = town.Routes.DistinctBy(r => r.Building, StringComparer.Ordinal).ToDictionary(r => r.Building, StringComparer.Ordinal);
        var tailWire = Catalogue.FindWire(town, town.Wiring.TailWire ?? Usual.TailWire)!;
        var standing = Standing.In(resolved);
        var rows = new List<CutRow>();
        foreach (var (result, building) in study.Buildings.Zip(resolved.Buildings))
        {
            if (building.Lamps.Count == 0)
            {
                continue;
            }

            var (key, name) = (building.Building.Key, building.Building.Name);
            var laid = standing.Pair(building.Building);
            var route = building.Pair.Origin == LengthOrigin.Route ? routes[key] : null;
            rows.AddRange(labels[result.Code].Select(terminal => new CutRow($"{result.Code} {terminal}".TrimEnd(), $"pair, {name} to {Start(key)}", result.Wire.Name, 2, result.PairLength, laid)
            {
                WireId = result.Wire.Id,
                From = starts.ContainsKey(key) ? Start(key) : $"the bank{(terminal.Length > 0 ? $", {terminal}" : "")}",
                To = name,
                SlackMetres = route is null ? UndrawnSlack(town, building.Pair.Origin) : DrawnWay.SlackMetres(town, route.Points, route.Wireways, route.Length),
                Way = DrawnWay.Words(route?.Wireways ?? [], building.Building.FeedHole),
            }));
            if (building.Building.State is BuildingState.Idea or BuildingState.Shell)
            {
                rows.AddRange(building.Lamps.Where(l => l.Part.Kind != LampKind.ReadyWired).Select(l => new CutRow(
                    $"{result.Code} {l.Name}",
                    $"tail of {l.Name}{(l.RoomName is { } room ? $", {room}" : "")}",
                    tailWire.Name,
                    2,
                    Figure.Given("length of the tail", l.TailMetres, "m", "as said, or the usual tail", Certainty.Typical),
                    false)
                {
                    WireId = tailWire.Id,
                    From = $"the joint in {name}",
                    To = l.RoomName is { } inRoom ? $"{l.Name}, {inRoom}" : l.Name,
                }));
            }
        }

        rows.AddRange(town.Taps.Select(t => new CutRow(
            $"{t.Id} {labels[t.Id].Last()}",
            $"shared pair of switch {t.SwitchGroup}, tap {t.Id} to {Start(t.Id)}",
            SharedPairs.WireOf(town, t).Name,
            2,
            Figure.Given("length of the shared pair", t.Length.Metres, "m", "along the way taken, slack included", Certainty.Computed),
            standing.Tap(t))
        {
            WireId = SharedPairs.WireOf(town, t).Id,
            From = starts.ContainsKey(t.Id) ? Start(t.Id) : $"the bank, {labels[t.Id].Last()}",
            To = $"tap {t.Id}",
            SlackMetres = DrawnWay.SlackMetres(town, t.Points, t.Wireways, t.Length),
            Way = DrawnWay.Words(t.Wireways, null),
        }));
        return rows.ToItemList();
    }

    // A length that was measured holds the slack that was measured with it.
    private static double? UndrawnSlack(Town town, LengthOrigin origin) => origin == LengthOrigin.Measured ? null : PairAllowance.SlackMetres(town);
}
