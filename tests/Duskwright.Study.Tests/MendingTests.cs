using System.Collections.Immutable;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Format;
using Duskwright.Study.Mending;

namespace Duskwright.Study.Tests;

/// <summary>What broke, from what is lit, dim and dark. What each fault shows is a fact of parallel circuits: common practice, no source.</summary>
public class MendingTests
{
    private static readonly TownStudy Saltmarrow = TownStudy.Of(TownJson.Read(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "examples", "saltmarrow.json"))).Town!);

    [Fact]
    public void A_whole_house_dark_with_the_rest_lit_is_first_of_all_an_open_joint_in_its_pair()
    {
        var answer = Ask("chandlery", l => Seen.Dark);
        Assert.Contains("a joint of the pair of Chandlery is open, at the bank or in the house", answer.Suspects[0].Words);
        Assert.Equal(["Chandlery"], answer.Suspects[0].Dark);
        Assert.Empty(answer.Suspects[0].Dim);
        Assert.True(answer.OneFaultExplains);
    }

    [Fact]
    public void One_lamp_dark_is_a_joint_of_its_own_or_its_led_and_nothing_seen_from_outside_tells_which()
    {
        var answer = Ask("chandlery", l => l == "L2" ? Seen.Dark : Seen.Lit);
        Assert.Contains("a joint of lamp L2 in Chandlery is open", answer.Suspects[0].Words);
        Assert.Contains("the LED of lamp L2 in Chandlery is dead", answer.Suspects[0].Words);
    }

    [Fact]
    public void Every_lamp_of_the_pack_dark_with_a_large_current_is_a_short()
    {
        var pack = Saltmarrow.Packs.Single(p => p.Supply.Id == "3");
        var lamps = Saltmarrow.Lamps.Where(l => l.Supply == "3").ToDictionary(l => (l.Building, l.Name), _ => Seen.Dark);
        var answer = Saltmarrow.WhatBroke(new FaultQuestion("3", lamps, 10 * pack.Load!.Value));
        Assert.All(answer.Suspects[0].Words, w => Assert.Matches("^the two wires of the pair of .* touch$", w));
    }

    [Fact]
    public void A_reading_half_way_between_two_faults_moves_their_shares()
    {
        var dark = new Dictionary<(string, string), Seen> { [("chandlery", "L1")] = Seen.Dark };
        var without = Saltmarrow.WhatBroke(new FaultQuestion("3", dark, null));
        var shorted = without.Suspects.First(s => s.Words.Any(w => w == "the leads of lamp L1 in Chandlery touch"));
        var with = Saltmarrow.WhatBroke(new FaultQuestion("3", dark, shorted.Current.Value));
        Assert.True(with.Suspects.First(s => s.Words.Any(w => w == "the leads of lamp L1 in Chandlery touch")).Share > shorted.Share);
    }

    // Bayes' rule: of two faults that a look tells apart or not, the odds go as how common they are; an answer changed back is the first again.
    [Fact]
    public void What_breaks_oftener_in_the_makers_work_is_so_much_likelier()
    {
        double Odds(Town town)
        {
            var answer = TownStudy.Of(town).WhatBroke(new FaultQuestion("3", new Dictionary<(string, string), Seen> { [("chandlery", "L1")] = Seen.Dark }, null));
            double Share(string words) => answer.Suspects.Single(s => s.Words.Contains(words)).Share;
            return Share("the leads of lamp L1 in Chandlery touch") / Share("a joint of lamp L1 in Chandlery is open");
        }

        var usual = Odds(Saltmarrow.Town);
        var often = new TellBreakage(Breaks.LampShort, HowOften.Often, "").Apply(Saltmarrow.Town);
        Assert.Equal(4 * usual, Odds(often), 1e-9);
        Assert.Equal(usual / 4, Odds(new TellBreakage(Breaks.LampShort, HowOften.Seldom, "").Apply(often)), 1e-9);
        Assert.Equal(Saltmarrow.Town, new TellBreakage(Breaks.LampShort, null, "").Apply(often));
    }

    [Fact]
    public void Without_a_meter_the_next_look_is_told_in_words_and_a_fixed_house_is_said_to_be_out_of_reach()
    {
        var dark = Saltmarrow.Buildings.Single(b => b.Building.Key == "counting-house").Lamps.ToDictionary(l => (l.Building, l.Name), _ => Seen.Dark);
        var answer = Saltmarrow.WhatBroke(new FaultQuestion("2", dark, null));
        Assert.Contains("cannot be reached any more", answer.Suspects[0].Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void Shares_of_all_suspects_of_a_pack_on_its_own_make_one()
    {
        var answer = Ask("chandlery", _ => Seen.Dark);
        Assert.Equal(1, answer.Suspects.Sum(s => s.Share), 1e-9);
        Assert.Equal(answer.Suspects.OrderByDescending(s => s.Share), answer.Suspects);
    }

    [Fact]
    public void No_two_rows_of_a_packs_fault_table_look_alike_to_eye_and_meter()
    {
        var rows = Saltmarrow.Faults("3");
        Assert.NotEmpty(rows);
        Assert.All(rows.SelectMany((a, i) => rows.Skip(i + 1).Select(b => (a, b))), p => Assert.False(
            p.a.Sight == p.b.Sight && Math.Abs(p.a.Current.Value - p.b.Current.Value) < 0.0005, $"{p.a.Words[0]} and {p.b.Words[0]}"));
    }

    // An ohmmeter at a pair off the bank: touching wires show next to nothing, sound LEDs and open joints no number: common practice, no source.
    [Fact]
    public void Next_to_no_ohms_at_one_pair_of_a_pack_that_is_all_dark_name_the_house_whose_wires_touch()
    {
        var dark = Saltmarrow.Lamps.Where(l => l.Supply == "3").ToDictionary(l => (l.Building, l.Name), _ => Seen.Dark);
        var answer = Saltmarrow.WhatBroke(new FaultQuestion("3", dark, null) { OffBank = [new OffBankReading("chandlery", false, false, 0.6)] });
        Assert.Equal("the two wires of the pair of Chandlery touch", answer.Suspects[0].Words[0]);
    }

    // Common practice, no source: which switch brings the short is told by switching them on one at a time; a sound one draws what its lamps take.
    [Fact]
    public void A_short_is_behind_the_switch_that_alone_pushes_amperes_and_not_behind_the_other()
    {
        var lamps = Saltmarrow.Lamps.Where(l => l.Supply == "3").ToList();
        var sound = lamps.Where(l => l.SwitchGroup == "F").Sum(l => l.Current!.Value);
        var answer = Saltmarrow.WhatBroke(new FaultQuestion("3", lamps.ToDictionary(l => (l.Building, l.Name), _ => Seen.Dark), null) { OnSwitch = [new SwitchReading("E", 1.15), new SwitchReading("F", sound)] });
        double Touching(string group) => answer.Suspects.Where(s => s.Words.Any(w => w.StartsWith("the two wires", StringComparison.Ordinal) && lamps.Where(l => l.SwitchGroup == group).Any(l => w.Contains(Saltmarrow.Buildings.Single(b => b.Building.Key == l.Building).Building.Name, StringComparison.Ordinal)))).Sum(s => s.Share);
        Assert.InRange(Touching("E"), 0.9, 1.001);
        Assert.InRange(Touching("F"), 0, 0.5 * Touching("E"));
        Assert.Contains(lamps.Where(l => l.SwitchGroup == "E").Select(l => Saltmarrow.Buildings.Single(b => b.Building.Key == l.Building).Building.Name), name => answer.Suspects[0].Words[0].Contains(name, StringComparison.Ordinal));
    }

    // Common practice, no source: a short is looked for house by house with an ohmmeter, power off.
    [Fact]
    public void When_a_whole_pack_is_dark_and_pushes_amperes_the_next_test_is_the_ohms_of_one_pair_and_then_of_another()
    {
        var dark = Saltmarrow.Lamps.Where(l => l.Supply == "3").ToDictionary(l => (l.Building, l.Name), _ => Seen.Dark);
        var first = Saltmarrow.WhatBroke(new FaultQuestion("3", dark, 2.2)).Next!;
        Assert.Matches("^If you have a meter: power off, take the pair of .* off the bank and read the ohms between its ends\\. Sound lamps show no number, wires that touch ", first);
        var named = Saltmarrow.Buildings.Single(b => first.Contains($"the pair of {b.Building.Name} off", StringComparison.Ordinal)).Building.Key;
        var second = Saltmarrow.WhatBroke(new FaultQuestion("3", dark, 2.2) { OffBank = [new OffBankReading(named, false, false, null)] }).Next!;
        Assert.Contains("read the ohms", second, StringComparison.Ordinal);
        Assert.NotEqual(first, second);
    }

    [Fact]
    public void No_number_of_ohms_at_a_dark_house_off_the_bank_rules_touching_wires_out()
    {
        const string Touch = "the two wires of the pair of Chandlery touch";
        Assert.InRange(AskOff(new OffBankReading("chandlery", false, false, null)).Suspects.First(s => s.Words.Contains(Touch)).Share, 0, Ask("chandlery", _ => Seen.Dark).Suspects.First(s => s.Words.Contains(Touch)).Share / 5);
    }

    // An LED lights one way only, so a pair that shows its volts with the leads changed over is joined the wrong way round: common practice, no source.
    [Fact]
    public void An_led_that_shows_its_volts_only_with_the_leads_changed_over_is_the_wrong_way_round() =>
        Assert.Contains("the wrong way round", AskOff(new OffBankReading("chandlery", true, false, null), new OffBankReading("chandlery", true, true, 2.3)).Suspects[0].Words[0], StringComparison.Ordinal);

    [Fact]
    public void A_touching_pair_fails_its_test_by_ohms_and_the_sentence_tells_both()
    {
        var lit = Saltmarrow.Buildings.Single(b => b.Building.Key == "chandlery").Lamps.ToDictionary(l => l.Name, _ => Seen.Lit);
        var verdict = Saltmarrow.Judge("chandlery", "lamps-in-roof-off", new TestOutcome(lit) { OffBank = [new OffBankReading("chandlery", false, false, 0.6)] })!;
        Assert.False(verdict.Passed);
        Assert.Contains("sound parts show no number", verdict.Words, StringComparison.Ordinal);
        Assert.True(Saltmarrow.Judge("chandlery", "lamps-in-roof-off", new TestOutcome(lit) { OffBank = [new OffBankReading("chandlery", false, false, null)] })!.Passed);
    }

    [Fact]
    public void A_pack_that_lights_nothing_has_no_faults_to_find() => Assert.Empty(Saltmarrow.Faults("no such pack"));

    private static FaultAnswer AskOff(params OffBankReading[] readings) => Saltmarrow.WhatBroke(new FaultQuestion(
        "3", Saltmarrow.Buildings.Single(b => b.Building.Key == "chandlery").Lamps.ToDictionary(l => (l.Building, l.Name), _ => Seen.Dark), null)
    { OffBank = [.. readings] });

    private static FaultAnswer Ask(string building, Func<string, Seen> look) => Saltmarrow.WhatBroke(new FaultQuestion(
        "3", Saltmarrow.Buildings.Single(b => b.Building.Key == building).Lamps.ToImmutableDictionary(l => (l.Building, l.Name), l => look(l.Name)), null));
}
