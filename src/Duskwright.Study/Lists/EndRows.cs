using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;

namespace Duskwright.Study.Lists;

/// <summary>Makes the table of ends to bare and to tin, wire by wire. How much and how: common practice, no source.</summary>
internal static class EndRows
{
    private const double InJoint = 3;
    private const double UnderScrew = 6;

    // What is coated thinner than this is enamelled, mm.
    private const double EnamelMillimetres = 0.05;

    internal static ItemList<EndRow> Of(Town town, ItemList<CutRow> cutList)
    {
        var atBank = cutList.Where(r => !r.Laid).ToLookup(r => r.From.StartsWith("the bank", StringComparison.Ordinal));
        return atBank.SelectMany(g => g.Select(r => (r.WireId, r.Conductors, Bank: g.Key)))
            .GroupBy(r => r.WireId, StringComparer.Ordinal)
            .SelectMany(g => Rows(Catalogue.FindWire(town, g.Key)!, g.Where(r => r.Bank).Sum(r => r.Conductors), g.Sum(r => 2 * r.Conductors)))
            .ToItemList();
    }

    private static IEnumerable<EndRow> Rows(WirePart wire, int underScrew, int all)
    {
        var enamelled = (wire.OuterDiameter.Millimetres - wire.CopperDiameter.Millimetres) / 2 < EnamelMillimetres;
        yield return new EndRow(wire.Name, "in a joint", all - underScrew, InJoint, enamelled
            ? "burn the enamel off in a bead of solder on the tip, away from your face, or scrape it off until the copper is bright all round; tin it"
            : "twist the strands and tin them");
        if (underScrew > 0)
        {
            yield return new EndRow(wire.Name, "under a screw at the bank", underScrew, UnderScrew, enamelled
                ? "bare it as above and fold it back on itself, so that the screw holds it"
                : "twist the strands and put a ferrule on, or fold them back; a tinned end creeps under a screw and works loose");
        }
    }
}
