using Duskwright.Book.Plans;
using Duskwright.Study;

namespace Duskwright.Book.Sheets;

/// <summary>The strips that go below the switches, to be cut out.</summary>
internal static class StripsSheet
{
    private const float Gap = 6;

    internal static void Draw(PageFlow flow, TownStudy study)
    {
        var strips = BankStrips.Of(study);
        if (strips.Count == 0)
        {
            return;
        }

        flow.Page("Labels for the bank", ruled: true);
        flow.Text(Face.Reports, 9, "At full size. Cut along the dashes and stick each strip below its pack's switches; where the switches stand farther apart, cut between the fields too.");
        foreach (var strip in strips)
        {
            flow.Gap(Gap);
            flow.Picture(strip);
        }
    }
}
