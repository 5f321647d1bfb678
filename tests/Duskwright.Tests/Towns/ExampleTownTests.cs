using System.Collections.Immutable;
using Duskwright.Book.Sheets;
using Duskwright.Plan.Checks;
using Duskwright.Study;
using Duskwright.Study.Findings;
using Duskwright.Study.Mending;
using Duskwright.Study.Results;
using Duskwright.Towns;
using UglyToad.PdfPig;

namespace Duskwright.Tests.Towns;

/// <summary>The towns that come with the program: each is sound, studied, printed, mended and checked by hand.</summary>
public sealed class ExampleTownTests : IDisposable
{
    private static readonly Dictionary<string, TownStudy> Studies = ExampleTown.All.Where(e => e.File != "saltmarrow.json").ToDictionary(e => e.File, e => TownStudy.Of(e.Town));

    private readonly DirectoryInfo _home = Directory.CreateTempSubdirectory("duskwright-");

    public static TheoryData<string> OtherKinds => [.. Studies.Keys];

    public void Dispose() => _home.Delete(recursive: true);

    [Theory]
    [MemberData(nameof(OtherKinds))]
    public void An_example_has_no_problem_and_every_lamp_burns(string file)
    {
        Assert.Empty(TownChecks.Of(Studies[file].Town));
        Assert.All(Studies[file].Lamps, l => Assert.True(l.Current!.Value > 0.0005, $"{l.Name} of {l.Building}"));
    }

    [Theory]
    [InlineData("wheel-and-kettle.json")]
    [InlineData("fennimarsh.json")]
    [InlineData("quillet-house.json")]
    [InlineData("tallowgate.json")]
    [InlineData("ottersluice.json")]
    public void A_well_planned_example_has_nothing_to_mend(string file) =>
        Assert.All(Studies[file].Findings, f => Assert.True(f.Severity == Severity.Sound, f.Text));

    [Fact]
    public void All_that_is_wrong_with_the_inherited_town_is_told_in_its_own_notes()
    {
        var study = Studies["old-pellmere.json"];
        var wrong = study.Findings.Where(f => f.Severity != Severity.Sound).ToList();
        Assert.Equal(["measure-first", "no-fuse", "not-known"], wrong.Select(f => f.Rule).Distinct().Order(StringComparer.Ordinal));
        Assert.All(wrong, f => Assert.Contains(
            f.Rule == "no-fuse" ? "without a fuse" : "nobody knows",
            f.Subject.Kind == SubjectKind.Supply ? study.Town.Log.First(l => l.Supply == f.Subject.Key).Note! : study.Town.Buildings.Single(b => b.Key == f.Subject.Key).Note!,
            StringComparison.Ordinal));
        Assert.Equal(5, wrong.Count(f => f.Rule == "not-known"));
    }

    [Theory]
    [MemberData(nameof(OtherKinds))]
    public void The_book_of_an_example_prints_and_has_a_sheet_for_each_of_its_buildings(string file)
    {
        using var stream = new MemoryStream();
        var pages = BenchBook.WritePdf(Studies[file], new BookOptions(PaperSize.A4, new DateOnly(2026, 11, 26)), stream, cancel: TestContext.Current.CancellationToken);
        using var book = PdfDocument.Open(stream.ToArray());
        Assert.Equal(pages, book.NumberOfPages);
        var heads = book.GetPages().Select(p => string.Join(' ', p.GetWords().Select(w => w.Text))).ToList();
        Assert.All(Studies[file].Buildings, b => Assert.Contains(heads, h => h.StartsWith(b.Building.Name, StringComparison.Ordinal)));
    }

    // What each fault darkens is a fact of parallel circuits: common practice, no source.
    [Theory]
    [InlineData("wheel-and-kettle.json", "1", "a joint of lamp hearth in The Wheel and Kettle is open", "The Wheel and Kettle hearth")]
    [InlineData("wheel-and-kettle.json", "1", "a joint of the pair of The Wheel and Kettle on switch B is open, at the bank or in the house", "The Wheel and Kettle L5,The Wheel and Kettle L6,The Wheel and Kettle L7,The Wheel and Kettle L8")]
    [InlineData("fennimarsh.json", "1", "the pair of Reed chapel is joined the wrong way round", "Reed chapel")]
    [InlineData("quillet-house.json", "2", "the LED of lamp L9 in Quillet House is dead", "Quillet House L9")]
    [InlineData("tallowgate.json", "2", "a joint of the pair of Lane lamp box is open, at the bank or in the house", "Lane lamp box")]
    [InlineData("ottersluice.json", "1", "a joint of the pair of Wherry is open, at the bank or in the house", "Wherry")]
    [InlineData("old-pellmere.json", "1", "a joint of the pair of Corn exchange is open, at the bank or in the house", "Corn exchange")]
    public void A_fault_put_into_an_example_darkens_what_hangs_behind_it_and_is_among_the_first_three_suspects(string file, string pack, string fault, string dark)
    {
        var study = Studies[file];
        var seeded = study.Faults(pack).Single(f => f.Words.Contains(fault));
        Assert.Equal(dark.Split(','), seeded.Dark);
        var looks = study.Lamps.Where(l => l.Supply == pack).ToImmutableDictionary(l => (l.Building, l.Name), l => Look(study, seeded, l));
        var answer = study.WhatBroke(new FaultQuestion(pack, looks, seeded.Current.Value));
        Assert.Contains(answer.Suspects.Take(3), s => s.Words.Contains(fault));
        Assert.True(answer.OneFaultExplains);
    }

    [Fact]
    public void A_break_under_the_resin_is_said_to_be_out_of_reach()
    {
        var study = Studies["ottersluice.json"];
        var answer = study.WhatBroke(new FaultQuestion("1", new Dictionary<(string, string), Seen> { [("jetty-light", "L1")] = Seen.Dark }, null));
        Assert.Contains("cannot be reached any more", answer.Suspects[0].Remedy, StringComparison.Ordinal);
    }

    // Common practice, no source: white 2.70 V + 0.055 V × ln(I/1 mA) + 12 Ω × (I − 1 mA), amber 1.75, 0.05 and 8; a fresh alkaline cell
    // 1.6 V, a charged NiMH cell 1.42 V (1.4 to 1.45). What the pack and the wires lose is left out: less than 2 % of the volts over the resistor.
    [Theory]
    [InlineData("wheel-and-kettle.json", "the-wheel-and-kettle", "L1", 4.8, 820, 2.70, 0.055, 12)]
    [InlineData("wheel-and-kettle.json", "gate-lantern", "L1", 4.8, 1200, 1.75, 0.05, 8)]
    [InlineData("tallowgate.json", "beeswax-cottage", "L1", 5.68, 1000, 2.70, 0.055, 12)]
    [InlineData("tallowgate.json", "lane-lamp-box", "L1", 5.68, 220, 2.70, 0.055, 12)]
    [InlineData("ottersluice.json", "toll-house", "L1", 4.8, 820, 2.70, 0.055, 12)]
    [InlineData("ottersluice.json", "wherry", "L1", 4.8, 1200, 1.75, 0.05, 8)]
    [InlineData("old-pellmere.json", "saddler", "L1", 4.8, 820, 2.70, 0.055, 12)]
    public void A_lamp_takes_what_its_resistor_and_its_curve_leave_it_by_hand(string file, string building, string lamp, double volts, double ohms, double curve, double perE, double inside)
    {
        // The volts over the resistor, improved until they no longer move.
        var amps = (volts - curve) / ohms;
        for (var i = 0; i < 30; i++)
        {
            amps = (volts - curve - (perE * Math.Log(amps / 0.001)) - (inside * (amps - 0.001))) / ohms;
        }

        Assert.Equal(1, Lamp(file, building, lamp).Current!.Value / amps, 0.03);
    }

    // A ready-wired lamp for 5 V is a white lamp behind 470 Ω. Fifteen lamps take about 73 mA, and the port's 0.25 Ω with the fuse's 1.5 Ω lose 0.13 V
    // of it; a white lamp at 4.4 mA keeps 2.70 + 0.055 × ln 4.4 + 12 Ω × 3.4 mA = 2.82 V: (4.87 − 2.82) V ÷ 470 Ω = 4.4 mA. Common practice, no source.
    [Fact]
    public void A_ready_wired_lamp_on_a_tile_takes_about_four_milliamperes_and_a_half() => Assert.Equal(4.4e-3, Lamp("fennimarsh.json", "ferry-house", "L1").Current!.Value, 0.1e-3);

    // Filament current goes with the 0.55th power of the volts (handbook rule for lamps near their rated volts, from memory).
    // Six bulbs and 0.36 A lose volts in the adaptor's 0.2 Ω and the fuse's 0.52 Ω, a floor's 0.18 A in its pair of 0.705 m of 22 AWG at 0.053 Ω/m
    // and its switch, a bulb's own in 0.4 m of 28 AWG at 0.21 Ω/m. Wires: common practice, no source.
    [Fact]
    public void An_old_bulb_takes_its_sixty_milliamperes_less_what_fuse_and_wires_keep()
    {
        var lost = (0.36 * (0.2 + 0.52)) + (0.18 * ((2 * 0.053 * 0.705) + 0.05)) + (0.06 * 2 * 0.21 * 0.4);
        Assert.Equal(0.060 * Math.Pow((12 - lost) / 12, 0.55), Lamp("quillet-house.json", "quillet-house", "L1").Current!.Value, 0.0003);
    }

    // An unknown lamp may be white behind 1 kΩ, (4.8 − 2.9) V ÷ 1 kΩ = 1.9 mA, or yellow at its 20 mA; a known one keeps to 5 % of its resistor
    // and 0.2 V of the 2 V over it, 0.86 to 1.16 of the middle. Common practice, no source.
    [Fact]
    public void What_nobody_knows_is_a_wide_range_and_what_was_opened_is_not()
    {
        double Width(string key) => Studies["old-pellmere.json"].Buildings.Single(b => b.Building.Key == key).Current is { } c ? c.High!.Value / c.Low!.Value : 0;
        Assert.True(Width("minster") > 5);
        Assert.InRange(Width("post-house"), 1.1, 1.5);
    }

    [Fact]
    public void A_house_on_several_switches_has_a_pair_a_label_and_a_lead_for_each()
    {
        var study = Studies["quillet-house.json"];
        Assert.Equal(["A1", "B1", "C1", "D1"], study.Labels.Select(l => l.Terminal));
        Assert.Equal([1, 1, 2, 2], study.Labels.Select(l => l.Circuit));
        Assert.Equal(4, study.CutList.Count(c => c.For.StartsWith("pair", StringComparison.Ordinal)));
    }

    [Fact]
    public void What_lies_under_the_resin_is_neither_cut_nor_moved_again()
    {
        var study = Studies["ottersluice.json"];
        var sealedIn = new[] { "patient-maud-a-barge", "wherry", "jetty-light" };
        Assert.All(study.Town.Routes.Where(r => sealedIn.Contains(r.Building)), r => Assert.True(r.Laid));
        Assert.All(study.CutList.Where(c => c.For.Contains("Wherry", StringComparison.Ordinal)), c => Assert.True(c.Laid));
    }

    [Fact]
    public void An_example_is_looked_at_without_a_file_and_its_first_change_begins_one()
    {
        using var open = OpenTown.FromFile(null, _home.FullName).Town!;
        var tiles = ExampleTown.All.Single(e => e.File == "fennimarsh.json");
        Assert.Empty(open.TurnTo(tiles));
        Assert.Equal(("Fennimarsh", null), (open.Town.Name, open.FilePath));
        Assert.Empty(open.Replace(open.Town with { Note = "mine" }, "Note it"));
        Assert.Equal(Path.Combine(_home.FullName, "fennimarsh.town"), open.FilePath);
        Assert.NotEqual("mine", tiles.Town.Note);
    }

    private static Seen Look(TownStudy study, FaultSuspect fault, LampResult lamp)
    {
        var house = study.Buildings.Single(b => b.Building.Key == lamp.Building).Building.Name;
        bool Among(IEnumerable<string> names) => names.Any(n => n == house || n == $"{house} {lamp.Name}");
        return Among(fault.Dark) ? Seen.Dark : Among(fault.Dim) ? Seen.Dim : Seen.Lit;
    }

    private static LampResult Lamp(string file, string building, string lamp) => Studies[file].Lamps.Single(l => l.Building == building && l.Name == lamp);
}
