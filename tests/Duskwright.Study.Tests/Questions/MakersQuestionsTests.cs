using System.Text.RegularExpressions;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Study.Questions;
using Duskwright.Study.Sums;

namespace Duskwright.Study.Tests.Questions;

/// <summary>Each question through the code that screen and command line use, against numbers got without it.</summary>
public partial class MakersQuestionsTests
{
    // The white lamp of these sums: V = 2.70 + 0.055·ln(I ÷ 1 mA) + 12 Ω·(I − 1 mA). Common practice, no source.
    private static double WhiteVolts(double amps) => 2.70 + (0.055 * Math.Log(amps / 0.001)) + (12 * (amps - 0.001));

    // The same lamp through a resistor, by halving: where the volts of lamp and resistor make those of the supply.
    private static double WhiteAmps(double volts, double ohms)
    {
        var (low, high) = (1e-9, 0.05);
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = WhiteVolts(middle) + (ohms * middle) > volts ? (low, middle) : (middle, high);
        }

        return low;
    }

    private static SumAnswer Ask(string verb, params (string Option, object Value)[] said)
    {
        var question = MakersQuestions.Find(verb)!;
        var given = said.Aggregate(Given.Nothing, (g, s) => question.Asks.Single(a => a.Option == s.Option) switch
        {
            AskedNumber number => g.With(number, Convert.ToDouble(s.Value, System.Globalization.CultureInfo.InvariantCulture)),
            AskedChoice choice => g.With(choice, (string)s.Value),
            _ => g,
        });
        Assert.Null(question.Refused(given));
        return question.Answer(given);
    }

    private static double Value(SumAnswer answer, string name) => answer.Figures.First(f => f.Name == name).Value;

    // By hand: (4.5 − 2.75) ÷ 2 mA = 875 Ω, so 1 kΩ, and 820 Ω below it; grey, red, brown by IEC 60062. Heat 0.002² × 820 = 3.3 mW.
    [Fact]
    public void Three_cells_and_warm_white_at_two_milliamperes_take_1_kilohm_or_820_ohms()
    {
        var answer = Ask("resistor");
        Assert.Equal(1000, answer.Headline.Value, 1e-9);
        Assert.Equal(WhiteAmps(4.5, 1000), Value(answer, "current"), 2e-5);
        Assert.Contains("820", answer.Steps[0], StringComparison.Ordinal);
        Assert.Contains("grey, red, brown, gold", answer.Steps[0], StringComparison.Ordinal);
        Assert.Contains("plenty", answer.Text, StringComparison.Ordinal);
    }

    // Two equal-law lamps 0.2 V apart above and below the mean, behind one resistor: by halving on the volts they share.
    [Fact]
    public void Eight_lamps_behind_one_resistor_share_unequally()
    {
        var answer = Ask("share");
        Assert.Equal("No", answer.Verdict);
        Assert.InRange(Value(answer, "current of the greediest") / Value(answer, "current of the laziest"), 10, double.MaxValue);
        var amps = Spread(SharedVolts(4.5, 150, 8), 8);
        Assert.Equal(amps[0], Value(answer, "current of the greediest"), 3e-5);
        Assert.Equal(amps[^1], Value(answer, "current of the laziest"), 3e-5);
    }

    // Common practice, no source: white pairs may share from 9 V, white triples from 12 V, amber pairs from 5 V, and nothing on 4.5 V.
    [Theory]
    [InlineData("LR6", 3, "led-0603-warm-white", "not enough for two")]
    [InlineData("LR6", 3, "led-0603-amber", "not enough for two")]
    [InlineData("usb-5v", 1, "led-0603-amber", "2 in a row")]
    [InlineData("adaptor-9v", 1, "led-0603-warm-white", "2 in a row")]
    [InlineData("adaptor-12v", 1, "led-0603-warm-white", "3 in a row")]
    public void Only_lamps_in_a_row_share_a_resistor_and_only_on_volts_enough(string cell, int cells, string lamp, string words) =>
        Assert.Contains(words, Ask("share", ("cell", cell), ("cells", cells), ("lamp", lamp)).Text, StringComparison.Ordinal);

    // Common practice, no source: current left at 1.4 V a cell, of that at 1.55 V: two cells, white and 47 Ω 28 %; amber and 560 Ω 78 %, and red is as amber.
    [Fact]
    public void White_on_two_cells_dies_down_while_red_carries_on()
    {
        var answer = Ask("fades");
        Assert.Equal(0.28, answer.Figures[0].Value, 0.01);
        Assert.Equal(0.78, answer.Figures[1].Value, 0.02);
    }

    // Common practice, no source: 24 lamps of 820 Ω on three AA, about 32 h to half, 73 % after seven hours and 64 % after fourteen.
    [Fact]
    public void Two_dozen_lamps_last_a_weekend_fair_of_seven_hours_a_day()
    {
        var answer = Ask("fair");
        Assert.Equal("Yes", answer.Verdict);
        Assert.InRange(answer.Figures[2].Value, 32 * 0.85, 32 * 1.15);
        Assert.Equal([73, 64], answer.Steps.Select(s => double.Parse(Percent().Match(s).Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture)), (a, b) => Math.Abs(a - b) < 4);
    }

    // Common practice, no source: 30, 60, 90, 120 lamps, 820 Ω, three AA: 26, 13, 8 and 6 h to half the current, to a quarter of each.
    [Theory]
    [InlineData(1, 26)]
    [InlineData(2, 13)]
    [InlineData(3, 8)]
    [InlineData(4, 6)]
    public void Run_time_falls_with_the_number_of_lamps(int row, double hours) =>
        Assert.InRange(double.Parse(HoursIn().Match(Ask("lamps").Steps[row]).Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture), hours * 0.75, hours * 1.25);

    // By hand: 1.2 m of 0.10 mm copper, 2 × 1.2 × 2.195 = 5.27 Ω; n lamps on a shared r act on each like n·r: 15 × 5.27 = 79 Ω more beside 820 Ω, so (I − I') ÷ I by the lamp's curve on 4.8 V fresh.
    [Fact]
    public void The_hair_thin_wire_of_a_street_is_not_to_blame_on_three_cells_and_is_on_two()
    {
        var fine = Ask("street");
        Assert.Equal("Not the wire", fine.Verdict);
        Assert.Equal(5.27, fine.Figures[0].Value, 0.01);
        Assert.Equal(1 - (WhiteAmps(4.83, 820 + 79) / WhiteAmps(4.83, 820)), fine.Figures[2].Value, 0.005);
        var dim = Ask("street", ("cells", 2), ("ohm", 47));
        Assert.Equal("Yes, the wire", dim.Verdict);
        Assert.InRange(dim.Figures[2].Value, 0.4, 0.6);
    }

    // By hand, IACS copper: at most 0.1 ÷ (2 × 2 × 0.15) = 0.167 Ω/m; 26 AWG 0.1339 × 0.6 = 0.080 V, 24 AWG 0.0842 × 0.6 = 0.051 V, 28 AWG 0.2129 × 0.6 = 0.128 V.
    [Fact]
    public void Two_metres_and_150_milliamperes_want_26_AWG_and_28_fails()
    {
        var answer = Ask("wire");
        Assert.Contains(answer.Steps, s => s.StartsWith("stranded wire, 28 AWG: 0.13", StringComparison.Ordinal) && s.EndsWith("too much.", StringComparison.Ordinal));
        Assert.Contains(answer.Steps, s => s.StartsWith("stranded wire, 26 AWG: 80", StringComparison.Ordinal) && !s.Contains("too much", StringComparison.Ordinal));
        Assert.Contains(answer.Steps, s => s.StartsWith("stranded wire, 24 AWG: 50", StringComparison.Ordinal));
    }

    // By hand: 18 lamps of 1 kΩ on 5 V, 18 × 2.24 = 40 mA; 5 ÷ 60 mA = 83, so 82 Ω, 61 mA, 0.3 W; 10 Ah × 3.7 × 0.85 ÷ 5 = 6.3 Ah: 62 h instead of 156.
    [Fact]
    public void A_sleeping_power_bank_is_kept_awake_by_82_ohms()
    {
        var answer = Ask("bank");
        Assert.Equal(18 * WhiteAmps(5, 1000), Value(answer, "the lamps take"), 1e-4);
        Assert.Equal(82, answer.Headline.Value, 1e-9);
        Assert.Equal(25.0 / 82, Value(answer, "heat in it"), 1e-9);
        Assert.Equal(6.29 / ((18 * WhiteAmps(5, 1000)) + (5.0 / 82)), Value(answer, "hours with it"), 0.1);
        Assert.Contains("1 W", answer.Text, StringComparison.Ordinal);
    }

    // By hand: one lamp (12 − 2.75) ÷ 2 mA = 4625, so 4.7 kΩ, 18 mW; three (12 − 8.25) ÷ 2 mA = 1875, so 2.2 kΩ (the next preferred value up; 1.8 kΩ would give 2.1 mA).
    [Fact]
    public void An_adaptor_of_twelve_volts_drives_one_lamp_through_4700_ohms_or_three_in_a_row()
    {
        var answer = Ask("adaptor");
        Assert.Equal(4700, answer.Headline.Value, 1e-9);
        Assert.Equal(3, answer.Steps.Count);
        Assert.Contains("3 lamps in a row with 2.2", answer.Steps[2], StringComparison.Ordinal);
        Assert.Equal("No", Ask("adaptor", ("kind", "ac")).Verdict);
    }

    // Source: IEC 61140 as told by a transformer glossary, 60 V d.c., row touchable_without_insulation_dc of tests/Reference/safety-limits.csv.
    [Theory]
    [InlineData("adaptor", "volts", 230.0, true)]
    [InlineData("adaptor", "volts", 60.0, false)]
    public void Mains_is_refused(string verb, string option, double volts, bool refused)
    {
        var question = MakersQuestions.Find(verb)!;
        var given = Given.Nothing.With((AskedNumber)question.Asks.Single(a => a.Option == option), volts);
        Assert.Equal(refused ? "mains" : null, question.Refused(given)?.Rule);
    }

    // Source: IEC 61140, the same limit: six adaptors of 12 V in a row are 72 V.
    [Theory]
    [InlineData("adaptor-12v", 5, false)]
    [InlineData("adaptor-12v", 6, true)]
    [InlineData("6LR61", 6, false)]
    [InlineData("6LR61", 7, true)]
    public void More_than_sixty_volts_is_refused_before_it_is_reckoned_with(string cell, int cells, bool refused)
    {
        var question = MakersQuestions.Find("resistor")!;
        var given = Given.Nothing.With((AskedChoice)question.Asks[0], cell).With((AskedNumber)question.Asks[1], cells);
        Assert.Equal(refused ? "mains" : null, question.Refused(given)?.Rule);
    }

    // Common practice, no source: amber with 820 Ω on 4.5 V takes about 3.2 mA against the white's 2.1 mA; behind one resistor the white stays dark.
    [Fact]
    public void Amber_and_white_want_resistors_of_their_own()
    {
        var answer = Ask("mix");
        Assert.Equal("No", answer.Verdict);
        Assert.Equal(0.0021, answer.Figures[0].Value, 0.00005);
        Assert.Equal(0.0032, answer.Figures[1].Value, 0.0001);
        Assert.InRange(answer.Figures[3].Value, 0, 0.001);
    }

    // By hand: two lit rooms of three, three windows each: 2 lamps, 6 windows, 4 mA, 1 spare.
    [Fact]
    public void Rooms_count_and_not_windows()
    {
        var answer = Ask("rooms");
        Assert.Equal([2, 6, 0.004, 1], answer.Figures.Select(f => f.Value));
        Assert.Equal(2, ((AddBuilding)MakersQuestions.Find("rooms")!.Into(Given.Nothing, new Town { Name = "Nowhere" })!).Added.Leds);
    }

    // By hand: T·10^(−0.6 n)·E ≤ 0.02 · 0.20 · 30 lx; with E lux inside, n = ⌈log₁₀(T·E ÷ 0.12) ÷ 0.6⌉, T 0.15 for paper, 0.02 card, 0.05 balsa (from memory).
    [Fact]
    public void Walls_stop_glowing_after_the_coats_that_optical_density_says()
    {
        var answer = Ask("glow");
        var share = answer.Text.Contains("paper wants", StringComparison.Ordinal) ? 0.15 : answer.Text.Contains("balsa wants", StringComparison.Ordinal) ? 0.05 : 0.02;
        Assert.Equal(Math.Ceiling(Math.Log10(share * answer.Figures[0].Value / 0.12) / 0.6), answer.Headline.Value);
        Assert.Equal([1200, 390], answer.Figures.TakeLast(2).Select(f => f.Value));
    }

    // Common practice, no source: turned away, 15 to 25 mm behind and behind tracing paper, a lamp no longer shows as a dot; close behind a clear pane it does.
    [Fact]
    public void A_lamp_behind_clear_glass_shows_as_a_dot_and_behind_tracing_paper_it_does_not()
    {
        var bare = Ask("dot");
        Assert.Equal("Yes, a dot", bare.Verdict);
        Assert.True(bare.Figures[2].Value < bare.Figures[0].Value);
        Assert.Equal("No dot", Ask("dot", ("pane", "tracing"), ("mm", 20), ("aim", "away")).Verdict);
    }

    // Common practice, no source: cut, black and white inside, torch test, paint outside, glaze, lamps tested, fitted, dark test and close, feed, join, glue in.
    [Fact]
    public void A_house_is_built_in_the_order_of_the_trade()
    {
        string[] order = ["Cut", "Black out", "Hold a torch", "Paint outside", "Glaze", "Test and tag", "Fit the lamp", "Test, look in the dark", "Feed", "Join", "Test once more, glue it in"];
        var steps = Ask("order").Steps.ToList();
        var places = order.Select(o => steps.FindIndex(s => s.StartsWith(o, StringComparison.Ordinal))).ToList();
        Assert.DoesNotContain(-1, places);
        Assert.Equal(places.Order(), places);
    }

    // Common practice, no source: table of drying times.
    [Theory]
    [InlineData("pva", "18 to 24 h")]
    [InlineData("super", "24 h")]
    [InlineData("resin", "3 to 7 days")]
    public void Drying_times_are_those_of_the_table(string stuff, string closed) => Assert.Equal(closed, Ask("dry", ("stuff", stuff)).Verdict);

    // Common practice, no source: ten houses, two lamps, five windows, two rooms: about 17 h practised and 33 h a beginner, and at least three days of drying.
    [Theory]
    [InlineData("practised", 17)]
    [InlineData("beginner", 33)]
    public void Ten_houses_take_the_hours_of_the_trade(string hand, double hours)
    {
        var answer = Ask("work", ("hand", hand));
        Assert.Equal(hours, answer.Headline.Value, 1.0);
        Assert.InRange(Value(answer, "days"), 3, 5);
    }

    // By hand: 35 + 10 % = 39 lamps in 4 packs of ten, a bag of 100 resistors, 140 sleeves (in each house two where the pair arrives, one at the resistor, one behind the lamp), 35 × 2 × (0.35 × 1.4 + 0.25) = 51.8 m of wire; usual prices give 25 to 85 units.
    [Fact]
    public void Thirty_five_lamps_cost_what_such_a_town_usually_costs()
    {
        var answer = Ask("cost");
        Assert.InRange(answer.Headline.Value, 25, 85);
        Assert.Contains(answer.Steps, s => s.StartsWith("4 × warm white", StringComparison.Ordinal) && s.Contains("35 wanted, 4 to spare", StringComparison.Ordinal));
        Assert.Contains(answer.Steps, s => s.Contains("51.8 wanted", StringComparison.Ordinal));
        Assert.Contains(answer.Steps, s => s.Contains("140 wanted", StringComparison.Ordinal));
    }

    // By hand: 35 × 2 × (0.35 × 1.4 + 0.25) = 51.8 m, buy 60 m.
    [Fact]
    public void Thirty_five_pairs_take_52_metres()
    {
        var answer = Ask("metres");
        Assert.Equal(51.8, answer.Headline.Value, 1e-9);
        Assert.Equal(60, Value(answer, "buy"), 1e-9);
    }

    // By hand, twelve wires at half fill: √24 × d: 0.22 → 1.1, drill 2; 0.6 → 2.9, drill 3.5; 0.9 → 4.4, drill 5 mm; a joint of 4.2 mm asks for 5.5.
    [Theory]
    [InlineData(0.22, 0, 2, 1.1)]
    [InlineData(0.6, 0, 3.5, 2.9)]
    [InlineData(0.9, 0, 5, 4.4)]
    [InlineData(0.22, 4.2, 5.5, 1.1)]
    public void Six_pairs_want_the_drill_of_their_wire_and_joint(double outer, double joint, double drill, double bundle)
    {
        var answer = Ask("drill", ("outer", outer), ("joint", joint));
        Assert.Equal(drill, 1000 * answer.Headline.Value, 1e-9);
        Assert.Equal(bundle, 1000 * answer.Figures[0].Value, 0.05);
    }

    // Common practice, no source: one of five out is its own branch, and an open joint is likelier than a reversed lamp, that than a dead LED.
    [Fact]
    public void One_dark_lamp_of_five_is_its_own_branch_and_a_joint_before_all()
    {
        var answer = Ask("one-dark");
        Assert.Equal("Its own branch", answer.Verdict);
        var places = new[] { "joint", "wrong way round", "dead" }.Select(w => answer.Steps[0].IndexOf(w, StringComparison.Ordinal)).ToList();
        Assert.DoesNotContain(-1, places);
        Assert.Equal(places.Order(), places);
    }

    // By hand: 20 lamps of 820 Ω on three fresh cells, near 4.85 V: 20 × the curve's current.
    [Fact]
    public void A_dark_row_is_measured_from_the_pack_on()
    {
        var answer = Ask("row-dark");
        Assert.Equal(20 * WhiteAmps(answer.Figures[0].Value, 820), answer.Figures[1].Value, 0.0005);
        Assert.True(answer.Steps.ToList().FindIndex(s => s.StartsWith("Behind the fuse", StringComparison.Ordinal)) < answer.Steps.ToList().FindIndex(s => s.StartsWith("Behind the switch", StringComparison.Ordinal)));
    }

    // Common practice, no source: three AA push about 5 A into a short.
    [Fact]
    public void A_hot_pack_is_a_short_of_about_five_amperes()
    {
        var answer = Ask("hot");
        Assert.InRange(answer.Headline.Value, 3.5, 6.5);
        Assert.StartsWith("Lift one cell out", answer.Steps[0], StringComparison.Ordinal);
    }

    // Common practice, no source: volts and no current, open inside; volts that fall, a short.
    [Theory]
    [InlineData("open", "open")]
    [InlineData("short", "touch")]
    public void A_house_that_died_sealed_in_tells_by_its_volts_what_it_has(string reads, string suspect)
    {
        var answer = Ask("sealed", ("reads", reads));
        Assert.Contains(suspect, answer.Steps[0], StringComparison.Ordinal);
        Assert.Contains(answer.Steps, s => s.Contains("light-guide", StringComparison.Ordinal));
    }

    // By the lamp's curve, halved: 4.5 V through 1 kΩ.
    [Fact]
    public void The_tester_lights_a_lamp_the_right_way_round_only() => Assert.Equal(WhiteAmps(4.5, 1000), Ask("plus").Headline.Value, 1e-5);

    // By hand: 40 and 49 lamps of 2.1 mA; half the current after 19 and 16 h (common practice, no source), to a fifth of each.
    [Fact]
    public void Nine_lamps_more_cost_a_box_of_forty_three_hours()
    {
        var answer = Ask("grow");
        Assert.Equal(40 * WhiteAmps(4.5, 820), answer.Figures[0].Value, 0.0005);
        Assert.Equal(49 * WhiteAmps(4.5, 820), answer.Figures[1].Value, 0.0005);
        Assert.InRange(answer.Figures[2].Value, 19 * 0.8, 19 * 1.2);
        Assert.InRange(answer.Figures[3].Value, 16 * 0.8, 16 * 1.2);
    }

    // By hand: white LEDs without a resistor on 4.5 V would have to lose 4.5 − 2.7 V inside; their 20 mA is long passed.
    [Theory]
    [InlineData("grow")]
    [InlineData("lamps")]
    [InlineData("hours")]
    [InlineData("fair")]
    [InlineData("street")]
    public void Lamps_that_would_be_driven_to_death_are_warned_of_first(string verb)
    {
        Assert.Contains("and dies", Ask(verb, ("ohm", 0)).Warnings[0], StringComparison.Ordinal);
        Assert.DoesNotContain(Ask(verb).Warnings, w => w.Contains("and dies", StringComparison.Ordinal));
    }

    // Common practice, no source: a pair that may be shorted is tried through a resistor.
    [Fact]
    public void A_sealed_house_is_tried_through_a_resistor_and_never_on_a_bare_pack() => Assert.Contains("1 kΩ", Ask("sealed").Text, StringComparison.Ordinal);

    // Common practice, no source: n groups on a common minus take n + 1 wires.
    [Fact]
    public void Three_groups_take_four_wires() => Assert.Equal([4, 5], Ask("switches").Figures.Take(2).Select(f => f.Value));

    // Common practice, no source: three NiMH with 820 Ω give 1.1 to 1.3 mA; by the curve at 3.6 V. Four with 1 kΩ to 1.2 kΩ are as bright as before.
    [Fact]
    public void Three_rechargeable_cells_halve_the_current()
    {
        var answer = Ask("rechargeable");
        Assert.Equal(WhiteAmps(3.6, 820), answer.Headline.Value, 1e-5);
        Assert.InRange(answer.Headline.Value, 0.00105, 0.0013);
        Assert.StartsWith("4 rechargeable cells with 1.2", answer.Steps[1], StringComparison.Ordinal);
    }

    // By hand: 3 × 2 mA is thirty times 0.2 mA; 6 mA × 10 Ω and × 140 Ω.
    [Fact]
    public void A_coin_cell_for_three_lamps_is_thirty_times_too_small()
    {
        var answer = Ask("coin");
        Assert.Equal("No", answer.Verdict);
        Assert.Equal([0.006, 30, 0.06, 0.84], answer.Figures.Take(4).Select(f => Math.Round(f.Value, 9)));
        Assert.Contains(answer.Warnings, w => w.Contains("swallowed", StringComparison.Ordinal));
    }

    // By hand: mains of 50 Hz pulses light a hundred times a second; 1/50 s holds two whole pulses, 1/80 s one and a quarter: (0.75 − 0.5) ÷ (0.75 + 0.5) = 0.2.
    [Fact]
    public void Bands_on_film_go_when_the_shutter_holds_whole_pulses()
    {
        var answer = Ask("film");
        Assert.Equal(1.0 / 50, answer.Headline.Value, 1e-12);
        Assert.Equal(0.2, Value(answer, "bands now"), 1e-9);
        Assert.Equal(0, Value(answer, "bands then"), 1e-9);
    }

    // Common practice, no source: a fuse of two to four times the full current, 200 to 500 mA for AA cells.
    [Fact]
    public void A_pack_of_a_hundred_milliamperes_is_fused_at_two_to_four_times_that() => Assert.InRange(Ask("fuse").Headline.Value, 0.2, 0.4);

    // Common practice, no source: what must be known of a closed house.
    [Theory]
    [InlineData("code")]
    [InlineData("resistor")]
    [InlineData("joints")]
    [InlineData("photograph")]
    [InlineData("opened")]
    public void What_is_written_down_before_closing_names(string thing) => Assert.Contains(Ask("record").Steps, s => s.Contains(thing, StringComparison.Ordinal));

    private static double SharedVolts(double supply, double ohms, int lamps)
    {
        var (low, high) = (0.0, supply);
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = Spread(middle, lamps).Sum() > (supply - middle) / ohms ? (low, middle) : (middle, high);
        }

        return low;
    }

    private static List<double> Spread(double volts, int lamps) =>
        [.. Enumerable.Range(0, lamps).Select(i => WhiteAmps(volts - (WhiteSpread * ((2.0 * i / (lamps - 1)) - 1)), 0))];

    // Parts vary by a fifth of a volt either way: common practice, no source.
    private const double WhiteSpread = 0.2;

    [GeneratedRegex(@"([\d.]+)\s*%")]
    private static partial Regex Percent();

    [GeneratedRegex(@"after ([\d.]+)")]
    private static partial Regex HoursIn();
}
