using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Study.Figures;
using Duskwright.Study.Operation;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Results;

/// <summary>Solves each scene as a switch state of its own. A scene with everything on is the run that is there already.</summary>
internal static class SceneResults
{
    internal static ItemList<SceneResult> Of(ResolvedTown resolved, Memo memo)
    {
        var circuits = new[] { Corner.Low, Corner.Typical, Corner.High }.Select(c => CircuitInputs.Of(resolved, c)).ToList();
        return resolved.Town.Scenes.Select(scene => Scene(resolved, scene, circuits, memo)).ToItemList();
    }

    private static SceneResult Scene(ResolvedTown resolved, Scene scene, List<List<CircuitInput>> circuits, Memo memo)
    {
        var town = resolved.Town;
        var runs = circuits.Select(corner => corner.Select(c => Lit(c, scene)).Where(c => c.Packs.Count > 0).Select(c => memo.Get(c, CircuitRun.Of)).ToList()).ToList();
        var packs = from circuit in Enumerable.Range(0, runs[1].Count)
                    from index in Enumerable.Range(0, runs[1][circuit].Circuit.Packs.Count)
                    let pack = Pack(town, new PackPlace(runs[0][circuit], runs[1][circuit], runs[2][circuit], index))
                    orderby pack.Number
                    select pack;
        var lit = packs.ToItemList();
        var fed = lit.SelectMany(p => p.SwitchGroups).ToHashSet(StringComparer.Ordinal);
        return new SceneResult(
            scene,
            lit.Sum(p => p.Lamps),
            resolved.Buildings.Where(b => b.Lamps.Any(l => l.SwitchGroup is { } g && fed.Contains(g))).Select(b => b.Building.Name).ToItemList(),
            lit,
            scene.On.Where(g => !fed.Contains(g)).ToItemList());
    }

    private static CircuitInput Lit(CircuitInput circuit, Scene scene) => circuit with
    {
        Packs = circuit.Packs
            .Select(p => p with { Groups = p.Groups.Where(g => scene.On.Contains(g.Id)).ToItemList() })
            .Where(p => p.Groups.Count > 0)
            .ToItemList(),
    };

    private static ScenePack Pack(Town town, PackPlace place)
    {
        var run = place.Run;
        var input = run.Circuit.Packs[place.Index].Input;
        var currents = run.Circuit.Lamps.Where(l => l.Pack == place.Index)
            .Select(l => Figure.Given($"{l.Input.Name} of {NameOf(town, l)}", run.Fresh.ElementAmps[l.Element], "A", "computed with the switches of the scene on", Certainty.Computed))
            .ToArray();
        return new ScenePack
        {
            Supply = input.Supply,
            Number = town.Supplies.Select(s => s.Id).ToList().IndexOf(input.Supply) + 1,
            SwitchGroups = input.Groups.Select(g => g.Id).ToItemList(),
            Lamps = currents.Length,
            Load = Figure.From(Laws.Sum, "current in this scene", "A", currents).Between(place.Amps(place.Low), place.Amps(place.High)),
            HoursToDim = place.HoursTo(town.Show.DimShare, "hours of this scene to half light"),
            HoursToSpoiled = place.HoursTo(town.Show.SpoiledShare, "hours of this scene to a third, spoiled"),
            Worst = Worst(town, run, place.Index),
        };
    }

    private static WorstLamp? Worst(Town town, CircuitRun run, int pack)
    {
        var end = town.Show.HoursPerDay.Hours * town.Show.Days;
        var (shares, fade) = (run.Fades[pack].Shares, run.Fades[pack].Fade);
        var (index, share) = shares.Select(s => (s.Key, Share: fade.At(s.Value, end))).MinBy(s => s.Share);
        if (share >= 1)
        {
            return null;
        }

        var lamp = run.Circuit.Lamps[index];
        var left = Figure.Given("share of its fresh light", share, "share", "computed step by step, the scene alone on", Certainty.Computed);
        return new WorstLamp(NameOf(town, lamp), lamp.Input.Name, Figure.From(Laws.LightnessOfShare, "worst lamp at the end of the show", "L*", left));
    }

    private static string NameOf(Town town, CircuitLamp lamp) => town.Buildings.First(b => b.Key == lamp.Building).Name;
}
