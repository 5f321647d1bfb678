using Duskwright.Book.Drawings;
using Duskwright.Book.Plans;
using Duskwright.Book.Plots;
using Duskwright.Study;

namespace Duskwright.Book.Sheets;

/// <summary>The bank as it is built, and how long its packs last.</summary>
internal static class BankSheet
{
    internal static void Draw(PageFlow flow, TownStudy study)
    {
        if (study.Packs.Count == 0)
        {
            return;
        }

        flow.Page("The bank", lying: true);
        var moment = study.At(0);
        flow.Picture(Fitted(BankPlan.Of(study, moment, null), flow.Width, 75));
        flow.Gap(6);
        flow.Text(Face.Speaks, 12, "How long each pack lasts");
        flow.Picture(Fitted(RunTimePlot.Of(study), flow.Width * 0.62f, flow.Room - 8));
        flow.Text(Face.Reports, 8.5f, "Amber to half light; dashed on to a third of the light, then the show is spoiled. The heavy line is the show.");
    }

    // Drawings of no true size are made to fit.
    private static Drawing Fitted(Drawing drawing, float width, float height) => drawing with { Pen = Math.Max(drawing.Width / width, drawing.Height / height) };
}
