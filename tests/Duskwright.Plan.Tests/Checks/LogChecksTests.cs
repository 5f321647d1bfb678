using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Tests.Checks;

public class LogChecksTests
{
    private static readonly LogEntry Entry = new() { Id = "a", Date = new DateOnly(2026, 3, 1), Kind = LogKind.Note };

    [Fact]
    public void Two_entries_with_one_id_are_refused() => Assert.Equal("log[1].id", Refused(Entry, Entry).Path);

    [Fact]
    public void A_correction_names_an_entry_that_stands_before_it() =>
        Assert.Equal("log[0].corrects", Refused(Entry with { Id = null, Corrects = "a" }, Entry).Path);

    [Fact]
    public void A_withdrawal_says_what_it_withdraws() => Assert.Equal("missing", Refused(Entry with { Kind = LogKind.Withdrawn }).Rule);

    [Fact]
    public void A_lamp_is_not_both_lit_and_dark() =>
        Assert.Equal("The log of 2026-03-01 says twice what lamp L1 did.", Refused(Entry with { Looks = [new LampSeen { Lamp = "L1", As = SeenAs.Lit }, new LampSeen { Lamp = "L1", As = SeenAs.Dark }] }).Message);

    [Theory]
    [InlineData(-0.1, false)]
    [InlineData(0, true)]
    [InlineData(8760, true)]
    [InlineData(8760.1, false)]
    public void Lamps_burn_between_no_time_and_a_year(double hours, bool allowed) =>
        Assert.Equal(allowed, TownChecks.Of(new Town { Name = "Nowhere", Log = [Entry with { Burnt = Duration.FromHours(hours) }] }).Count == 0);

    private static Problem Refused(params LogEntry[] log) => Assert.Single(TownChecks.Of(new Town { Name = "Nowhere", Log = [.. log] }));
}
