using Duskwright.Light.Perception;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Study.Figures;
using Duskwright.Study.Operation;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Results;

/// <summary>Buildings and their lamps as results.</summary>
internal static class BuildingResults
{
    internal static ItemList<BuildingResult> Of(ResolvedTown resolved, CircuitResults circuits, RunCompany company, Memo memo)
    {
        var town = resolved.Town;
        var codes = Codes.Of(town);
        var brightest = BrightestOfKind(resolved, circuits);
        var results = new BuildingResult[resolved.Buildings.Count];
        Parallel.For(0, results.Length, i =>
        {
            var query = BuildingQuery.Of(town, resolved.Buildings[i], i + 1, codes[i], circuits, brightest, company);
            results[i] = memo.Get(query, q => Building(town, resolved.Buildings[i], q.Number, q.Code, circuits, brightest, company, memo));
        });
        return ItemList.Of<BuildingResult>(results);
    }

    private static BuildingResult Building(
        Town town, ResolvedBuilding resolved, int number, string code, CircuitResults circuits,
        Dictionary<(string Supply, string Part), double> brightest, RunCompany company, Memo memo)
    {
        var building = resolved.Building;
        var panes = PaneResults.Of(resolved, circuits, memo);
        var lamps = Lamps(town, resolved, circuits, brightest, panes);
        var supplies = lamps.Select(l => l.Supply).Distinct().ToList();
        var supply = supplies.Count == 1 ? supplies[0] : null;
        var fed = lamps.Count > 0 && lamps.All(l => l.Current is not null);
        var current = !fed
            ? null
            : Figure.From(Laws.Sum, $"current of {building.Name}", "A", [.. lamps.Select(l => l.Current!)])
                .Between(lamps.Sum(l => l.Current!.Low ?? l.Current.Value), lamps.Sum(l => l.Current!.High ?? l.Current.Value));
        var (queries, supplied) = (TestPointQuery.AtTheBank(resolved, circuits, company), town.Supplies);
        return new BuildingResult
        {
            Building = building,
            Number = number,
            Code = code,
            Lamps = lamps.ToItemList(),
            PanesLater = panes,
            Supply = supply,
            Circuit = supply is null ? 0 : town.Supplies.Select(s => s.Id).ToList().IndexOf(supply) + 1,
            Current = current,
            Wire = resolved.Pair.Wire,
            PairLength = PairLength(town, building, resolved.Pair),
            PairDrop = current is null
                ? null
                : DropThroughShared(resolved, circuits) is { } shared
                ? shared
                : Figure.From(
                    Laws.DropInPair,
                    "lost in the pair",
                    "V",
                    current,
                    Figure.Given("one conductor with its joints", resolved.Pair.ConductorOhms.Typical, "Ω", $"{resolved.Pair.Wire.Name}: {resolved.Pair.Wire.Source}", resolved.Pair.Wire.Certainty)
                        .Between(resolved.Pair.ConductorOhms.Low, resolved.Pair.ConductorOhms.High)),
            TestsLater = new(() => TestPoints.Of(lamps, panes.Value, building, queries, supplied)),
        };
    }

    // Where others' currents run through the same copper, the drop is read off the solved circuit.
    private static Figure? DropThroughShared(ResolvedBuilding resolved, CircuitResults circuits)
    {
        double? Drop(LampPlace place, CircuitRun run)
        {
            var (lamp, elements, volts) = (run.Circuit.Lamps[place.Index], run.Circuit.Network.Elements, run.Fresh.NodeVolts);
            var group = run.Circuit.Packs[lamp.Pack].Input.Groups.First(g => g.Id == lamp.Group);
            if (group.Shared.Count == 0 || group.Pairs.First(p => p.Building == lamp.Building).Junction == 0)
            {
                return null;
            }

            var strip = elements[0].Name == CircuitNetwork.CommonReturn ? volts[elements[0].A] : 0;
            return volts[elements.First(e => e.Name == $"switch {lamp.Group}").B] - strip - (volts[elements[lamp.Element].A] - volts[elements[lamp.Element].B]);
        }

        var place = circuits.Lamps[(resolved.Lamps[0].Building, resolved.Lamps[0].Name)];
        return Drop(place, place.Run) is { } volts
            ? Figure.Given("lost in the pairs on the way", volts, "V", "the circuit solved with the pairs this house shares", Certainty.Computed).Between(Drop(place, place.Low)!.Value, Drop(place, place.High)!.Value)
            : null;
    }

    private static List<LampResult> Lamps(Town town, ResolvedBuilding resolved, CircuitResults circuits, Dictionary<(string Supply, string Part), double> brightest, Later<ItemList<PaneResult>> panes) =>
        [.. resolved.Lamps.Select(l => Lamp(town, l, circuits, brightest) with { PaneLater = LampPane.Of(l, resolved, panes) })];

    private static LampResult Lamp(
        Town town, ResolvedLamp lamp, CircuitResults circuits, Dictionary<(string Supply, string Part), double> brightest)
    {
        var resistor = LampFigures.Resistor(lamp);
        var result = new LampResult
        {
            Building = lamp.Building,
            Name = lamp.Name,
            Room = lamp.RoomName,
            Part = lamp.Part,
            PartUnknown = lamp.PartUnknown,
            SwitchGroup = lamp.SwitchGroup,
            Supply = Resolver.SupplyOf(town, lamp.SwitchGroup)?.Id,
            Resistor = resistor,
            ResistorChosen = lamp.ResistorOrigin == ResistorOrigin.Chosen,
        };
        if (!circuits.Lamps.TryGetValue((lamp.Building, lamp.Name), out var place))
        {
            return result;
        }

        var circuitLamp = place.Run.Circuit.Lamps[place.Index];
        var point = circuitLamp.Law.At(place.Run.BranchVolts(place.Index), circuitLamp.Input.BranchOhms);
        var current = LampFigures.Current(lamp, place.Run, place.Index, resistor, place.Amps(place.Low), place.Amps(place.High));
        return result with
        {
            Current = current,
            Volts = Figure.Given("volts across the lamp", point.LampVolts, "V", lamp.Part.Source, lamp.Part.Certainty),
            ResistorPower = lamp.ResistorOhms.Typical > 0 ? Figure.From(Laws.HeatInResistor, "heat in the resistor", "W", current, resistor) : null,
            LightShares = place.Run.Fades[circuitLamp.Pack].Shares[place.Index],
            Evenness = Lightness.OfShare(point.Light / brightest[(result.Supply!, lamp.Part.Id)]),
        };
    }

    // Lamps of one kind are those of one part on one supply: a maker who gives two streets different resistors means them to differ.
    private static Dictionary<(string Supply, string Part), double> BrightestOfKind(ResolvedTown resolved, CircuitResults circuits)
    {
        var brightest = new Dictionary<(string, string), double>();
        foreach (var lamp in resolved.Buildings.SelectMany(b => b.Lamps))
        {
            if (circuits.Lamps.TryGetValue((lamp.Building, lamp.Name), out var place))
            {
                var kind = (place.Run.Circuit.Packs[place.Run.Circuit.Lamps[place.Index].Pack].Input.Supply, lamp.Part.Id);
                brightest[kind] = Math.Max(brightest.GetValueOrDefault(kind), place.Run.Light(0, place.Index));
            }
        }

        return brightest;
    }

    private static Figure PairLength(Town town, Building building, ResolvedPair pair)
    {
        var slack = PairAllowance.SlackMetres(town);
        var detour = PairAllowance.DetourFactor(town);
        var length = pair.Origin switch
        {
            LengthOrigin.Measured => Figure.Given("length of the pair", pair.Metres.Typical, "m", "measured", Certainty.Measured),
            LengthOrigin.Route => Figure.Given("length of the pair", pair.Metres.Typical, "m", "along the route taken, slack included", Certainty.Computed),
            _ => Figure.From(
                Laws.PairByDistance,
                "length of the pair",
                "m",
                Figure.Given(
                    "straight distance to the bank",
                    (pair.Metres.Typical - slack) / detour,
                    "m",
                    pair.Origin switch { LengthOrigin.Distance => "as said, to a fifth either way", LengthOrigin.Placed => "from the board", _ => "not known; the town's middle distance" },
                    pair.Origin == LengthOrigin.Placed ? Certainty.Computed : Certainty.Assumed),
                Figure.Given("detour", detour, "", "the town's rule, or common practice, no source", Certainty.Typical),
                Figure.Given("slack", slack, "m", "the town's rule, or common practice, no source", Certainty.Typical)),
        };
        return length.Between(pair.Metres.Low, pair.Metres.High);
    }
}
