using Duskwright.Book.Plans;
using Duskwright.Study;

namespace Duskwright.Book.Sheets;

/// <summary>Labels to fold over the pairs, to be cut out.</summary>
internal static class FlagsSheet
{
    private const float Gap = 4;

    internal static void Draw(PageFlow flow, TownStudy study, BookOptions options)
    {
        var labels = options.LabelsOf(study);
        if (labels.Count == 0)
        {
            return;
        }

        flow.Page("Labels to fold over the pairs", ruled: true);
        flow.Text(Face.Reports, 9, "At full size. Cut along the dashes, lay the pair on the middle line, fold the label back over it and stick the halves together: it reads the same from both sides. One at the bank, and one where the pair leaves the house, before it goes through any hole; print this sheet twice.");
        if (options.Address is { } address)
        {
            flow.Gap(1);
            flow.Text(Face.Reports, 9, $"The code opens the page of the house on a phone that was let in, as long as the town is shared at {address}. Print again when that address changes.");
        }

        flow.Gap(Gap);
        var width = options.Address is null ? FlagLabel.Width : FlagLabel.WidthWithCode;
        var across = (int)((flow.Width + Gap + 0.01) / (width + Gap));
        foreach (var row in labels.Chunk(across))
        {
            flow.Need((float)FlagLabel.Height + Gap);
            foreach (var (label, i) in row.Select((l, i) => (l, i)))
            {
                // A shared pair leads to a tap, which has no page.
                var page = study.Buildings.FirstOrDefault(b => b.Code == label.Code) is { } house ? options.HousePage(house) : null;
                flow.Place(FlagLabel.Of(label, page), (float)(i * (width + Gap)), flow.Y);
            }

            flow.Gap((float)FlagLabel.Height + Gap);
        }
    }
}
