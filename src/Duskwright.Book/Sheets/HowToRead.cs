using Duskwright.Book.Diagrams;
using Duskwright.Study;
using Duskwright.Study.Figures;

namespace Duskwright.Book.Sheets;

/// <summary>How to read the book: the order of its sheets, its symbols and its words.</summary>
internal static class HowToRead
{
    internal static void Draw(PageFlow flow, TownStudy study, IReadOnlyList<string> titles)
    {
        flow.Page("How to read this book");
        flow.Text(Face.Speaks, 12, "What comes after what");
        flow.Text(Face.Reports, 9, $"{string.Join("; ", titles)}; then a sheet for each house: its walls and lamp cards at full size, its wiring, leads, glazing and tests.");
        flow.Text(Face.Reports, 9, "Sheets at full size carry a ruler at their foot. Two figures with a dash between them are what is sound: parts differ, and so do cells.");
        flow.Gap(3);
        flow.Text(Face.Speaks, 12, "Symbols and lines");
        flow.Picture(Legend.Of(study));
        flow.Gap(2);
        flow.Need(60);
        flow.Text(Face.Speaks, 12, "Words");
        var show = study.Town.Show;
        flow.Table(
            [0.2f, 0.8f],
            ["word", "meaning"],
            [
                ["pair", "the two conductors from one house to the bank"],
                ["tail", "a lamp's own two leads, up to the first joint"],
                ["joint", "where conductors meet: soldered, twisted or crimped"],
                ["wireway, feed hole", "where pairs run under the board, and where one goes through it"],
                ["bank, pack, switch", "where all pairs end, cells in their holder, and what lights a group of houses"],
                ["circuit", "all that is electrically connected"],
                ["dim", $"a window has {FigureText.Of(show.DimShare, "share")} of the light that it had when its cells were fresh"],
                ["spoiled", $"it has {FigureText.Of(show.SpoiledShare, "share")} of it"],
                ["L*", $"lightness as the eye sees it, 0 to 100; windows side by side that differ by {show.VisibleStep:0.#} or more look unlike"],
            ]);
    }
}
