using System.Globalization;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Study.Figures;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Lists;

/// <summary>Makes the parts list: what the houses that are not fitted yet take, what is not yet at the bank, and a fresh set of cells.</summary>
internal static class PartsRows
{
    // At least three of a lamp to spare: common practice, no source.
    private const int LeastSpareLamps = 3;
    private const string UsualFuse = "ptc-500ma";

    internal static ItemList<PartsRow> Of(ResolvedTown resolved)
    {
        var town = resolved.Town;
        var spare = town.Wiring.SpareShare ?? Usual.SpareShare;
        var toBuild = resolved.Buildings.Where(b => b.Building.State is BuildingState.Idea or BuildingState.Shell).ToList();
        var lamps = toBuild.SelectMany(b => b.Lamps).ToList();
        var standing = Standing.In(resolved);
        var toLay = resolved.Buildings.Where(b => b.Lamps.Count > 0 && !standing.Pair(b.Building)).ToList();
        var rows = new List<PartsRow>();
        foreach (var kind in lamps.GroupBy(l => l.Part).OrderByDescending(g => g.Count()))
        {
            rows.Add(Pieces(kind.Key.Name, "lamps", kind.Count(), Math.Max(LeastSpareLamps, Up(kind.Count() * spare)), kind.Key.SoldBy ?? 1, kind.Key.Price is { } each ? each.Units * (kind.Key.SoldBy ?? 1) : null));
        }

        var resistor = Sundry(SundryUse.Resistor);
        foreach (var value in lamps.Where(l => l.ResistorOhms.Typical > 0).GroupBy(l => l.ResistorOhms.Typical).OrderBy(g => g.Key))
        {
            rows.Add(Pieces($"{FigureText.Of(value.Key, "Ω")} {resistor.Name}", "one in each lamp's lead", value.Count(), Up(value.Count() * spare), resistor.SoldBy, resistor.Price?.Units));
        }

        var taps = town.Taps.Where(t => !standing.Tap(t)).ToList();
        var pairs = toLay.SelectMany(b => Enumerable.Repeat((Wire: b.Pair.Wire, Metres: 2 * b.Pair.Metres.Typical), Pairs(b))).Concat(taps.Select(t => (Wire: SharedPairs.WireOf(town, t), Metres: 2 * t.Length.Metres))).ToList();
        var tailWire = Catalogue.FindWire(town, town.Wiring.TailWire ?? Usual.TailWire)!;
        var tails = lamps.Where(l => l.Part.Kind != LampKind.ReadyWired).Select(l => (Wire: tailWire, Metres: 2 * l.TailMetres));
        foreach (var wire in pairs.Concat(tails).GroupBy(w => w.Wire))
        {
            rows.Add(Wire(wire.Key, wire.Sum(w => w.Metres), spare));
        }

        var starts = SharedRuns.Starts(town);
        var underway = toLay.Select(b => b.Building.Key).Concat(taps.Select(t => t.Id)).Count(starts.ContainsKey);
        if (JointRows.Of(resolved).Sum(j => j.Joints) is > 0 and var joints)
        {
            var sleeve = Sundry(SundryUse.Sleeve);
            rows.Add(Pieces(sleeve.Name, "over every joint", joints, 0, sleeve.SoldBy, sleeve.Price?.Units));
        }

        foreach (var supply in town.Supplies.GroupBy(s => s.Part))
        {
            var part = Catalogue.FindSupply(town, supply.Key)!;
            var count = supply.Sum(s => s.Series * s.Parallel);
            rows.Add(Pieces(part.Name, PackLaws.IsStore(part) ? "one fresh set for the show" : "supply", count, 0, 1, part.Price?.Units));
        }

        if (town.Supplies.Count > 0)
        {
            AddBank(town, standing, rows, pairs.Count, underway);
        }

        return rows.ToItemList();
    }

    private static void AddBank(Town town, Standing standing, List<PartsRow> rows, int pairs, int underway)
    {
        var holders = town.Supplies.Count(s => !standing.Pack(s) && PackLaws.IsStore(Catalogue.FindSupply(town, s.Part)!));
        var switches = town.SwitchGroups.Count(g => !standing.Switch(g));
        foreach (var (use, count, why) in new[]
        {
            (SundryUse.Holder, holders, "one for each new pack"), (SundryUse.Switch, switches, "one for each new switch"),
            (SundryUse.Terminal, 2 * (pairs - underway), "two ways for each pair to lay"), (SundryUse.Label, pairs, "one for each pair to lay"),
        }.Where(wanted => wanted.Item2 > 0))
        {
            var sundry = Sundry(use);
            rows.Add(Pieces(sundry.Name, why, count, 0, sundry.SoldBy, sundry.Price?.Units));
        }

        // A pack that stands without a fuse still wants one.
        foreach (var fuse in town.Supplies.Where(s => s.Fuse is null || !standing.Pack(s)).GroupBy(s => s.Fuse ?? UsualFuse))
        {
            var part = Catalogue.FindFuse(town, fuse.Key)!;
            rows.Add(Pieces(part.Name, "one at each pack that has none", fuse.Count(), 0, 1, part.Price?.Units));
        }
    }

    // A house has a pair for each switch that its lamps hang on.
    private static int Pairs(ResolvedBuilding building) => building.Lamps.DistinctBy(l => l.SwitchGroup).Count();

    private static PartsRow Wire(WirePart wire, double metres, double spare)
    {
        var reel = wire.SoldByMetres ?? 1;
        var spares = metres * spare;
        var reels = Up((metres + spares) / reel);
        return new PartsRow(
            wire.Name,
            "pairs and tails, both conductors",
            Math.Round(metres, 1),
            Math.Round(spares, 1),
            reels,
            string.Create(CultureInfo.InvariantCulture, $"reel of {reel:0.#} m"),
            Cost(reels, wire.PricePerMetre?.Units * reel));
    }

    private static PartsRow Pieces(string name, string use, int needed, int spares, int soldBy, double? packPrice)
    {
        var packs = (needed + spares + soldBy - 1) / soldBy;
        return new PartsRow(name, use, needed, spares, packs, soldBy == 1 ? "single" : $"pack of {soldBy}", Cost(packs, packPrice));
    }

    private static Figure? Cost(int packs, double? packPrice) => packPrice is not { } price
        ? null
        : Figure.From(
            Laws.PacksToBuy,
            "cost",
            "money",
            Figure.Given("packs", packs, "", "counted from the town, spares included", Certainty.Computed),
            Figure.Given("usual price", price, "money", "common practice, no source; in units of about one euro or dollar", Certainty.Typical));

    private static SundryPart Sundry(SundryUse use) => Catalogue.Parts.Sundries.First(s => s.Use == use);

    private static int Up(double value) => (int)Math.Ceiling(value - 1e-9);
}
