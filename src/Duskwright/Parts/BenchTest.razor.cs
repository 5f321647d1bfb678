using Duskwright.Book.Drawings;
using Duskwright.Book.Houses;
using Duskwright.Plan.Document;
using Duskwright.Study.Mending;
using Duskwright.Study.Results;
using Duskwright.Towns;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>A test with its answers in reach of a thumb, and what may be wrong where it was not passed.</summary>
public partial class BenchTest
{
    // Millimetres of house to a millimetre of drawing: strokes and letters that are read at arm's length on a phone.
    private const double BoldPen = 2.2;
    private const int MostCauses = 4;
    private const double LeastShare = 0.02;

    private static readonly (string Value, string Word)[] Looks = [("lit", "lit"), ("dim", "dim"), ("dark", "dark"), ("flickers", "on and off")];

    [Parameter, EditorRequired]
    public BuildingResult House { get; set; } = default!;

    [Parameter, EditorRequired]
    public TestPoint Test { get; set; } = default!;

    /// <summary>Its last result; none where it was not made yet.</summary>
    [Parameter]
    public LogEntry? Last { get; set; }

    [Inject]
    private OpenTown Open { get; set; } = default!;

    private LogEntry? Failed => Last?.Passed == false ? Last : null;

    private TestVerdict? Verdict => Failed is { } failed ? Open.Study.Judge(House.Building.Key, Test.Key, BenchForm.Outcome(House, failed)) : null;

    private string Usual => Test.ShouldLight > 0 ? "lit" : "dark";

    private string Expect => (Test.ShouldLight, Test.Lamps.Count) switch
    {
        (0, _) => "Nothing should light.",
        (var n, 0) => $"{n} of {House.Lamps.Count} lamps should light, no more and no fewer.",
        (1, _) when Test.Leaks => "The lamp should light, and nothing but its windows glow.",
        (_, _) when Test.Leaks => "All lamps should light, and nothing but the windows glow.",
        (1, _) => "The lamp should light.",
        (2, _) => "Both lamps should light, alike.",
        (var n, _) => $"All {n} lamps should light, alike.",
    };

    private string AllRight => Test.Leaks ? "Only the windows glow" : Test.ShouldLight switch { 0 => "Nothing lights", var n when Test.IsCounted => $"{n} of {House.Lamps.Count} {(n == 1 ? "lights" : "light")}", 1 => "It lights", 2 => "Both light", var n => $"All {n} light" };

    private string NotRight => Test.Leaks ? "Not so" : Test.IsCounted ? "More or fewer" : Test.ShouldLight > 0 ? "Not all" : "Something lights";

    private Drawing? Picture => House.Panes.Count > 0 && Test.ShouldLight > 0 ? HouseElevation.Of(House, WallSide.Front, BoldPen, 1) : null;

    // Until the pair is at the bank, what to do there does not help; a lamp turned round or a leak is mended on the house.
    private List<(string Cause, string? Remedy)> Causes =>
        [.. (Verdict?.Causes ?? []).Where(s => s.Share >= LeastShare).Take(MostCauses).Select(s => ($"{Chance(s.Share)} {string.Join("; or ", s.Words)}.", Test.IsAtTheBank || s is { Dark.Count: 0, Dim.Count: 0 } ? s.Remedy : null))];

    private string Look => Failed?.Looks.Any(l => l.As == SeenAs.Flickers) == true
        ? "A lamp that goes on and off has a loose joint: bend each lead gently and watch."
        : "Touch the test pack, with its resistor, to each joint in turn from the lamp outwards: the first place where it stays dark is just past the break.";

    private static string Chance(double share) => share >= 0.995 ? "Almost certainly:" : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{Math.Max(1, share * 100):0} in 100:");
}
