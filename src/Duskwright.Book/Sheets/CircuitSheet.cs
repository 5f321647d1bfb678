using Duskwright.Book.Diagrams;
using Duskwright.Study;

namespace Duskwright.Book.Sheets;

/// <summary>A diagram of each circuit.</summary>
internal static class CircuitSheet
{
    private const string Words = "Heavy lines with plus and bar are positive, thin lines are minus. Each dashed frame is the inside of a house; its joints have the numbers of its own sheet. Switches are drawn open. Not to scale.";

    internal static void Draw(PageFlow flow, TownStudy study, BookOptions options)
    {
        using var font = Face.At(Face.Reports, 8.5f);
        var room = PageFlow.Body(options.Paper, lying: false, ruled: false).Height - (3 * font.Size * PageFlow.LineGap) - 2;
        foreach (var (packs, pages) in CircuitDiagram.Of(study, room))
        {
            foreach (var (page, i) in pages.Select((p, i) => (p, i)))
            {
                flow.Page($"{(packs.Count > 1 ? "Circuit of packs" : "Circuit of pack")} {string.Join(", ", packs)}{(pages.Count > 1 ? $", page {i + 1} of {pages.Count}" : "")}");
                flow.Text(Face.Reports, 8.5f, Words);
                flow.Gap(1);
                flow.Picture(page);
            }
        }
    }
}
