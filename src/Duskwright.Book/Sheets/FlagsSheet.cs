using Duskwright.Book.Plans;
using Duskwright.Study;

namespace Duskwright.Book.Sheets;

/// <summary>Labels to fold over the pairs, to be cut out.</summary>
internal static class FlagsSheet
{
    private const float Gap = 4;

    internal static void Draw(PageFlow flow, TownStudy study)
    {
        if (study.Labels.Count == 0)
        {
            return;
        }

        flow.Page("Labels to fold over the pairs", ruled: true);
        flow.Text(Face.Reports, 9, "At full size. Cut along the dashes, lay the pair on the middle line, fold the label back over it and stick the halves together: it reads the same from both sides. One at the bank, and one where the pair leaves the house, before it goes through any hole; print this sheet twice.");
        flow.Gap(Gap);
        var across = (int)((flow.Width + Gap) / (FlagLabel.Width + Gap));
        foreach (var row in study.Labels.Chunk(across))
        {
            flow.Need((float)FlagLabel.Height + Gap);
            foreach (var (label, i) in row.Select((l, i) => (l, i)))
            {
                flow.Place(FlagLabel.Of(label), (float)(i * (FlagLabel.Width + Gap)), flow.Y);
            }

            flow.Gap((float)FlagLabel.Height + Gap);
        }
    }
}
