using Duskwright.Light.Lamps;
using Duskwright.Plan;
using Duskwright.Plan.Parts;
using Duskwright.Study.Figures;

namespace Duskwright.Study.Results;

/// <summary>How long one kind of lamp lives in this town.</summary>
/// <param name="Lamp">The kind.</param>
/// <param name="Lamps">How many burn.</param>
/// <param name="Hours">Hours to seven tenths of the first light, or of a filament until it breaks; the range is what is known.</param>
/// <param name="Years">Years at the show's hours a day, every day.</param>
/// <param name="LeftAfterTenYears">Share of its light left after ten years; none for filaments.</param>
public sealed record LampLife(string Lamp, int Lamps, Figure Hours, Figure Years, Figure? LeftAfterTenYears)
{
    private const double TenYearsOfDays = 3650;

    internal static ItemList<LampLife> Of(TownStudy study)
    {
        var day = Figure.Given("hours a day", study.Town.Show.HoursPerDay.Hours, "h", "as said of the show", Certainty.Assumed);
        return study.Lamps.Where(l => l.Current is not null).GroupBy(l => l.Part).Select(kind => OfKind(kind.Key, [.. kind], day)).ToItemList();
    }

    private static LampLife OfKind(LampPart part, List<LampResult> lamps, Figure day)
    {
        var filament = part.Kind == LampKind.Filament;
        var (least, most) = filament ? LampAge.FilamentHours : LampAge.LedHours;
        if (filament)
        {
            // The hardest driven one lives shortest.
            var factor = LampAge.FilamentLifeFactor(lamps.Max(l => l.Volts!.Value) / part.ReferenceVoltage.Volts);
            (least, most) = (least * factor, most * factor);
        }

        var middle = Math.Sqrt(least * most);
        var hours = Figure.Given(
            filament ? "hours until it breaks" : "hours to seven tenths of its light",
            middle,
            "h",
            filament ? "1000 to 5000 h at the rated voltage × (volts ÷ rated)^−12, lamp handbooks, from memory"
                : "10 000 to 50 000 h at the rated current, from memory; at a tenth of it rather the upper end; the value is the middle of the two (geometric)",
            Certainty.Typical).Between(least, most);
        var years = Figure.From(Laws.Years, "years", "years", hours, day).Between(least / (day.Value * 365), most / (day.Value * 365));
        var burnt = TenYearsOfDays * day.Value;
        return new LampLife(
            part.Name,
            lamps.Count,
            hours,
            years,
            filament ? null : Figure.Given("light left after ten years", LampAge.ShareLeft(burnt, middle), "share", "0.7^(hours ÷ hours to seven tenths), exponential law of IES TM-21", Certainty.Typical)
                .Between(LampAge.ShareLeft(burnt, least), LampAge.ShareLeft(burnt, most)));
    }
}
