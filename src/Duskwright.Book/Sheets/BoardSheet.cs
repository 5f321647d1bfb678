using Duskwright.Book.Plans;
using Duskwright.Study;

namespace Duskwright.Book.Sheets;

/// <summary>The board with its wires on one sheet, as large as the paper allows.</summary>
internal static class BoardSheet
{
    private const float OneLine = 8;
    private const float TwoLines = 13;

    internal static void Draw(PageFlow flow, TownStudy study, BookOptions options)
    {
        if (study.Town.Board is null)
        {
            return;
        }

        flow.Page("The board", lying: true);
        var moment = study.At(0);
        var beneath = Beneath.Things(study.Town.Board).Count > 0;
        var view = new BoardView { WithLengths = true, Suggested = options.Suggested };
        var loose = BoardPlan.Of(study, moment, view);
        var pen = Math.Max(loose.Width / flow.Width, loose.Height / (flow.Room - (beneath ? TwoLines : OneLine)));
        flow.Picture(BoardPlan.Of(study, moment, view with { Pen = pen }));
        flow.Text(Face.Reports, 8.5f, $"Under each house its label and the length of its pair. Wires have the colour and dash of their pack{(options.Suggested.Count > 0 ? "; thin ones are only suggested" : "")}. {(beneath ? "Dashed outlines lie under the board; wires go round what is shaded. " : "")}Drawn at 1:{pen:0.#}.");
    }
}
