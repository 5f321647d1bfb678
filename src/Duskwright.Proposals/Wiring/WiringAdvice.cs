using System.Globalization;

namespace Duskwright.Proposals.Wiring;

/// <summary>The way advised for one switch.</summary>
/// <param name="Wiring">The way.</param>
/// <param name="Reason">Why, in words and numbers.</param>
public sealed record WiringAdvice(GroupWiring Wiring, string Reason)
{
    /// <summary>Weighs the ways of one switch. One in which a lamp is seen to be fainter than its like is taken only where it is so in all.</summary>
    internal static WiringAdvice Of(IReadOnlyList<GroupWiring> ways, double robustness, double visibleStep)
    {
        var even = ways.Where(w => w.Evenness >= 100 - visibleStep).ToList();
        var able = even.Count > 0 ? even : [.. ways];
        var (mostWire, mostReach) = (ways.Max(w => w.WireMetres), Math.Max(1, ways.Max(w => w.OutOfReach)));

        // Each is a share of the most there can be: of the longest wire; of all lamps on the switch and of all joints out of reach.
        double Minded(GroupWiring w) => ((1 - robustness) * w.WireMetres / mostWire)
            + (robustness * ((w.Darkened / (double)w.Lamps) + (w.OutOfReach / (double)mostReach)) / 2);
        var best = able.MinBy(Minded)!;
        return new WiringAdvice(best, Words(best, ways, visibleStep));
    }

    private static string Words(GroupWiring best, IReadOnlyList<GroupWiring> ways, double visibleStep)
    {
        var shortest = ways.MinBy(w => w.WireMetres)!;
        var longest = ways.MaxBy(w => w.WireMetres)!;
        const double same = 0.05;
        var wire = longest.WireMetres - shortest.WireMetres < same
            ? string.Create(CultureInfo.InvariantCulture, $"every way takes {best.WireMetres:0.0} m of wire")
            : best.WireMetres - shortest.WireMetres < same
            ? string.Create(CultureInfo.InvariantCulture, $"the least wire, {best.WireMetres:0.0} m against up to {longest.WireMetres:0.0} m")
            : string.Create(CultureInfo.InvariantCulture, $"{best.WireMetres - shortest.WireMetres:0.0} m more wire than {WiringWay.Words(shortest.Tree.Way)}");
        var broken = best.Darkened == best.Lamps
            ? $"one broken joint can darken all {best.Lamps} lamps"
            : string.Create(CultureInfo.InvariantCulture, $"one broken joint darkens at most {best.Darkened} of {best.Lamps} lamps");
        var faintest = ways.Where(w => w.Evenness < 100 - visibleStep).ToList();
        var faint = faintest.Contains(best)
            ? string.Create(CultureInfo.InvariantCulture, $"; in every way a lamp looks fainter than its like, here by {100 - best.Evenness:0} of lightness")
            : faintest.Count > 0
                ? $"; {string.Join(" and ", faintest.Select(w => WiringWay.Words(w.Tree.Way)))} would leave lamps visibly fainter"
                : "";
        var choice = WiringWay.Words(best.Tree.Way);
        return $"{char.ToUpperInvariant(choice[0])}{choice[1..]}: {wire}; {broken}, and {best.OutOfReach} of {best.Joints} joints are out of reach{faint}.";
    }
}
