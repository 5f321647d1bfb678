using System.Globalization;
using Duskwright.Book.Diagrams;
using Duskwright.Book.Drawings;
using Duskwright.Book.Houses;
using Duskwright.Book.Plans;
using Duskwright.Book.Plots;
using Duskwright.Plan.Document;
using Duskwright.Study;

namespace Duskwright.Book.Sheets;

/// <summary>The drawings of a book, each to be written as a file of its own.</summary>
public static class BookDrawings
{
    /// <summary>Every drawing, at the size it is printed.</summary>
    /// <param name="study">The town's results.</param>
    /// <param name="options">Which routes are suggested.</param>
    /// <returns>A name fit for a file, without ending, and the drawing.</returns>
    public static IEnumerable<(string Name, Drawing Drawing)> Of(TownStudy study, BookOptions options)
    {
        var moment = study.At(0);
        if (study.Town.Board is not null)
        {
            yield return ("board", BoardPlan.Of(study, moment, new BoardView { WithLengths = true, Suggested = options.Suggested }));
        }

        if (study.Packs.Count > 0)
        {
            yield return ("bank", BankPlan.Of(study, moment, null));
            yield return ("run-times", RunTimePlot.Of(study));
            foreach (var (packs, pages) in CircuitDiagram.Of(study))
            {
                yield return ($"circuit-{string.Join('-', packs)}", pages[0]);
            }
        }

        foreach (var house in study.Buildings.Where(b => b.Lamps.Count > 0))
        {
            // The number keeps names apart that are alike in their plain form.
            var plain = Slug.Of(house.Building.Name);
            var stem = string.Create(CultureInfo.InvariantCulture, $"{house.Number:000}-{plain[..Math.Min(40, plain.Length)]}");
            foreach (var wall in HouseElevation.Walls(house.Building))
            {
                yield return ($"{stem}-{wall.ToString().ToLowerInvariant()}", HouseElevation.Of(house, wall, 1, 1));
            }

            foreach (var (card, i) in LampCard.Of(house).Select((c, i) => (c, i + 1)))
            {
                yield return ($"{stem}-lamp-card-{i}", card);
            }

            foreach (var (sketch, i) in WiringSketch.Of(study, house).Select((s, i) => (s, i + 1)))
            {
                yield return ($"{stem}-wiring-{i}", sketch);
            }
        }
    }
}
