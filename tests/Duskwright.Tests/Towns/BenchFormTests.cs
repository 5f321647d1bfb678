using Duskwright.Plan.Document;
using Duskwright.Study;
using Duskwright.Towns;

namespace Duskwright.Tests.Towns;

public sealed class BenchFormTests
{
    private static readonly DateTime Now = new(2026, 3, 2, 19, 30, 0);
    private static readonly TownStudy Study = OpenTown.FromFile(null).Town!.Study;

    [Fact]
    public void A_seal_is_refused_until_its_tests_are_passed_or_a_reason_is_given()
    {
        Assert.Contains("waits for 3 tests", Read("tick", ("step", "close")).Why, StringComparison.Ordinal);
        var forced = Read("tick", ("step", "close"), ("despite", "only taped")).Entry!;
        Assert.Equal((LogKind.Seal, "only taped"), (forced.Kind, forced.Despite));
    }

    [Fact]
    public void An_entry_carries_the_time_at_which_the_phone_took_it() =>
        Assert.Equal(new DateTime(2026, 3, 1, 21, 5, 9), Read("note", ("note", "wiggled"), ("at", "2026-03-01T21:05:09")).Entry!.At);

    [Fact]
    public void A_time_that_cannot_be_read_is_now() => Assert.Equal(Now, Read("note", ("note", "wiggled"), ("at", "yesterday")).Entry!.At);

    [Fact]
    public void A_test_is_passed_by_lamps_alone_and_failed_by_one_dark_lamp()
    {
        Assert.True(Read("test", ("test", "lamps-in-roof-off"), ("all", "lit")).Entry!.Passed);
        Assert.False(Read("test", ("test", "lamps-in-roof-off"), ("lamp:L1", "lit"), ("lamp:L2", "dark"), ("lamp:L3", "lit"), ("lamp:L4", "lit")).Entry!.Passed);
    }

    [Fact]
    public void A_test_of_which_one_lamp_was_not_looked_at_is_sent_back() =>
        Assert.Equal("Say what every lamp does: L4 is missing.", Read("test", ("test", "lamps-in-roof-off"), ("lamp:L1", "lit"), ("lamp:L2", "lit"), ("lamp:L3", "lit")).Why);

    [Fact]
    public void A_lamp_that_goes_on_and_off_fails_its_test_unless_it_is_made_to_flicker()
    {
        Assert.False(Read("test", ("test", "lamps-in-roof-off"), ("all", "flickers")).Entry!.Passed);
        Assert.True(BenchForm.Read(new Dictionary<string, string> { ["what"] = "test", ["building"] = "merry-tern", ["test"] = "lamps-in-roof-off", ["all"] = "flickers" }, Study, Now).Entry!.Passed);
    }

    [Fact]
    public void Turned_round_the_test_is_passed_in_the_dark()
    {
        Assert.True(Read("test", ("test", "turned-round"), ("all", "dark")).Entry!.Passed);
        Assert.False(Read("test", ("test", "turned-round"), ("all", "lit")).Entry!.Passed);
    }

    [Fact]
    public void A_leak_told_in_the_dark_fails_its_test_and_its_place_is_kept_in_the_log()
    {
        Assert.True(Read("test", ("test", "roof-on-in-the-dark"), ("all", "lit")).Entry!.Passed);
        var leaks = Read("test", ("test", "roof-on-in-the-dark"), ("all", "lit"), ("elsewhere", "along the eaves")).Entry!;
        Assert.Equal((false, "along the eaves"), (leaks.Passed, leaks.Note));
    }

    [Fact]
    public void A_current_ten_times_too_high_fails_a_test_whose_lamps_are_right()
    {
        var house = Study.Buildings.Single(b => b.Building.Key == "chandlery");
        Assert.False(Read("test", ("test", "lamps-in-roof-off"), ("all", "lit"), ("milliamperes", (house.Current!.Value * 10_000).ToString(System.Globalization.CultureInfo.InvariantCulture))).Entry!.Passed);
    }

    [Fact]
    public void Ohms_and_the_diode_range_go_into_the_log_with_the_way_the_leads_were_held()
    {
        var entry = Read("test", ("test", "lamps-in-roof-off"), ("all", "lit"), ("ohms-over", "yes"), ("diode", "1,9"), ("reversed", "yes")).Entry!;
        Assert.Equal((true, 1.9, true), (entry.ResistanceOver, entry.DiodeVoltage!.Value.Volts, entry.Reversed));
        Assert.Contains("write ohms", Read("test", ("test", "lamps-in-roof-off"), ("all", "lit"), ("ohms", "none")).Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pair_that_reads_next_to_no_ohms_fails_its_test_although_its_lamps_were_lit() =>
        Assert.False(Read("test", ("test", "lamps-in-roof-off"), ("all", "lit"), ("ohms", "0.6")).Entry!.Passed);

    [Fact]
    public void A_photograph_alone_is_a_note_at_its_step()
    {
        var entry = Read("note", ("photograph", new string('a', 64)), ("step", "fit")).Entry!;
        Assert.Equal((LogKind.Note, "fit", new string('a', 64)), (entry.Kind, entry.Step, entry.Photograph));
    }

    [Theory]
    [InlineData("plenty")]
    [InlineData("1e99")]
    [InlineData("NaN")]
    public void What_is_no_current_is_refused_with_an_example(string reading) =>
        Assert.Contains("write milliamperes", Read("test", ("test", "lamps-in-roof-off"), ("all", "lit"), ("milliamperes", reading)).Why, StringComparison.Ordinal);

    [Theory]
    [InlineData("tick")]
    [InlineData("test")]
    [InlineData("withdraw")]
    [InlineData("note")]
    [InlineData("dance")]
    public void A_form_that_lacks_what_it_is_about_is_refused_in_a_sentence(string what) => Assert.EndsWith(".", Read(what).Why!, StringComparison.Ordinal);

    private static (LogEntry? Entry, string? Why) Read(string what, params (string Name, string Value)[] fields) =>
        BenchForm.Read(fields.Append(("what", what)).Append(("building", "chandlery")).ToDictionary(f => f.Item1, f => f.Item2), Study, Now);
}
