using Duskwright.Light.Perception;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Figures;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Results;

/// <summary>What one more lamp, or another resistor, would buy in one room at the end of the show.</summary>
/// <param name="Building">Key of the building; houses that are fixed for good are left out.</param>
/// <param name="Storey">Which of its storeys, from 0.</param>
/// <param name="Room">Which of the storey's rooms, from 0.</param>
/// <param name="What">The change in words: "one more lamp", "390 Ω instead of 820 Ω".</param>
/// <param name="Factor">Light of the room's panes then over now; the pack is taken to hold.</param>
/// <param name="NewlyLit">Panes that then read as lit in the show's room light and do not now.</param>
/// <param name="Step">Lightness won, L*, over all its panes, each against the brightest of its kind.</param>
public sealed record LightGain(string Building, int Storey, int Room, string What, Figure Factor, int NewlyLit, Figure Step)
{
    // A lamp is brightened to twice its current at most, and never beyond half of what it may have for long: common practice, no source.
    private const double MostTimes = 2;
    private const double ShareOfMost = 0.5;
    private const int Told = 8;

    // The current behind another resistor settles well within these turns: its lamp's volts hardly move.
    private const int Turns = 30;

    internal static ItemList<LightGain> Of(TownStudy study)
    {
        var even = study.Evenness.ToDictionary(e => (e.Pane.Building, e.Pane.Storey, e.Pane.Room, e.Pane.Window));
        var late = study.At(study.Town.Show.HoursPerDay.Hours, study.Town.Show.RoomIlluminance?.Lux).Panes;
        return study.Buildings
            .Where(b => b.Building.State != BuildingState.Fixed)
            .SelectMany(b => late.Where(p => p.Building == b.Building.Key && even.ContainsKey((p.Building, p.Storey, p.Room, p.Window))).GroupBy(p => (p.Storey, p.Room))
                .SelectMany(room => Choices(b, [.. b.Panes.First(p => (p.Storey, p.Room) == room.Key).Lamps.Select(l => b.Lamps.First(x => x.Name == l.Lamp))])
                    .Select(choice => Gain(b.Building.Key, [.. room], choice, study, even))))
            .OrderByDescending(g => g.NewlyLit).ThenByDescending(g => g.Step.Value)
            .Take(Told)
            .ToItemList();
    }

    private static LightGain Gain(
        string building, List<PaneAtMoment> panes, (string What, Figure Factor) choice, TownStudy study, Dictionary<(string, int, int, int), PaneEvenness> even)
    {
        var factor = choice.Factor.Value;
        var lit = study.Town.Show.RoomIlluminance is { } room ? panes.Count(p => p.ReadsAsLit == false && ReadsAsLit.Of(factor * p.Luminance, room.Lux)) : 0;
        var won = panes.Sum(p =>
        {
            var share = even[(p.Building, p.Storey, p.Room, p.Window)].Late.Inputs[0].Value;

            // Brighter than the brightest buys no evenness.
            return Lightness.OfShare(Math.Min(1, factor * share)) - Lightness.OfShare(share);
        });
        return new LightGain(
            building, panes[0].Storey, panes[0].Room, choice.What, choice.Factor, lit, Figure.Given("lightness won", won, "L*", "CIE 1976 L* of its panes against the brightest of their kind, summed", Certainty.Computed));
    }

    private static IEnumerable<(string What, Figure Factor)> Choices(BuildingResult building, List<LampResult> lamps)
    {
        if (lamps.Any(l => l.Current is null))
        {
            yield break;
        }

        var count = Figure.Given("lamps", lamps.Count, "", $"as described of {building.Building.Name}", Certainty.Assumed);
        yield return ("one more lamp", Figure.From(Laws.OneMore, "light with one more lamp like the others", "", count));
        var lamp = lamps[0];
        if (lamps.All(l => l.Part == lamp.Part && l.Resistor.Value == lamp.Resistor.Value) && lamp is { Part.Kind: LampKind.Led, Resistor.Value: > 0 } && Resistor(lamp) is { } better)
        {
            yield return ($"{FigureText.Of(better.Ohms, "Ω")} instead of {FigureText.Of(lamp.Resistor)}", Figure.From(
                Laws.Ratio, "light behind the other resistor", "", Figure.Given("current then", better.Amps, "A", "Ohm's law and the lamp's own curve, the pack's volts as they are", Certainty.Computed), lamp.Current!));
        }
    }

    // The next preferred resistor up (E12) that gives up to twice the current.
    private static (double Ohms, double Amps)? Resistor(LampResult lamp)
    {
        var (law, amps) = (LampLaws.Lit(lamp.Part), lamp.Current!.Value);
        var wished = Math.Min(MostTimes * amps, ShareOfMost * (lamp.Part.MostCurrent?.Amperes ?? double.PositiveInfinity));
        var volts = (lamp.Resistor.Value * amps) + law.VoltsAt(amps);
        var exact = (volts - law.VoltsAt(wished)) / wished;
        if (wished <= amps || exact <= 0)
        {
            return null;
        }

        var ohms = PreferredValues.NextUp(PreferredValues.E12, Resistance.FromOhms(exact)).Ohms;
        var then = amps;
        for (var turn = 0; turn < Turns; turn++)
        {
            then = (then + ((volts - law.VoltsAt(then)) / ohms)) / 2;
        }

        return ohms < lamp.Resistor.Value ? (ohms, then) : null;
    }
}
