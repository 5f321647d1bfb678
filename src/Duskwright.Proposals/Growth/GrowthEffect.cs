using System.Globalization;
using Duskwright.Plan;
using Duskwright.Plan.Parts;
using Duskwright.Study;
using Duskwright.Study.Results;

namespace Duskwright.Proposals.Growth;

/// <summary>What a new building does to a town when it is tied in at one place, from the results of the town with it.</summary>
/// <param name="Option">The place.</param>
/// <param name="Lamps">How the fresh light of every lamp that was there changes.</param>
/// <param name="Packs">Every pack whose load changes, and one that is added.</param>
/// <param name="DropVolts">What is lost on the way to the new building, V.</param>
/// <param name="Evenness">Its faintest lamp against the brightest of its kind on the pack, as lightness L*.</param>
/// <param name="Against">Why it will not do, a sentence each; none where it holds.</param>
public sealed record GrowthEffect(TieInOption Option, ItemList<LampChange> Lamps, ItemList<PackChange> Packs, double DropVolts, double Evenness, ItemList<string> Against)
{
    /// <summary>Whether the new building and everybody else shine as they should until the show ends.</summary>
    public bool Holds => Against.Count == 0;

    /// <summary>How far its pack is over what it can do, as a ratio: of the show to its hours, of its load to its limit or to what its fuse holds, whichever is most.</summary>
    internal double Overdrawn { get; private init; }

    /// <summary>The lamp that loses the most; none where no lamp was there.</summary>
    public LampChange? Worst => Lamps.MinBy(l => l.LightShare);

    internal static GrowthEffect Of(TownStudy before, TieInOption option)
    {
        var after = before.After(option.Edit.Apply(before.Town));
        var was = before.Packs.ToDictionary(p => p.Supply.Id, StringComparer.Ordinal);
        var packs = after.Packs
            .Where(p => p.Lamps > 0)
            .Select(p => new PackChange(p.Number, p.Supply.Id, was.GetValueOrDefault(p.Supply.Id)?.Load?.Value, p.Load!.Value, was.GetValueOrDefault(p.Supply.Id)?.HoursToDim?.Value, p.HoursToDim?.Value))
            .Where(p => p.Supply == option.Supply || p.AmpsBefore != p.AmpsAfter)
            .ToItemList();
        var added = after.Buildings.First(b => b.Building.Key == option.Edit.Added.Key);
        var pack = after.Packs.First(p => p.Supply.Id == option.Supply);
        return new GrowthEffect(
            option,
            after.LampsSince(before),
            packs,
            added.PairDrop?.Value ?? 0,
            added.Lamps.Min(l => l.Evenness ?? 100),
            option.Against.Concat(OfPack(after, pack)).Concat(Faint(before, after)).ToItemList())
        {
            Overdrawn = new[]
            {
                pack.HoursToDim is { } dim ? after.Town.Show.HoursPerDay.Hours * after.Town.Show.Days / dim.Value : 0,
                pack.Part.CurrentLimit is { } limit ? pack.Load!.Value / (limit.Amperes * pack.Supply.Parallel) : 0,
                pack.Supply.Fuse is { } fuse ? pack.Load!.Value / Catalogue.FindFuse(after.Town, fuse)!.Hold.Amperes : 0,
            }.Max(),
        };
    }

    private static IEnumerable<string> OfPack(TownStudy after, PackResult pack)
    {
        var show = after.Town.Show;
        var hours = show.HoursPerDay.Hours * show.Days;
        if (pack.HoursToDim is { } dim && dim.Value < hours)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"Pack {pack.Supply.Id} would fall below half light after {dim.Value:0.0} h; the show is {hours:0.#} h.");
        }

        if (pack.Part.CurrentLimit is { } limit && pack.Load!.Value > limit.Amperes * pack.Supply.Parallel * PackRoom.Full)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"Pack {pack.Supply.Id} would be asked for {1000 * pack.Load.Value:0} mA and gives {1000 * limit.Amperes * pack.Supply.Parallel:0} mA at most.");
        }

        if (pack.Supply.Fuse is { } id && Catalogue.FindFuse(after.Town, id)! is var fuse && pack.Load!.Value > fuse.Hold.Amperes)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"Pack {pack.Supply.Id} would carry {1000 * pack.Load.Value:0} mA, more than the {1000 * fuse.Hold.Amperes:0} mA its fuse holds for ever.");
        }
    }

    // Houses whose lamps are seen to be fainter than their like and were not before.
    private static IEnumerable<string> Faint(TownStudy before, TownStudy after)
    {
        var least = 100 - after.Town.Show.VisibleStep;
        double Faintest(BuildingResult b) => b.Lamps.Select(l => l.Evenness ?? 100).DefaultIfEmpty(100).Min();
        var already = before.Buildings.Where(b => Faintest(b) < least).Select(b => b.Building.Key).ToHashSet(StringComparer.Ordinal);
        return after.Buildings
            .Where(b => Faintest(b) < least && !already.Contains(b.Building.Key))
            .Select(b => string.Create(CultureInfo.InvariantCulture, $"A lamp of {b.Building.Name} would be seen to be fainter than its like, by {100 - Faintest(b):0} of lightness."));
    }
}

/// <summary>What a pack carries and how long it lasts, before and after.</summary>
/// <param name="Number">Its number on every drawing.</param>
/// <param name="Supply">Its id.</param>
/// <param name="AmpsBefore">Its load with all on, A; none for a pack that is added or carried nothing.</param>
/// <param name="AmpsAfter">The same afterwards, A.</param>
/// <param name="HoursBefore">Hours until its worst lamp is dim; none where it never is.</param>
/// <param name="HoursAfter">The same afterwards, h.</param>
public sealed record PackChange(int Number, string Supply, double? AmpsBefore, double AmpsAfter, double? HoursBefore, double? HoursAfter);
