using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Figures;
using Duskwright.Study.Results;

namespace Duskwright.Study.Findings;

/// <summary>What nobody knows of a town that is built already or only half planned: between which ends it leaves each house, and what to measure first.</summary>
internal static class UnknownRules
{
    /// <summary>Of all that is not known, what to measure first.</summary>
    /// <param name="study">The study.</param>
    /// <returns>One finding; none where all is known.</returns>
    internal static IEnumerable<Finding> MeasureFirst(TownStudy study)
    {
        var open = Open(study);
        if (open.Where(b => Width(b.Current) > 0).MaxBy(b => Width(b.Current)) is { } widest)
        {
            yield return First(study, widest, open.Sum(b => Width(b.Current)));
        }
    }

    /// <summary>Between which ends each house lies that is not known.</summary>
    /// <param name="study">The study.</param>
    /// <returns>The findings in the order of the houses.</returns>
    internal static IEnumerable<Finding> Ranges(TownStudy study)
    {
        foreach (var building in Open(study))
        {
            if (Unknowns(building) is not [Unknown.Length] && building.Current is { Low: { } low, High: { } high })
            {
                yield return new Finding
                {
                    Rule = "not-known",
                    Severity = Severity.Look,
                    Subject = Subject.Building(building.Building.Key),
                    Words = $"Not all of {building.Building.Name} is known: it may take anything from {{0}} to {{1}}.",
                    Figures = [Least(low), Most(high)],
                    Remedy = "One reading of its current at the bank settles it.",
                };
            }

            if (Unknowns(building).Contains(Unknown.Length) && building.PairLength is { Low: { } far, High: { } near })
            {
                yield return new Finding
                {
                    Rule = "length-not-known",
                    Severity = Severity.Look,
                    Subject = Subject.Building(building.Building.Key),
                    Words = $"How far {building.Building.Name} is from the bank is not known: its pair may need anything from {{0}} to {{1}}.",
                    Figures = [Figure.Given("least", Math.Min(far, near), "m", "as the nearest house", Certainty.Assumed), Figure.Given("most", Math.Max(far, near), "m", "as the farthest house", Certainty.Assumed)],
                    Remedy = "Lay a thread along its way and measure that, or put the house on the board.",
                };
            }
        }
    }

    private static List<BuildingResult> Open(TownStudy study) => [.. study.Buildings.Where(b => b.Lamps.Count > 0 && Unknowns(b).Count > 0)];

    // The house that may take the most or the least: a reading at the bank takes all of its range away, one part that is made out takes some.
    private static Finding First(TownStudy study, BuildingResult building, double all)
    {
        var (name, current) = (building.Building.Name, building.Current!);
        var best = Reachable(building).Select(u => (Unknown: u, Left: study.After(Known(study.Town, building, u)).Buildings.First(b => b.Building.Key == building.Building.Key).Current!)).OrderBy(u => Width(u.Left)).FirstOrDefault();
        var wired = building.Building.State >= BuildingState.Fitted;
        var share = Figure.Given("share", 100 * Width(current) / all, "%", "its range over the ranges of all houses that are not known", Certainty.Computed);
        var helps = best.Left is { } left && Width(left) < 0.95 * Width(current);
        return new Finding
        {
            Rule = "measure-first",
            Severity = Severity.Look,
            Subject = Subject.Building(building.Building.Key),
            Words = $"Of all that nobody knows, {name} matters most: it may take {{0}} to {{1}}, {{2}} of what is open."
                + (helps ? $" Were {Called(best.Unknown)} known, it would be {{3}} to {{4}}." : ""),
            Figures = helps ? [Least(current.Low!.Value), Most(current.High!.Value), share, Least(best.Left!.Low!.Value), Most(best.Left.High!.Value)] : [Least(current.Low!.Value), Most(current.High!.Value), share],
            Remedy = (wired, helps) switch
            {
                (true, true) => $"Read its current at the bank with all its lamps lit: that settles it. Without a meter, {How(best.Unknown)}.",
                (true, false) => "Read its current at the bank with all its lamps lit: that settles it.",
                (false, true) => $"{char.ToUpperInvariant(How(best.Unknown)[0])}{How(best.Unknown)[1..]}.",
                _ => "Light one of its lamps at the bench before it goes in, and read its current.",
            },
        };
    }

    private static Figure Least(double amps) => Figure.Given("least", amps, "A", "all unknowns and tolerances at the low end", Certainty.Computed);

    private static Figure Most(double amps) => Figure.Given("most", amps, "A", "all unknowns and tolerances at the high end", Certainty.Computed);

    private static double Width(Figure? figure) => figure is { Low: { } low, High: { } high } ? Math.Abs(high - low) : 0;

    private static List<Unknown> Unknowns(BuildingResult building)
    {
        var unknowns = new List<Unknown>();
        if (building.Lamps.Any(l => l.PartUnknown))
        {
            unknowns.Add(Unknown.Lamp);
        }

        if (building.Lamps.Any(ResistorUnknown))
        {
            unknowns.Add(Unknown.Resistor);
        }

        if (building.Building.Wire == PartId.Unknown)
        {
            unknowns.Add(Unknown.Wire);
        }

        if (building.PairLength.Inputs.Any(i => i.Source.StartsWith("not known", StringComparison.Ordinal)))
        {
            unknowns.Add(Unknown.Length);
        }

        return unknowns;
    }

    // In a house that is glued down the resistors are out of sight; the colour is seen through the window, the wire at the bank.
    private static IEnumerable<Unknown> Reachable(BuildingResult building) =>
        Unknowns(building).Where(u => u != Unknown.Resistor || building.Building.State != BuildingState.Fixed);

    private static bool ResistorUnknown(LampResult lamp) => lamp.Resistor.Source.StartsWith("not known", StringComparison.Ordinal);

    private static Town Known(Town town, BuildingResult building, Unknown unknown)
    {
        var house = building.Building;
        var part = building.Lamps.FirstOrDefault(l => l.PartUnknown)?.Part.Id;
        var ohms = building.Lamps.FirstOrDefault(ResistorUnknown)?.Resistor.Value ?? 0;
        var resistor = ohms > 0 ? ResistorChoice.Of(Resistance.FromOhms(ohms)) : ResistorChoice.None;
        var known = unknown switch
        {
            Unknown.Wire => house with { Wire = building.Wire.Id },
            Unknown.Length => house with { PairLength = Length.FromMetres(building.PairLength.Value) },
            Unknown.Lamp => Lamps(house, l => l.Led == PartId.Unknown ? l with { Led = part } : l) with { Led = house.Led == PartId.Unknown ? part : house.Led },
            _ => Lamps(house, l => l.Resistor is { IsUnknown: true } ? l with { Resistor = resistor } : l) with { Resistor = house.Resistor is null or { IsUnknown: true } ? resistor : house.Resistor },
        };
        return town with { Buildings = town.Buildings.Select(b => b.Key == house.Key ? known : b).ToItemList() };
    }

    private static Building Lamps(Building house, Func<Lamp, Lamp> change) => house with
    {
        Storeys = house.Storeys.Select(s => s with { Rooms = s.Rooms.Select(r => r with { Lamps = r.Lamps.Select(change).ToItemList() }).ToItemList() }).ToItemList(),
    };

    private static string Called(Unknown unknown) => unknown switch
    {
        Unknown.Lamp => "its kind of lamp",
        Unknown.Resistor => "its resistor",
        Unknown.Wire => "its wire",
        _ => "the length of its pair",
    };

    private static string How(Unknown unknown) => unknown switch
    {
        Unknown.Lamp => "light it and name the colour behind its panes",
        Unknown.Resistor => "look in from above and read the figures or the bands of one resistor",
        Unknown.Wire => "measure how thick its wire is where it comes out",
        _ => "lay a thread along its way and measure that",
    };

    private enum Unknown
    {
        Lamp,
        Resistor,
        Wire,
        Length,
    }
}
