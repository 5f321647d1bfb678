using Duskwright.Circuits.Lamps;
using Duskwright.Light.Flicker;
using Duskwright.Plan;
using Duskwright.Plan.Parts;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Results;

/// <summary>Three seconds of a window with flickering lamps behind it, as chance might have them.</summary>
/// <param name="Pane">The window.</param>
/// <param name="Steps">From when it has which luminance, s and cd/m², the first at 0.</param>
public sealed record PaneFlicker(PaneResult Pane, ItemList<FlickerStep> Steps)
{
    /// <summary>How long the course is, s.</summary>
    public const double Seconds = 3;

    internal static ItemList<PaneFlicker> Of(TownStudy study, string building)
    {
        var numbers = study.Lamps.Select((lamp, number) => (lamp, number)).Where(l => l.lamp.Building == building && l.lamp.Part.Kind == LampKind.Flickering)
            .ToDictionary(l => l.lamp.Name, l => (l.number, Law: (FlickerLaw)LampLaws.Of(l.lamp.Part)), StringComparer.Ordinal);
        return study.Panes.Where(p => p.Building == building && p.Lamps.Any(l => numbers.ContainsKey(l.Lamp))).Select(pane =>
        {
            // A pane's results count mean light; lit, a flickering lamp is brighter by the share of the time it is.
            var steady = pane.Lamps.Where(l => !numbers.ContainsKey(l.Lamp)).Sum(l => l.Luminance);
            var lamps = pane.Lamps.Where(l => numbers.ContainsKey(l.Lamp))
                .Select(l => (Lit: l.Luminance / numbers[l.Lamp].Law.OnShare, Trace: FlickerTrace.Draw(numbers[l.Lamp].Law.OnShare, FlickerResult.TypicalHertz, Seconds, numbers[l.Lamp].number)))
                .ToList();
            return new PaneFlicker(pane, lamps.SelectMany(l => l.Trace.Changes).Prepend(0).Order()
                .Select(at => new FlickerStep(at, steady + lamps.Where(l => l.Trace.LitAt(at)).Sum(l => l.Lit)))
                .ToItemList());
        }).ToItemList();
    }
}

/// <summary>From a time on a window has a luminance.</summary>
/// <param name="At">From when, s.</param>
/// <param name="Luminance">Mean of the pane, cd/m².</param>
public sealed record FlickerStep(double At, double Luminance);
