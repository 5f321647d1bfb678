using Duskwright.Circuits.Supplies;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Parts;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Figures;
using Duskwright.Study.Operation;
using Duskwright.Study.Results;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Findings;

/// <summary>What packs do over the show.</summary>
internal static class PackRules
{
    // Larger cells to try, smallest first; a longer list would not fit a pocket.
    private static readonly string[] LargerCells = ["LR6", "LR14", "LR20"];

    internal static IEnumerable<Finding> Of(TownStudy study, Memo memo) =>
        study.Packs.Where(p => p.Load is not null).SelectMany(p => OfPack(study, p, memo));

    private static IEnumerable<Finding> OfPack(TownStudy study, PackResult pack, Memo memo)
    {
        var show = study.Town.Show;
        var hours = Figure.Given("hours of the show", show.HoursPerDay.Hours * show.Days, "h", "as said of the show", Certainty.Assumed);
        var name = $"Pack {pack.Supply.Id}";
        if (pack.HoursToDim is { } dim && dim.Value < hours.Value)
        {
            var remedies = Remedies(study, pack, hours.Value, memo).ToItemList();
            yield return new Finding
            {
                Rule = "pack-fades",
                Severity = Severity.Spoils,
                Subject = Subject.Supply(pack.Supply.Id),
                Words = $"{name} falls below half light after {{0}}; the show is {{1}}.",
                Figures = [dim, hours],
                Remedy = remedies.Count > 0 ? remedies[0].Label : "Share its lamps with another pack, or change its cells on the way.",
                Edits = remedies,
            };
        }
        else if (pack.Fade is { } fade && pack.Part.Kind is not (SupplyKind.Regulated or SupplyKind.PowerBank))
        {
            var left = Figure.Given("lightness of its worst lamp at the end", fade.At(fade.WorstLightness, hours.Value), "L*", "computed step by step; 100 is its own fresh light", Certainty.Computed);
            yield return new Finding
            {
                Rule = "pack-holds",
                Severity = Severity.Sound,
                Subject = Subject.Supply(pack.Supply.Id),
                Words = pack.HoursToDim is null ? $"{name} holds: lightness {{0}} at the end of the show." : $"{name} holds: lightness {{0}} at the end of the show, half light after {{1}}.",
                Figures = pack.HoursToDim is { } far ? [left, far] : [left],
            };
        }

        if (pack.Part.CurrentLimit is { } limit && pack.Load!.Value > limit.Amperes * pack.Supply.Parallel * 0.999)
        {
            yield return Overloaded(pack, name, Figure.Given("most it gives", limit.Amperes * pack.Supply.Parallel, "A", pack.Part.Source, pack.Part.Certainty));
        }

        if (pack.Part.LeastLoad is { } least && pack.Load!.Value < least.Amperes)
        {
            yield return new Finding
            {
                Rule = "bank-sleeps",
                Severity = Severity.Spoils,
                Subject = Subject.Supply(pack.Supply.Id),
                Words = $"{name} is a power bank and carries {{0}}; below about {{1}} many switch themselves off after a minute.",
                Figures = [pack.Load, Figure.Given("least load", least.Amperes, "A", pack.Part.Source, pack.Part.Certainty)],
                Remedy = "Use a plug-in adaptor, cells, a bank with a small-load mode, or a bleed resistor away from card.",
            };
        }

        if (pack.Carrying is { } carrying && pack.Lamps >= carrying.VisiblyDimmer.Value)
        {
            yield return new Finding
            {
                Rule = "pack-sags",
                Severity = Severity.Look,
                Subject = Subject.Supply(pack.Supply.Id),
                Words = $"With all {pack.Lamps} lamps on, {name.ToLowerInvariant()} sags so that they look dimmer than one alone; that starts at {{0}} lamps.",
                Figures = [carrying.VisiblyDimmer],
                Remedy = "Nothing need be done if they all look right together; fewer lamps on it, or a resistor at each, evens it out.",
            };
        }

        if (pack.Supply.Parallel > 1 && PackLaws.IsStore(pack.Part))
        {
            var flows = RowIntoRow(pack);
            yield return new Finding
            {
                Rule = "rows-feed-each-other",
                Severity = Severity.Look,
                Subject = Subject.Supply(pack.Supply.Id),
                Words = $"{name} has {pack.Supply.Parallel} rows of cells side by side: a fresh row pushes {{0}} into one that is half used, town off or on.",
                Figures = [flows],
                Remedy = "Only equal, equally fresh cells of one kind, all changed together, each row with a fuse of its own; two packs with a switch each do the same without it.",
            };
        }

        if (pack.Part.Kind == SupplyKind.LithiumCoin)
        {
            yield return new Finding
            {
                Rule = "coin-cell",
                Severity = Severity.Look,
                Subject = Subject.Supply(pack.Supply.Id),
                Words = $"{name} is a coin cell and carries {{0}}; it is at ease with about 0.2 mA.",
                Figures = [pack.Load!],
                Remedy = "Use three AAA cells; keep coin cells from children.",
            };
        }
    }

    // The rest of the pack stands on the half used side; their volts meet through both rows' own resistance, holders included.
    private static Figure RowIntoRow(PackResult pack)
    {
        var law = PackLaws.Of(pack.Part, pack.Supply.Series, 1, Usual.HolderOhms);
        var (fresh, half) = (CellState.At(law.Cell, 1), CellState.At(law.Cell, 0.5));
        return Figure.From(
            Laws.RowIntoRow,
            "current from row to row",
            "A",
            Figure.Given("fresh row, open", law.OpenVolts(fresh), "V", pack.Part.Source, pack.Part.Certainty),
            Figure.Given("half used row, open", law.OpenVolts(half), "V", pack.Part.Source, pack.Part.Certainty),
            Figure.Given("resistance of the fresh row", law.Ohms(fresh), "Ω", pack.Part.Source, pack.Part.Certainty),
            Figure.Given("resistance of the half used row", law.Ohms(half), "Ω", pack.Part.Source, pack.Part.Certainty));
    }

    private static Finding Overloaded(PackResult pack, string name, Figure most) => new()
    {
        Rule = "supply-overloaded",
        Severity = Severity.Spoils,
        Subject = Subject.Supply(pack.Supply.Id),
        Words = $"{name} is asked for {{0}} and gives {{1}} at most.",
        Figures = [pack.Load!, most],
        Remedy = "Share its lamps with another supply.",
    };

    private static IEnumerable<TownEdit> Remedies(TownStudy study, PackResult pack, double hours, Memo memo)
    {
        var town = study.Town;
        if (PackLaws.IsStore(pack.Part))
        {
            foreach (var cell in LargerCells.Where(id => id != pack.Supply.Part && pack.Part.Charge!.Value.AmpereHours < Catalogue.FindSupply(town, id)!.Charge!.Value.AmpereHours))
            {
                var replacement = pack.Supply with { Part = cell, Series = pack.Part.Kind == SupplyKind.Alkaline && pack.Part.NominalVoltage.Volts < 2 ? pack.Supply.Series : Usual.CellsInSeries };
                var edit = new ReplaceSupply(replacement, "");
                if (HoursAfter(edit.Apply(town), pack.Supply.Id, memo) is not { } after || after >= hours)
                {
                    var lasts = HoursAfter(edit.Apply(town), pack.Supply.Id, memo);
                    var words = SupplyWords.Of(replacement, Catalogue.FindSupply(town, cell)!);
                    yield return edit with { Words = $"Fit {words} in its place{(lasts is { } l ? $": {FigureText.Of(l, "h")}" : "")}" };
                    break;
                }
            }
        }

        var ohms = Softer(study, pack);
        if (ohms is { } softer)
        {
            var keys = pack.Buildings.ToHashSet(StringComparer.Ordinal);
            var edit = new ChangeBuildings(
                town.Buildings
                    .Where(b => keys.Contains(b.Key) && b.State is not BuildingState.Fixed && study.Buildings.First(r => r.Building.Key == b.Key).Lamps.All(l => l.Part.Kind == LampKind.Led))
                    .Select(b => b with { Resistor = ResistorChoice.Of(softer) })
                    .ToItemList(),
                "");
            if (edit.Changed.Count > 0 && (HoursAfter(edit.Apply(town), pack.Supply.Id, memo) is not { } after || after >= hours))
            {
                var lasts = HoursAfter(edit.Apply(town), pack.Supply.Id, memo);
                yield return edit with { Words = $"Or {FigureText.Of(softer.Ohms, "Ω")} at each lamp that can still be reached{(lasts is { } l ? $": {FigureText.Of(l, "h")}" : "")}, softer" };
            }
        }
    }

    // A third of the current is a step the eye accepts as softer: common practice, no source.
    private static Resistance? Softer(TownStudy study, PackResult pack)
    {
        var now = study.Lamps.Where(l => l.Supply == pack.Supply.Id && l.Part.Kind == LampKind.Led && l.Resistor.Value > 0).Select(l => l.Resistor.Value).ToList();
        return now.Count == 0 ? null : PreferredValues.NextUp(PreferredValues.E12, Resistance.FromOhms(3 * now.Min()));
    }

    private static double? HoursAfter(Town edited, string supply, Memo memo)
    {
        var input = CircuitInputs.Of(ResolvedTown.Of(edited, memo), Corner.Typical).First(c => c.Packs.Any(p => p.Supply == supply));
        var run = memo.Get(input, CircuitRun.Of);
        var index = run.Circuit.Packs.Select((p, i) => (p, i)).First(x => x.p.Input.Supply == supply).i;
        return FadeFigures.HoursTo(run.Fades[index].Fade, edited.Show.DimShare, "")?.Value;
    }
}
