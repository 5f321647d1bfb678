using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Parts;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Figures;
using Duskwright.Study.Results;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Findings;

/// <summary>What single lamps do, told once a building.</summary>
internal static class LampRules
{
    // The pack may sink to this per alkaline cell before it is called flat; a lamp that needs more goes out first.
    private const double LateVoltsPerCell = 1.1;

    // A small resistor in card is planned at half its rating: common practice, supported by two read articles.
    private const double RatingShare = 0.5;

    internal static IEnumerable<Finding> Of(TownStudy study) => study.Buildings.SelectMany(b => OfBuilding(study, b));

    private static IEnumerable<Finding> OfBuilding(TownStudy study, BuildingResult building)
    {
        var name = building.Building.Name;
        var subject = Subject.Building(building.Building.Key);
        var reached = building.Building.State != BuildingState.Fixed;
        if (building.Lamps.Where(l => Overdriven(l) && !l.PartUnknown).MaxBy(l => l.Current!.Value) is { } hot)
        {
            var volts = study.Packs.First(p => p.Supply.Id == hot.Supply);
            var ohms = Resolver.ResistorFor(hot.Part, volts.Part.NominalVoltage.Volts * volts.Supply.Series, hot.Part.MostCurrent!.Value.Amperes / 2);
            ItemList<TownEdit> edits = reached && ohms > 0 && building.Building.DescribedLamps().All(l => l.Lamp.Resistor is null)
                ? [new ChangeBuildings([building.Building with { Resistor = ResistorChoice.Of(Resistance.FromOhms(ohms)) }], $"Fit {FigureText.Of(ohms, "Ω")} at each lamp")]
                : [];
            yield return new Finding
            {
                Rule = "lamp-overdriven",
                Severity = Severity.Spoils,
                Subject = subject,
                Words = $"{hot.Name} of {name} takes {{0}}, more than the {{1}} it may have for long.",
                Figures = [hot.Current!, Figure.Given("most current", hot.Part.MostCurrent!.Value.Amperes, "A", hot.Part.Source, hot.Part.Certainty)],
                Remedy = edits.Count > 0 ? edits[0].Label : $"Fit {FigureText.Of(ohms, "Ω")} in its lead.",
                Edits = edits,
            };
        }

        if (building.Lamps.FirstOrDefault(l => l.Part.Kind == LampKind.Led && l.Resistor.Value == 0 && l.Current is not null && !Overdriven(l)) is { } bare)
        {
            yield return new Finding
            {
                Rule = "no-resistor",
                Severity = Severity.Look,
                Subject = subject,
                Words = $"The lamps of {name} have no resistor: {bare.Name} takes {{0}} now, and a tenth of a volt more or less changes that a great deal.",
                Figures = [bare.Current!],
                Remedy = "A resistor in each lead keeps lamps of one bag alike.",
            };
        }

        foreach (var lamp in building.Lamps.Where(NeedsMoreVolts(study)).Take(1))
        {
            var pack = study.Packs.First(p => p.Supply.Id == lamp.Supply);
            yield return new Finding
            {
                Rule = "needs-more-volts",
                Severity = Severity.Look,
                Subject = subject,
                Words = $"{lamp.Part.Name} in {name} needs {{0}}, and {pack.Words} late in the show give {{1}}: it fades early.",
                Figures =
                [
                    Figure.Given("lamp at 1 mA", LampLaws.Lit(lamp.Part).VoltsAt(0.001), "V", lamp.Part.Source, lamp.Part.Certainty),
                    Figure.Given("pack late in the show", LateVoltsPerCell * pack.Supply.Series, "V", "1.1 V a cell; common practice, no source", Certainty.Typical),
                ],
                Remedy = "Give it one cell more and a new resistor.",
            };
        }

        if (building.Lamps.Where(l => l.ResistorPower is not null).MaxBy(l => l.ResistorPower!.Value) is { } warm)
        {
            var rating = Catalogue.Parts.Sundries.First(s => s.Use == SundryUse.Resistor).Rating!.Value.Watts;
            if (warm.ResistorPower!.Value > RatingShare * rating)
            {
                yield return new Finding
                {
                    Rule = "resistor-warm",
                    Severity = Severity.Look,
                    Subject = subject,
                    Words = $"The resistor of {warm.Name} in {name} gives off {{0}}, more than half of a quarter watt.",
                    Figures = [warm.ResistorPower],
                    Remedy = "Use a larger one, and keep it off card.",
                };
            }
        }
    }

    private static bool Overdriven(LampResult lamp)
    {
        if (lamp.Current is not { } current || lamp.Part.MostCurrent is not { } most)
        {
            return false;
        }

        var lit = lamp.Part.Kind == LampKind.Flickering ? current.Value / (lamp.Part.OnShare ?? 1) : current.Value;
        return lit > most.Amperes;
    }

    private static Func<LampResult, bool> NeedsMoreVolts(TownStudy study) => lamp =>
        lamp.Current is not null && lamp.Part.Kind == LampKind.Led
        && study.Packs.First(p => p.Supply.Id == lamp.Supply) is { Part.Kind: SupplyKind.Alkaline, Part.NominalVoltage.Volts: < 2 } pack
        && LateVoltsPerCell * pack.Supply.Series < LampLaws.Lit(lamp.Part).VoltsAt(0.001);
}
