using Duskwright.Book.Plans;
using Duskwright.Study;

namespace Duskwright.Book.Sheets;

/// <summary>The board with its wires on one sheet, as large as the paper allows.</summary>
internal static class BoardSheet
{
    internal static void Draw(PageFlow flow, TownStudy study, BookOptions options)
    {
        if (study.Town.Board is null)
        {
            return;
        }

        flow.Page("The board", lying: true);
        var moment = study.At(0);
        var view = new BoardView { WithLengths = true, Suggested = options.Suggested };
        var loose = BoardPlan.Of(study, moment, view);
        var pen = Math.Max(loose.Width / flow.Width, loose.Height / (flow.Room - 8));
        flow.Picture(BoardPlan.Of(study, moment, view with { Pen = pen }));
        flow.Text(Face.Reports, 8.5f, $"Under each house its label and the length of its pair. Wires have the colour and dash of their pack{(options.Suggested.Count > 0 ? "; thin ones are only suggested" : "")}. Drawn at 1:{pen:0.#}.");
    }
}
