using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Study.Figures;

namespace Duskwright.Study.Results;

/// <summary>How a pane compares with the brightest of its kind, when the show begins and when it ends.</summary>
/// <param name="Pane">The pane. Of one kind are panes glazed alike; those with a flickering lamp behind them are left out.</param>
/// <param name="Fresh">Its lightness L* at the start against the brightest then.</param>
/// <param name="Late">Its lightness L* at the end against the brightest then: packs that fade unlike make windows unlike.</param>
public sealed record PaneEvenness(PaneResult Pane, Figure Fresh, Figure Late)
{
    internal static ItemList<PaneEvenness> Of(TownStudy study)
    {
        var flickering = study.Lamps.Where(l => l.Part.Kind == LampKind.Flickering).Select(l => (l.Building, l.Name)).ToHashSet();
        var late = study.At(study.Town.Show.HoursPerDay.Hours).Panes;
        return study.Panes
            .Select((pane, i) => (Pane: pane, Late: late[i].Luminance))
            .Where(p => !p.Pane.Lamps.Any(l => flickering.Contains((p.Pane.Building, l.Lamp))))
            .GroupBy(p => Glazed(study, p.Pane))
            .SelectMany(kind =>
            {
                var (most, mostLate) = (kind.Max(p => p.Pane.Luminance.Value), kind.Max(p => p.Late));
                return kind.Select(p => new PaneEvenness(p.Pane, Lightness("at the start", p.Pane.Luminance.Value, most), Lightness("at the end of the show", p.Late, mostLate)));
            })
            .ToItemList();
    }

    private static Figure Lightness(string when, double luminance, double most) => Figure.From(
        Laws.LightnessOfShare,
        $"lightness {when}",
        "L*",
        Figure.Given($"share of the brightest pane of its kind {when}", most > 0 ? luminance / most : 1, "share", "luminance over that of the brightest pane glazed alike", Certainty.Computed));

    private static Pane Glazed(TownStudy study, PaneResult pane) =>
        study.Buildings.First(b => b.Building.Key == pane.Building).Building.Storeys[pane.Storey].Rooms[pane.Room].Windows[pane.Window].Pane ?? new Pane();
}
