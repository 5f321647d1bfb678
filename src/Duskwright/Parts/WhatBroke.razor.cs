using System.Globalization;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Study.Mending;
using Duskwright.Study.Results;
using Duskwright.Towns;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>The maker says which lamps of a pack are dark or dim; what may have broken is told beside it.</summary>
public partial class WhatBroke
{
    private const int Shown = 5;

    // What stands over the foot of a phone's page must leave the lamps in sight.
    private const int ShownAtOnce = 3;
    private const double LeastShare = 0.005;
    private const double LeastHealthy = 0.05;
    private const double MostVolts = 50;
    private const double MostMilliamperes = 100_000;

    private readonly Dictionary<(string Building, string Lamp), Seen> _looks = [];
    private readonly Dictionary<string, IReadOnlyList<OffBankReading>> _offBank = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> _onSwitch = new(StringComparer.Ordinal);
    private string _reading = "";
    private string _volts = "";
    private int _cleared;

    [Parameter, EditorRequired]
    public PackResult Pack { get; set; } = default!;

    [Inject]
    private OpenTown Open { get; set; } = default!;

    [Inject]
    private NavigationManager Navigation { get; set; } = default!;

    private FaultAnswer? Answer => _looks.Values.All(l => l == Seen.Lit) && Amperes is null && OffBank.Count == 0 && OnSwitch.Count == 0
        ? null
        : Open.Study.WhatBroke(new FaultQuestion(Pack.Supply.Id, _looks, Amperes, Volts) { OffBank = OffBank, OnSwitch = OnSwitch });

    private List<SwitchGroup> Groups => [.. Open.Town.SwitchGroups.Where(g => g.Supply == Pack.Supply.Id && Open.Study.Lamps.Any(l => l.SwitchGroup == g.Id))];

    private ItemList<SwitchReading> OnSwitch => _onSwitch.Select(r => (r.Key, Value: Number(r.Value))).Where(r => r.Value is not null).Select(r => new SwitchReading(r.Key, r.Value!.Value / 1000)).ToItemList();

    private ItemList<OffBankReading> OffBank => _offBank.Values.SelectMany(r => r).ToItemList();

    private double? Amperes => Number(_reading) is { } milliamperes ? milliamperes / 1000 : null;

    private double? Volts => Number(_volts) is > 0 and <= MostVolts and var volts ? volts : null;

    private string? ReadingSaid =>
        _onSwitch.Values.FirstOrDefault(v => v.Trim().Length > 0 && Number(v) is null) is { } wrong ? $"“{wrong}” is not a current; write milliamperes, 163 or 16,5." :
        _reading.Trim().Length > 0 && Amperes is null ? $"“{_reading}” is not a current; write milliamperes, 163 or 16,5."
        : _volts.Trim().Length > 0 && Volts is null ? $"“{_volts}” is not the volts of a pack; write volts, 4.4 or 4,4."
        : Volts is not null && Amperes is null ? "Volts tell how full the cells are only together with the current." : null;

    private static double? Number(string text) =>
        double.TryParse(text.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && Math.Abs(value) <= MostMilliamperes ? value : null;

    private static string Chance(double share) => share >= 0.995 ? "Almost certainly" : string.Create(CultureInfo.InvariantCulture, $"{Math.Max(1, share * 100):0} in 100:");

    private static string Likeliest(FaultAnswer answer)
    {
        var (one, alone) = (answer.Suspects[0], answer.Suspects[0].Share * answer.OneFault);
        return answer.Pairs is [var two, ..] && two.Probability > alone ? $"{Chance(two.Probability)} {two.Words}" : $"{Chance(alone)} {string.Join("; or ", one.Words.Take(ShownAtOnce))}{(one.Words.Count > ShownAtOnce ? $"; or one of {one.Words.Count - ShownAtOnce} more" : "")}";
    }

    private static string Breaking(Breaks what) => what switch
    {
        Breaks.PairJoint => "A joint of a pair comes apart",
        Breaks.PairShort => "The wires of a pair touch",
        Breaks.PairReversed => "A pair is joined the wrong way round",
        Breaks.PairNicked => "A wire is nicked, or a joint goes bad",
        Breaks.LampJoint => "A joint of a lamp comes apart",
        Breaks.LampShort => "The leads of a lamp touch",
        Breaks.LampReversed => "A lamp is the wrong way round",
        Breaks.LampDead => "A lamp is dead",
        _ => "A cell is flat before its time",
    };

    private void Tell(Breaks what, HowOften? how) =>
        Open.Apply(new TellBreakage(what, how, $"{Breaking(what)} {(how switch { HowOften.Often => "oftener", HowOften.Seldom => "more seldom", _ => "as usual" })}"));

    private static string Word(Seen seen) => seen switch { Seen.Dark => "dark", Seen.Dim => "dim", Seen.Unknown => "cannot see it", _ => "lit" };

    private Seen Look(LampResult lamp) => _looks.GetValueOrDefault((lamp.Building, lamp.Name), Seen.Lit);

    // A short darkens every house of the pack, and each of them is then asked for.
    private bool IsSuspect(string building, IEnumerable<LampResult> lamps) => _offBank.ContainsKey(building) || lamps.Any(l => Look(l) is Seen.Dark or Seen.Dim);

    private void Turn(LampResult lamp) => _looks[(lamp.Building, lamp.Name)] = Look(lamp) switch { Seen.Lit => Seen.Dark, Seen.Dark => Seen.Dim, Seen.Dim => Seen.Unknown, _ => Seen.Lit };

    private void Clear()
    {
        _looks.Clear();
        _offBank.Clear();
        _onSwitch.Clear();
        _cleared++;
        (_reading, _volts) = ("", "");
    }
}
