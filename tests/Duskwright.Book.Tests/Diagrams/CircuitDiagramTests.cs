using System.Globalization;
using System.Text.RegularExpressions;
using Duskwright.Book.Diagrams;
using Duskwright.Book.Drawings;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;
using Duskwright.Study;

namespace Duskwright.Book.Tests.Diagrams;

/// <summary>The diagram of a circuit: nothing crosses, and what it joins is what is joined.</summary>
public sealed partial class CircuitDiagramTests
{
    private const double Near = 0.011;
    private static readonly TownStudy Saltmarrow = PrintedSaltmarrow.Study;
    private static readonly Gen<Town> Towns = Gen.Select(Gen.Int[1, 9], Gen.Int[1, 3], Gen.Int[0, 1_000_000], Gen.Bool, Drawn);

    [Theory]
    [InlineData(120)]
    [InlineData(230)]
    [InlineData(double.PositiveInfinity)]
    public void No_two_conductors_of_Saltmarrow_cross(double height) => Assert.All(CircuitDiagram.Of(Saltmarrow, height).SelectMany(c => c.Pages), page => Assert.Empty(Crossings(Conductors(page))));

    [Fact]
    public void No_two_conductors_of_any_town_cross() => Towns.Sample(
        town => Assert.All(((double[])[70, 200, double.PositiveInfinity]).SelectMany(h => CircuitDiagram.Of(TownStudy.Of(town), h)).SelectMany(c => c.Pages), page => Assert.Empty(Crossings(Conductors(page)))),
        iter: 12,
        threads: 1);

    [Fact]
    public void A_page_is_never_taller_than_was_asked() => Towns.Sample(
        town => Assert.All(CircuitDiagram.Of(TownStudy.Of(town), 70).SelectMany(c => c.Pages), page => Assert.True(page.Height <= 70, $"{page.Title}: {page.Height} mm")),
        iter: 6,
        threads: 1);

    // Before resistors and lamps, everything from the fuse on is joined to plus; behind the lamps everything to the minus: by Kirchhoff's laws each lamp
    // hangs between the two, so without parts the copper falls into the pieces counted here.
    [Fact]
    public void What_the_copper_of_a_whole_circuit_joins_is_what_is_joined() => Towns.Sample(
        town =>
        {
            var study = TownStudy.Of(town);
            foreach (var (packs, pages) in CircuitDiagram.Of(study))
            {
                var lit = study.Packs.Where(p => packs.Contains(p.Number)).ToList();
                var resistors = study.Lamps.Count(l => lit.Any(p => p.Supply.Id == l.Supply) && l.Resistor.Value > 0);
                var switches = study.Lamps.Where(l => lit.Any(p => p.Supply.Id == l.Supply)).Select(l => l.SwitchGroup).Distinct().Count();

                // The minus; of each pack the leads from cells to fuse and from fuse to switches; behind each switch its houses; between each resistor and its lamp.
                Assert.Equal(1 + (2 * lit.Count) + switches + resistors, Pieces(Conductors(Assert.Single(pages))));
            }
        },
        iter: 10,
        threads: 1);

    [Fact]
    public void Packs_that_share_a_return_are_one_diagram_and_others_each_their_own()
    {
        Assert.Equal(Saltmarrow.Packs.Count(p => p.Lamps > 0), CircuitDiagram.Of(Saltmarrow).Count);
        var shared = Saltmarrow.Town with { Wiring = Saltmarrow.Town.Wiring with { ReturnWire = "cu-0.50", ReturnLength = Length.FromMillimetres(2000) } };
        var (packs, pages) = Assert.Single(CircuitDiagram.Of(PrintedSaltmarrow.Edited(shared)));
        Assert.Equal(Saltmarrow.Packs.Where(p => p.Lamps > 0).Select(p => p.Number), packs);
        Assert.Contains(Words(Assert.Single(pages)), w => w.StartsWith("common return", StringComparison.Ordinal) && w.EndsWith("2.00 m", StringComparison.Ordinal));
    }

    [Fact]
    public void Every_lamp_of_a_circuit_is_drawn_once_with_the_joints_of_its_own_sheet()
    {
        var pages = CircuitDiagram.Of(Saltmarrow, 230).SelectMany(c => c.Pages).ToList();
        var joints = pages.SelectMany(Words).Count(w => Number().IsMatch(w));
        var packs = Saltmarrow.Packs.Count(p => p.Lamps > 0);
        Assert.Equal(Saltmarrow.Lamps.Count(l => l.Supply is not null), pages.SelectMany(Words).Count(w => LampName().IsMatch(w)));

        // Two where a pair arrives, one behind each lamp, one before it where it has a resistor; and each pack has its number.
        Assert.Equal((2 * Saltmarrow.Buildings.Count(b => b.Supply is not null)) + Saltmarrow.Lamps.Count(l => l.Supply is not null) + Saltmarrow.Lamps.Count(l => l.Supply is not null && l.Resistor.Value > 0) + packs, joints);
    }

    [Fact]
    public void A_conductor_that_goes_on_over_a_page_is_named_on_both()
    {
        foreach (var (_, pages) in CircuitDiagram.Of(Saltmarrow, 120))
        {
            foreach (var (one, next) in pages.Zip(pages.Skip(1)))
            {
                var goes = Tags(one, atFoot: true);
                Assert.NotEmpty(goes);
                Assert.Equal(goes, Tags(next, atFoot: false));
            }
        }
    }

    [Fact]
    public void Two_lines_that_cross_are_found() =>
        Assert.Single(Crossings([new(0, 5, 10, 5), new(5, 0, 5, 10)]));

    private static List<string> Tags(Drawing page, bool atFoot) =>
        [.. Lettering(page).Where(l => l.Text.EndsWith(" +", StringComparison.Ordinal) || l.Text.EndsWith(" −", StringComparison.Ordinal)).Where(l => l.Y > page.Height / 2 == atFoot).Select(l => l.Text).Order(StringComparer.Ordinal)];

    private static IEnumerable<string> Words(Drawing page) => Lettering(page).Select(l => l.Text);

    private static IEnumerable<Lettering> Lettering(Drawing page) => page.Parts.SelectMany(p => p.Marks).OfType<Lettering>();

    // The conductors themselves: straight strokes that stand on the page, not those inside a symbol.
    private static List<Wire> Conductors(Drawing page) =>
        [.. page.Parts.SelectMany(p => p.Marks).OfType<Stroke>().Where(s => s.Ink == Inks.Conductor || s.Ink == Inks.Thin).Select(s => Straight().Match(s.Path)).Where(m => m.Success).Select(m => new Wire(Value(m, 1), Value(m, 2), Value(m, 3), Value(m, 4)))];

    private static double Value(Match match, int group) => double.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);

    // Two conductors cross where they share a point that is the end of neither, or run along one another.
    private static List<(Wire, Wire)> Crossings(List<Wire> wires) =>
        [.. from i in Enumerable.Range(0, wires.Count) from j in Enumerable.Range(i + 1, wires.Count - i - 1) where Crosses(wires[i], wires[j]) select (wires[i], wires[j])];

    private static bool Crosses(Wire one, Wire other)
    {
        var (width, height) = (Math.Min(one.Right, other.Right) - Math.Max(one.Left, other.Left), Math.Min(one.Bottom, other.Bottom) - Math.Max(one.Top, other.Top));
        if (one.IsUpright == other.IsUpright)
        {
            return (width > Near && height > -Near) || (height > Near && width > -Near);
        }

        var (upright, lying) = one.IsUpright ? (one, other) : (other, one);
        return upright.Left > lying.Left + Near && upright.Left < lying.Right - Near && lying.Top > upright.Top + Near && lying.Top < upright.Bottom - Near;
    }

    private static int Pieces(List<Wire> wires)
    {
        var piece = Enumerable.Range(0, wires.Count).ToArray();
        for (var i = 0; i < wires.Count; i++)
        {
            for (var j = 0; j < i; j++)
            {
                if (wires[i].Touches(wires[j]))
                {
                    var (from, to) = (piece[i], piece[j]);
                    piece = [.. piece.Select(p => p == from ? to : p)];
                }
            }
        }

        return piece.Distinct().Count();
    }

    private static Town Drawn(int houses, int packs, int seed, bool common)
    {
        var random = new Random(seed);
        var groups = Enumerable.Range(0, packs * 2).Select(i => new SwitchGroup { Id = ((char)('A' + i)).ToString(), Supply = (1 + (i / 2)).ToString(CultureInfo.InvariantCulture), Name = random.Next(2) == 0 ? null : "the far side of the market and below" }).ToList();
        return new Town
        {
            Name = "Osythe Fen",
            Supplies = [.. Enumerable.Range(1, packs).Select(i => new Supply { Id = i.ToString(CultureInfo.InvariantCulture), Part = "LR6", Series = 1 + random.Next(4) })],
            SwitchGroups = [.. groups],
            Wiring = common ? new WiringChoices { ReturnWire = "cu-0.50", ReturnLength = Length.FromMillimetres(900) } : new WiringChoices(),
            Buildings = [.. Enumerable.Range(1, houses).Select(i => new Building { Name = $"Cottage {i}", SwitchGroup = random.Next(6) == 0 ? null : groups[random.Next(groups.Count)].Id, Leds = 1 + random.Next(9), Led = random.Next(2) == 0 ? "led-3mm-yellow" : "led-0603-warm-white", Resistor = random.Next(3) == 0 ? ResistorChoice.None : null })],
        };
    }

    [GeneratedRegex("^M(-?[0-9.]+) (-?[0-9.]+)L(-?[0-9.]+) (-?[0-9.]+)$")]
    private static partial Regex Straight();

    [GeneratedRegex("^[0-9]+$")]
    private static partial Regex Number();

    [GeneratedRegex("^L[0-9]+$")]
    private static partial Regex LampName();

    private sealed record Wire(double X1, double Y1, double X2, double Y2)
    {
        internal double Left => Math.Min(X1, X2);

        internal double Right => Math.Max(X1, X2);

        internal double Top => Math.Min(Y1, Y2);

        internal double Bottom => Math.Max(Y1, Y2);

        internal bool IsUpright => Math.Abs(X1 - X2) < Near;

        internal bool Touches(Wire other) => Left <= other.Right + Near && other.Left <= Right + Near && Top <= other.Bottom + Near && other.Top <= Bottom + Near;
    }
}
