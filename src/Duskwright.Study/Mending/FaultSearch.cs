using System.Collections.Immutable;
using Duskwright.Circuits.Metering;
using Duskwright.Faults.Finding;
using Duskwright.Faults.Signatures;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Study.Figures;
using Duskwright.Study.Results;

namespace Duskwright.Study.Mending;

/// <summary>Tells what may have broken on one pack, and what each fault would look like.</summary>
internal sealed class FaultSearch
{
    // Half a milliampere of a whole pack is not read apart.
    private const double LeastBand = 0.0005;

    // Two faults at once that are less likely than this are not told.
    private const double LeastPair = 0.02;

    // Currents closer than this are one reading to a hand-held meter.
    private const double SameShare = 0.03;

    // In the order in which it costs least of the house: common practice, no source.
    private const string AroundIt = "try a spare lead, a joint under the board, a new lamp or a light-guide strand from below, and last a cut along a hidden seam";

    private readonly FaultTable _faults;
    private readonly IReadOnlyDictionary<string, BuildingResult> _buildings;
    private readonly PackResult _pack;
    private readonly int _packIndex;

    private readonly Func<string, TestPointQuery?> _alone;
    private readonly Func<string, PairToRead?> _pair;
    private readonly Func<string, FaultTable> _onSwitch;
    private readonly FaultPriors _priors;

    internal FaultSearch(FaultTable faults, IReadOnlyDictionary<string, BuildingResult> buildings, PackResult pack, Func<string, TestPointQuery?> alone, Func<string, PairToRead?> pair, Func<string, FaultTable> onSwitch, FaultPriors priors)
    {
        (_faults, _buildings, _pack, _alone, _pair, _onSwitch, _priors) = (faults, buildings, pack, alone, pair, onSwitch, priors);
        _packIndex = faults.Circuit.Packs.Select((p, i) => (p, i)).First(p => p.p.Input.Supply == pack.Supply.Id).i;
    }

    /// <summary>Every fault of the pack, those that look alike together, in the order of the wiring.</summary>
    internal ItemList<FaultSuspect> All() => Together(FaultFinder.Rank(_faults.Table, Observation.Nothing, meter: false).Faults)
        .Select(group => Suspect(group, 0)).ToItemList();

    internal FaultAnswer Answer(FaultQuestion question)
    {
        var seen = Observation.Nothing;
        foreach (var (lamp, i) in Lamps())
        {
            var look = question.Lamps.GetValueOrDefault((lamp.Building, lamp.Input.Name), Seen.Lit);
            seen = look == Seen.Unknown ? seen : seen.Saw(i, look switch { Seen.Dark => LampLook.Dark, Seen.Dim => LampLook.Dim, _ => LampLook.Lit });
        }

        if (question.Amperes is { } amps)
        {
            var range = Meter.Fitting(Meter.Usual.CurrentRanges, Math.Abs(amps));
            seen = seen.Read(_packIndex, Read(amps));
            if (question.Volts is { } volts)
            {
                var (left, error) = (volts - (amps * range.Ohms), Meter.Fitting(Meter.Usual.VoltageRanges, volts).Show(volts).Error);
                seen = seen.Read(_packIndex, new VoltsReading(left - error, left + error));
            }
        }

        foreach (var pair in question.OffBank.GroupBy(r => r.Building, StringComparer.Ordinal))
        {
            seen = OffBank.Weigh(_alone(pair.Key), pair) is { } finding ? seen with { OffBank = seen.OffBank.Add(finding) } : seen;
        }

        foreach (var reading in question.OnSwitch.Where(r => _faults.Circuit.Packs[_packIndex].Input.Groups.Any(g => g.Id == r.SwitchGroup)))
        {
            seen = seen with { OffBank = seen.OffBank.Add(GroupMeter.Weigh(_onSwitch(reading.SwitchGroup).Table, Read(reading.Amperes), _priors)) };
        }

        // One that was read already is not asked for again.
        var pairs = Lamps().Select(l => l.Lamp.Building).Distinct(StringComparer.Ordinal)
            .Where(b => !question.OffBank.Any(r => r.Building == b && !r.IsDiodeRange))
            .Select(_pair)
            .OfType<PairToRead>()
            .ToList();
        var ranking = FaultFinder.Rank(_faults.Table, seen, meter: question.Amperes is null, _priors, pairs);
        var suspects = Together(ranking.Faults).Select(group => Suspect(group, group.Sum(f => f.Share))).OrderByDescending(s => s.Share).ToItemList();
        return new FaultAnswer(suspects, Words(ranking, pairs), ranking.OneFaultExplains)
        {
            Healthy = ranking.Healthy,
            OneFault = ranking.OneFault,
            Pairs = ranking.Pairs.Where(p => p.Probability > LeastPair && IsOfPack(p.One) && IsOfPack(p.Other)).Select(p => new SuspectPair($"{Words(p.One)}, and {Words(p.Other)}", p.Probability)).ToItemList(),
        };
    }

    // The meter's own error; what lengths, lamps and cells add is the finder's to know.
    private static AmpsReading Read(double amps)
    {
        var shown = Meter.Fitting(Meter.Usual.CurrentRanges, Math.Abs(amps)).Show(amps);
        var band = Math.Max(LeastBand, shown is { Shown: not null } ? shown.Error : Math.Abs(amps));
        return new AmpsReading(amps - band, amps + band);
    }

    private IEnumerable<(Wiring.CircuitLamp Lamp, int Index)> Lamps() => _faults.Circuit.Lamps.Select((l, i) => (l, i)).Where(l => l.l.Pack == _packIndex);

    // Only faults of this pack's own wiring; those that show the same are one suspect.
    private List<List<RankedFault>> Together(IEnumerable<RankedFault> faults)
    {
        var groups = new List<List<RankedFault>>();
        foreach (var fault in faults.Where(f => IsOfPack(f.Fault)))
        {
            var alike = groups.Find(g => Alike(g[0].Signature, fault.Signature));
            if (alike is null)
            {
                groups.Add([fault]);
            }
            else
            {
                alike.Add(fault);
            }
        }

        return groups;
    }

    private bool IsOfPack(Fault fault) => fault.Kind switch
    {
        FaultKind.CellFlat => fault.Index == _packIndex,
        FaultKind.PairOpen or FaultKind.PairShorted or FaultKind.PairReversed or FaultKind.PairNicked => _faults.Circuit.Lamps[_faults.Table.Tagged.Pairs[fault.Index].Lamps[0]].Pack == _packIndex,
        _ => _faults.Circuit.Lamps[fault.Index].Pack == _packIndex,
    };

    private bool Alike(Signature one, Signature other)
    {
        var (a, b) = (one.PackAmps[_packIndex], other.PackAmps[_packIndex]);
        return Math.Abs(a - b) <= Math.Max(LeastBand, SameShare * Math.Max(Math.Abs(a), Math.Abs(b))) && Lamps().All(l => one.Look(l.Index) == other.Look(l.Index));
    }

    private FaultSuspect Suspect(List<RankedFault> faults, double share) => new()
    {
        Words = faults.OrderByDescending(f => f.Share).Select(f => Words(f.Fault)).ToItemList(),
        Remedy = Remedy(faults.MaxBy(f => f.Share)!.Fault),
        Share = share,
        Explains = faults[0].Explains,
        Dark = Names(faults[0].Signature, LampLook.Dark),
        Dim = Names(faults[0].Signature, LampLook.Dim),
        IsWide = faults.Any(f => f.Fault.Kind is FaultKind.PairOpen or FaultKind.PairShorted or FaultKind.PairReversed or FaultKind.PairNicked or FaultKind.CellFlat),
        Current = Figure.Given("current of the pack with this fault", faults[0].Signature.PackAmps[_packIndex], "A", "the circuit solved with this fault in it", Certainty.Computed),
    };

    // A building all of whose lamps look so is named as a whole; where it has others on another pack, they are not among them.
    private ItemList<string> Names(Signature signature, LampLook look) => Lamps().GroupBy(l => l.Lamp.Building, StringComparer.Ordinal)
        .SelectMany(house =>
        {
            var so = house.Where(l => signature.Look(l.Index) == look).Select(l => l.Lamp.Input.Name).ToList();
            return so.Count < house.Count() ? so.Select(l => $"{Name(house.Key)} {l}")
                : HangsElsewhere(house.Key) ? [$"{Name(house.Key)} on pack {_pack.Number} ({string.Join(", ", so)})"]
                : [Name(house.Key)];
        }).ToItemList();

    private bool HangsElsewhere(string building) => _buildings[building].Lamps.Any(l => l.Supply != _pack.Supply.Id);

    private string Name(string building) => _buildings[building].Building.Name;

    private (string Lamp, string House, bool Gone) Place(Fault fault)
    {
        var (lamp, building) = fault.Kind is FaultKind.PairOpen or FaultKind.PairShorted or FaultKind.PairReversed or FaultKind.PairNicked
            ? ("", fault.Place)
            : fault.Kind == FaultKind.CellFlat ? ("", "") : (_faults.Circuit.Lamps[fault.Index].Input.Name, _faults.Circuit.Lamps[fault.Index].Building);
        if (building.StartsWith(FaultTableQuery.SharedPlace, StringComparison.Ordinal))
        {
            var run = building[FaultTableQuery.SharedPlace.Length..];
            return (lamp, _buildings.TryGetValue(run, out var house) ? house.Building.Name : $"tap {run}", true);
        }

        return building.Length == 0 ? (lamp, "", false) : (lamp, lamp.Length == 0 ? PairName(fault) : Name(building), _buildings[building].Building.State == BuildingState.Fixed);
    }

    // A house whose lamps hang on several switches has a pair for each.
    private string PairName(Fault fault) => HangsElsewhere(fault.Place) || _faults.Table.Tagged.Pairs.Count(p => p.Name == fault.Place) > 1
        ? $"{Name(fault.Place)} on switch {_faults.Circuit.Lamps[_faults.Table.Tagged.Pairs[fault.Index].Lamps[0]].Group}"
        : Name(fault.Place);

    private static bool IsShared(Fault fault) => fault.Place.StartsWith(FaultTableQuery.SharedPlace, StringComparison.Ordinal);

    private static string Pair(Fault fault) => IsShared(fault) ? "shared pair to" : "pair of";

    // Its ends are not both at the bank and in one house.
    private bool IsUnderway(Fault fault) => IsShared(fault) || BeginsUnderway(fault);

    private bool BeginsUnderway(Fault fault) => _faults.Circuit.Packs.SelectMany(p => p.Input.Groups).SelectMany(g => g.Pairs).Any(p => p.Building == fault.Place && p.Junction != 0);

    private string Words(Fault fault)
    {
        var (lamp, house, _) = Place(fault);
        return fault.Kind switch
        {
            FaultKind.PairOpen when IsShared(fault) => $"a joint of the shared pair to {house} is open",
            FaultKind.PairOpen => $"a joint of the pair of {house} is open, {(BeginsUnderway(fault) ? "where it begins" : "at the bank")} or in the house",
            FaultKind.PairShorted => $"the two wires of the {Pair(fault)} {house} touch",
            FaultKind.PairReversed => $"the {Pair(fault)} {house} is joined the wrong way round",
            FaultKind.PairNicked => $"a wire or joint of the {Pair(fault)} {house} has gone bad and lets too little through",
            FaultKind.LampJointOpen => $"a joint of lamp {lamp} in {house} is open",
            FaultKind.LampShorted => $"the leads of lamp {lamp} in {house} touch",
            FaultKind.LampReversed => $"lamp {lamp} in {house} is the wrong way round",
            FaultKind.LampDead => $"the LED of lamp {lamp} in {house} is dead",
            FaultKind.CellFlat => $"one cell of pack {_pack.Number} is flat",
            _ => throw new ArgumentOutOfRangeException(nameof(fault), fault.Kind, "This kind of fault is not known."),
        };
    }

    private string Remedy(Fault fault)
    {
        var (lamp, house, gone) = Place(fault);
        return fault.Kind switch
        {
            FaultKind.PairOpen or FaultKind.PairNicked when IsUnderway(fault) => $"Touch a fresh test pack, plus to plus, to each joint that can be reached on the way, the farthest first: the bad place lies before the first from which the lamps light. If none can be reached, {AroundIt}.",
            FaultKind.PairShorted when IsUnderway(fault) => "Take the shared pair off the bank at once: a short heats the wire in the card. Then part its joints one by one, those that can be reached, until the rest is clear.",
            FaultKind.PairReversed when IsUnderway(fault) => "Swap its two ends at the nearest joint that can be reached; at the bank this turns every lamp on the shared pair round.",
            FaultKind.PairOpen => $"Undo its ends at the bank, touch them to a fresh test pack, plus to plus. Lit: the joint at the bank was bad. Dark: the break is {(gone ? $"inside {house}, which cannot be reached any more: {AroundIt}; else leave its ends off the bank" : $"in the pair or inside {house}; lift the roof and touch the test pack to each joint in turn")}.",
            FaultKind.PairShorted => $"Take its ends off the bank at once: a short heats the wire in the card. {(gone ? $"{house} cannot be reached any more; leave it off." : "Then look for bare ends and solder that touch.")}",
            FaultKind.PairReversed => "Swap its two ends at the bank.",
            FaultKind.PairNicked => $"Undo its ends at the bank, cut back to bright wire and join them anew. Still dim: the bad place is {(gone ? $"inside {house}, which cannot be reached any more" : $"in the pair or inside {house}; lift the roof, bend each joint gently and watch the lamps")}.",
            FaultKind.LampJointOpen or FaultKind.LampDead => gone ? $"{house} cannot be reached any more; the other lamps are not harmed by it. To light its room, {AroundIt}." : $"Touch the test pack, with a resistor, to the lamp itself: lit means a joint, dark means the LED.",
            FaultKind.LampShorted => gone ? $"{house} cannot be reached any more. Its resistor takes the whole pack voltage: if it grows warm, take the pair off the bank." : $"Part the leads of {lamp} and sleeve them.",
            FaultKind.LampReversed => gone ? $"{house} cannot be reached any more; the other lamps are not harmed by it." : $"Unsolder {lamp} and turn it: the long leg is plus.",
            FaultKind.CellFlat => $"Change all {_pack.Words} of pack {_pack.Number} together, never one alone.",
            _ => throw new ArgumentOutOfRangeException(nameof(fault), fault.Kind, "This kind of fault is not known."),
        };
    }

    // Who has no meter is told where to look instead.
    private string? Words(FaultRanking ranking, List<PairToRead> pairs) => (ranking.Next, ranking.NextByEye) switch
    {
        (null, _) => null,
        ({ Kind: LookKind.SeeLamp } look, _) => $"Look at {Lamp(look)}.",
        ({ } reading, null) => Reading(reading, pairs),
        ({ } reading, { } look) => $"{Reading(reading, pairs)} Without one, look at {Lamp(look)}.",
    };

    private string Lamp(NextLook look) => $"{_faults.Circuit.Lamps[look.Index].Input.Name} of {Name(_faults.Circuit.Lamps[look.Index].Building)}";

    private string Reading(NextLook next, List<PairToRead> pairs)
    {
        if (next.Kind == LookKind.ReadPack)
        {
            return $"If you have a meter, put it in line at pack {_pack.Number} and read the current; all well would be {FigureText.Of(_faults.Table.Healthy.PackAmps[_packIndex], "A")}.";
        }

        var pair = pairs[next.Index];
        var touching = pair.Faulty[(FaultKind.PairShorted, pair.Name)] is { } ohms ? $"wires that touch {FigureText.Of(ohms, "Ω")}" : "wires that touch next to none";
        var sound = pair.Sound is { } well ? FigureText.Of(well, "Ω") : "no number";
        return $"If you have a meter: power off, take the pair of {Name(pair.Name)}{(HangsElsewhere(pair.Name) ? $" on pack {_pack.Number}" : "")} off the bank and read the ohms between its ends. Sound lamps show {sound}, {touching}.";
    }
}
