using Duskwright.Plan;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Parts;
using Duskwright.Study.Figures;
using Duskwright.Study.Results;

namespace Duskwright.Study.Findings;

/// <summary>What a short circuit, a fuse or a high voltage means for the town.</summary>
internal static class SafetyRules
{
    // Rated voltage of electric toys, EN 62115 and Directive 2009/48/EC.
    private const double ToyVolts = 24;

    internal static IEnumerable<Finding> Of(TownStudy study) =>
        study.Packs.Where(p => p.ShortCircuit is not null).SelectMany(p => OfPack(study, p));

    private static IEnumerable<Finding> OfPack(TownStudy study, PackResult pack)
    {
        var shorted = pack.ShortCircuit!;
        var subject = Subject.Supply(pack.Supply.Id);
        var fuse = pack.Supply.Fuse is { } id ? Catalogue.FindFuse(study.Town, id) : null;
        ItemList<TownEdit> suggestion = shorted.Advice is { } advice && advice.Fuse.Id != pack.Supply.Fuse
            ? [new ReplaceSupply(pack.Supply with { Fuse = advice.Fuse.Id }, $"Fit a {advice.Fuse.Name}")]
            : [];
        var remedy = suggestion.Count > 0 ? suggestion[0].Label : "No fuse in the catalogue both carries the load and is sure to open: use shorter or thicker wire, or fewer lamps on it.";
        if (fuse is null)
        {
            yield return new Finding
            {
                Rule = "no-fuse",
                Severity = shorted.Scorches ? Severity.Spoils : Severity.Look,
                Subject = subject,
                Words = $"Pack {pack.Supply.Id} has no fuse: a short in its wiring would drive {{0}}, and the wire in the card would settle at {{1}}.",
                Figures = [shorted.Current, shorted.WireTemperature],
                Remedy = remedy,
                Edits = suggestion,
            };
        }
        else if (pack.Load!.Value > fuse.Hold.Amperes)
        {
            yield return new Finding
            {
                Rule = "fuse-too-small",
                Severity = Severity.Spoils,
                Subject = subject,
                Words = $"Pack {pack.Supply.Id} carries {{0}}, more than the {{1}} its fuse holds for ever.",
                Figures = [pack.Load, Figure.Given("the fuse holds", fuse.Hold.Amperes, "A", fuse.Source, fuse.Certainty)],
                Remedy = remedy,
                Edits = suggestion,
            };
        }
        else if (!shorted.FuseOpens)
        {
            yield return new Finding
            {
                Rule = "fuse-stays",
                Severity = Severity.Look,
                Subject = subject,
                Words = $"A dead short on pack {pack.Supply.Id} may not open its fuse once its cells are worn; the wire in the card would settle at {{0}}, and the short itself could give off {{1}}.",
                Figures = [shorted.WireTemperature, shorted.HotSpot],
                Remedy = remedy,
                Edits = suggestion,
            };
        }
        else
        {
            yield return new Finding
            {
                Rule = "fuse-opens",
                Severity = shorted.Scorches ? Severity.Look : Severity.Sound,
                Subject = subject,
                Words = $"A dead short on pack {pack.Supply.Id} opens its fuse; the worst that can last heats the wire in the card to {{0}} and the spot itself with {{1}}.",
                Figures = [shorted.WireTemperature, shorted.HotSpot],
            };
        }

        if (pack.Part.NominalVoltage.Volts * pack.Supply.Series is var volts && volts > ToyVolts)
        {
            yield return new Finding
            {
                Rule = "high-volts",
                Severity = Severity.Look,
                Subject = subject,
                Words = $"Pack {pack.Supply.Id} gives {{0}}; toys keep to 24 V (EN 62115).",
                Figures = [Figure.Given("volts", volts, "V", pack.Part.Source, pack.Part.Certainty)],
                Remedy = "Use fewer cells, or a lower adaptor.",
            };
        }
    }
}
