using Duskwright.Study;
using Duskwright.Study.Lists;

namespace Duskwright.Book.Lists;

/// <summary>The lists by which leads are cut, bared and joined.</summary>
internal static class LeadLists
{
    // A lead is cut a shade long and never short: whole millimetres, rounded up.
    internal static TownList Cuts(TownStudy study) => new(
        "cut",
        "Cut list",
        ["Label", "From", "To", "Wire", "Conductors", "Length of each, mm", "Of it slack, mm", "Mark of the plus", "Way, and whether it is laid"],
        TownLists.Rows(study.CutList, c =>
        [
            ListCell.Of(c.Label), ListCell.Of(c.From), ListCell.Of(c.To), ListCell.Of(c.Wire), ListCell.Of(c.Conductors), ListCell.Of(c.CutMillimetres),
            c.SlackMetres is { } slack ? ListCell.Of(Math.Round(slack * 1000)) : ListCell.Of(""), ListCell.Of(CutRow.Positive),
            ListCell.Of(string.Join("; ", new[] { c.Way, c.Laid ? "laid already" : "" }.Where(w => w.Length > 0))),
        ]));

    internal static TownList Reels(TownStudy study) => new(
        "reel",
        "Cutting plan",
        ["Reel", "Label", "To", "Conductor", "Length of each, mm", "Cut so many", "Then left on it, mm"],
        TownLists.Rows(study.ReelCuts.SelectMany(w => w.Reels.SelectMany(r => r.Cuts.Select(c => (Wire: w.Wire.Name, Reel: r, Cut: c)))), c =>
        [
            ListCell.Of($"{c.Wire}, {c.Reel.Name}"), ListCell.Of(c.Cut.Row.Label), ListCell.Of(c.Cut.Row.To), ListCell.Of(Conductors(c.Cut.Conductors)),
            ListCell.Of(c.Cut.Row.CutMillimetres), ListCell.Of(c.Cut.Conductors == CutConductors.Both ? c.Cut.Row.Conductors : 1), ListCell.Of(c.Cut.LeftMillimetres),
        ]));

    internal static TownList Joints(TownStudy study) => new(
        "joint",
        "Joints and sleeves",
        ["At", "Joins", "Joints", "Wires in each", "Sleeve, bore in mm", "Out of reach later"],
        TownLists.Rows(study.Joints, j => [ListCell.Of(j.Place), ListCell.Of(j.What), ListCell.Of(j.Joints), ListCell.Of(j.Wires), ListCell.Of(j.SleeveMillimetres), ListCell.Of(j.OutOfReach ? "yes" : "")]));

    internal static TownList Ends(TownStudy study) => new(
        "end",
        "Strip and tin",
        ["Wire", "Its end", "Ends", "Bare, mm", "Then"],
        TownLists.Rows(study.Ends, e => [ListCell.Of(e.Wire), ListCell.Of(e.At), ListCell.Of(e.Ends), ListCell.Of(e.StripMillimetres), ListCell.Of(e.Then)]));

    private static string Conductors(CutConductors which) => which switch
    {
        CutConductors.Plus => CutRow.Positive,
        CutConductors.Minus => "minus",
        _ => $"{CutRow.Positive} and minus",
    };
}
