using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Study.Operation;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Sums;

/// <summary>How much current a pack can be asked for so that its lamps last the show.</summary>
public static class PackCapacity
{
    /// <summary>The current at which lamps like the town's usual one stay above half light until the show ends.</summary>
    /// <param name="town">The town, for its show, its usual lamp and its own parts.</param>
    /// <param name="supply">The pack.</param>
    /// <returns>Current, A; for a regulated supply its limit.</returns>
    public static double Amperes(Town town, Supply supply)
    {
        var part = Catalogue.FindSupply(town, supply.Part)!;
        if (part.CurrentLimit is { } limit)
        {
            return limit.Amperes * supply.Parallel;
        }

        var lamp = CommonestLamp(town);
        var volts = part.NominalVoltage.Volts * supply.Series;
        var ohms = town.Wiring.Resistor?.Value?.Ohms ?? Resolver.ResistorFor(lamp, volts, town.Wiring.LampCurrent?.Amperes ?? Usual.LampAmps);
        var query = new CarryingQuery(
            part, supply.Series, supply.Parallel, supply.ChargeLeft, Usual.HolderOhms + Usual.SwitchOhms, lamp, ohms, "",
            town.Show.HoursPerDay.Hours, town.Show.HoursPerDay.Hours * town.Show.Days, town.Show.DimShare, town.Show.SpoiledShare, town.Show.VisibleStep);
        var most = Math.Max(0, query.Answer().DimByEnd.Value - 1);
        return most * LampLaws.Of(lamp).At(volts, ohms).Amps;
    }

    /// <summary>What each building with lamps takes at the nominal voltage of its supply, which is how <see cref="Amperes"/> counts.</summary>
    /// <param name="town">The town.</param>
    /// <returns>The buildings in the order of the document.</returns>
    public static ItemList<BuildingLoad> Loads(Town town) => town.Buildings
        .Select(b => (Building: b, Lamps: Resolver.Lamps(town, b)))
        .Where(b => b.Lamps.Count > 0)
        .Select(b => new BuildingLoad(b.Building, b.Lamps.Count, b.Lamps.Sum(l => LampLaws.Of(l.Part).At(Resolver.NominalVolts(town, l.SwitchGroup), l.ResistorOhms.Typical + l.TailOhms).Amps)))
        .ToItemList();

    /// <summary>What each building's lamps on one switch take at the nominal voltage of its supply.</summary>
    /// <param name="town">The town.</param>
    /// <returns>One for each building and switch, in the order of the document; lamps that hang on no switch are not among them.</returns>
    public static ItemList<SwitchLoad> LoadsBySwitch(Town town) => town.Buildings
        .SelectMany(b => Resolver.Lamps(town, b).Where(l => l.SwitchGroup is not null).GroupBy(l => l.SwitchGroup!).Select(g => new SwitchLoad(
            b, g.Key, g.Count(), g.Sum(l => LampLaws.Of(l.Part).At(Resolver.NominalVolts(town, g.Key), l.ResistorOhms.Typical + l.TailOhms).Amps))))
        .ToItemList();

    private static LampPart CommonestLamp(Town town) =>
        town.Buildings.SelectMany(b => Resolver.Lamps(town, b)).GroupBy(l => l.Part).MaxBy(g => g.Count())?.Key ?? Usual.LampOf(town, null);
}

/// <summary>What a building takes.</summary>
/// <param name="Building">The building.</param>
/// <param name="Lamps">How many lamps it has.</param>
/// <param name="Amperes">Its current, A.</param>
public sealed record BuildingLoad(Building Building, int Lamps, double Amperes);

/// <summary>What a building takes of one switch.</summary>
/// <param name="Building">The building.</param>
/// <param name="SwitchGroup">The switch group's id.</param>
/// <param name="Lamps">How many lamps it has on it.</param>
/// <param name="Amperes">Their current, A.</param>
public sealed record SwitchLoad(Building Building, string SwitchGroup, int Lamps, double Amperes);
