using System.Globalization;
using Duskwright.Plan.Document;

namespace Duskwright.Book.Sheets;

/// <summary>The panes to cut for one building, those alike together.</summary>
internal static class GlazingTable
{
    // A pane is glued to the card about its opening: common practice, no source.
    private const double GlueMargin = 3;

    internal static void Draw(PageFlow flow, Building building)
    {
        var panes = building.Storeys.SelectMany(s => s.Rooms).SelectMany(r => r.Windows)
            .Select(w => (Width: w.Width.Millimetres, Height: w.Height.Millimetres, Pane: w.Pane ?? new Pane()))
            .Where(p => p.Pane.Material != PaneMaterial.Open)
            .GroupBy(p => p)
            .ToList();
        if (panes.Count == 0)
        {
            return;
        }

        flow.Need(24);
        flow.Text(Face.Speaks, 12, "Glazing to cut");
        flow.Text(Face.Reports, 8.5f, $"{GlueMargin:0} mm wider than the opening on every side, for the glue; trim where two openings are nearer than that.");
        flow.Table(
            [0.08f, 0.12f, 0.24f, 0.24f, 0.32f],
            ["", "how many", "cut, wide × high", "opening", "of"],
            panes.Select(p => new[] { "[  ]", BenchBook.Number(p.Count()), Size(p.Key.Width + (2 * GlueMargin), p.Key.Height + (2 * GlueMargin)), Size(p.Key.Width, p.Key.Height), Words(p.Key.Pane) }));
        flow.Gap(3);
    }

    private static string Size(double width, double height) => string.Create(CultureInfo.InvariantCulture, $"{width:0.#} × {height:0.#} mm");

    private static string Words(Pane pane)
    {
        var sheet = pane.Material switch { PaneMaterial.Frosted => "sheet frosted on both faces", PaneMaterial.Tracing => "tracing paper", _ => "clear sheet" };
        return $"{sheet}{(pane.Tint == PaneTint.None ? "" : $", tinted {pane.Tint.ToString().ToLowerInvariant()}")}{(pane.Bars ? ", with glazing bars" : "")}";
    }
}
