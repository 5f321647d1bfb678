using System.Globalization;
using Duskwright.Book.Drawings;
using Duskwright.Study;

namespace Duskwright.Book.Plans;

/// <summary>Shared pairs on the board, each with the joint at its tap.</summary>
internal static class TapsOnPlan
{
    private const double JointRadius = 3.2;

    internal static IEnumerable<Part> Of(TownStudy study, BoardView view, double depth, double corner)
    {
        if (view.Instead is not null && view.Taps is null)
        {
            yield break;
        }

        foreach (var tap in study.Town.Taps.Where(t => t.Points.Count > 1 && view.Taps?.Contains(t.Id) != false))
        {
            var circuit = study.Buildings.FirstOrDefault(b => b.Lamps.Any(l => l.SwitchGroup == tap.SwitchGroup))?.Circuit ?? 0;
            var line = tap.Points.Select(p => (p.X.Millimetres, depth - p.Y.Millimetres)).ToList();
            yield return new Part(
            [
                new Stroke(Trace.Rounded(line, corner), Inks.Wire(circuit)),
                new Stroke(Trace.Circle(line[^1].Item1, line[^1].Item2, JointRadius), Inks.Badge(circuit)),
                new Lettering(line[^1].Item1 + 5, line[^1].Item2 + 3, tap.Id, Inks.Small),
            ])
            {
                Words = string.Create(CultureInfo.InvariantCulture, $"Shared pair to tap {tap.Id}, {tap.Length.Metres:0.00} m"),
            };
        }
    }
}
