using Duskwright.Plan.Document;

namespace Duskwright.Plan.Tests.Document;

public class StandingLogTests
{
    private static readonly LogEntry First = new() { Id = "a", Date = new DateOnly(2026, 3, 1), Kind = LogKind.Reading, Lit = 3 };

    [Fact]
    public void A_corrected_entry_stays_written_and_counts_no_more()
    {
        var town = new Town { Name = "Nowhere", Log = [First, First with { Id = "b", Lit = 4, Corrects = "a" }] };
        Assert.Equal(2, town.Log.Count);
        Assert.Equal(4, Assert.Single(town.StandingLog()).Lit);
    }

    [Fact]
    public void A_withdrawn_entry_leaves_nothing_standing() =>
        Assert.Empty(new Town { Name = "Nowhere", Log = [First, new LogEntry { Date = First.Date, Kind = LogKind.Withdrawn, Corrects = "a" }] }.StandingLog());
}
