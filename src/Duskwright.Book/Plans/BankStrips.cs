using System.Globalization;
using Duskwright.Book.Drawings;
using Duskwright.Plan;
using Duskwright.Study;
using Duskwright.Study.Lists;
using Duskwright.Study.Results;

namespace Duskwright.Book.Plans;

/// <summary>Strips to cut out and stick below the switches, at true size: of each pack a field with its number, then one for each of its switches.</summary>
public static class BankStrips
{
    /// <summary>Height of a strip, mm.</summary>
    public const double Height = 18;

    private const double PackWidth = 34;
    private const double SwitchWidth = 24;
    private const int MostSwitches = 6;

    /// <summary>Draws the strips.</summary>
    /// <param name="study">The town's results.</param>
    /// <returns>A strip for each pack that has switches, more where they do not fit on one.</returns>
    public static IReadOnlyList<Drawing> Of(TownStudy study)
    {
        var switches = study.SwitchList.ToDictionary(s => s.Id, StringComparer.Ordinal);
        return
        [
            .. from pack in study.Packs
               from groups in pack.SwitchGroups.Where(switches.ContainsKey).Select(g => switches[g]).Chunk(MostSwitches)
               select Strip(pack, groups),
        ];
    }

    private static Drawing Strip(PackResult pack, SwitchRow[] groups)
    {
        var width = PackWidth + (groups.Length * SwitchWidth);
        List<Mark> marks =
        [
            new Stroke(Trace.Rectangle(0, 0, width, Height), Inks.Hidden),
            new Stroke(Trace.Circle(6, 6, 3.6), Inks.Badge(pack.Number)),
            new Lettering(6, 7, pack.Number.ToString(CultureInfo.InvariantCulture), Inks.Number, Anchor.Middle),
            new Lettering(11.5, 7, Fitting.Short(pack.Supply.Name ?? $"pack {pack.Number}", Inks.Ref, PackWidth - 13), Inks.Ref),
            .. Fitting.Lines(pack.Words, Inks.Tiny, PackWidth - 4, 2).Select((l, i) => new Lettering(2.4, 12.8 + (i * 2.7), l, Inks.Tiny)),
        ];
        foreach (var (group, i) in groups.Select((g, i) => (g, i)))
        {
            var left = PackWidth + (i * SwitchWidth);
            marks.Add(new Stroke(Trace.Segment(left, 0, left, Height), Inks.Thin));
            marks.Add(new Lettering(left + (SwitchWidth / 2), 7, Fitting.Short(group.Id, Inks.Letter, SwitchWidth - 3), Inks.Letter, Anchor.Middle));
            marks.AddRange(Fitting.Lines(group.Name ?? "", Inks.Tiny, SwitchWidth - 2.5, 2).Select((l, n) => new Lettering(left + (SwitchWidth / 2), 11 + (n * 2.5), l, Inks.Tiny, Anchor.Middle)));
            marks.Add(new Lettering(left + (SwitchWidth / 2), 16.6, string.Create(CultureInfo.InvariantCulture, $"{group.Lamps} {(group.Lamps == 1 ? "LED" : "LEDs")}"), Inks.Tiny, Anchor.Middle));
        }

        return new Drawing($"Strip for the switches of pack {pack.Number}", 0, 0, width, Height, 1, [new Part(marks.ToItemList())]);
    }
}
