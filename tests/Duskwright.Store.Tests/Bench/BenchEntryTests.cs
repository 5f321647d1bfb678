using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;
using Duskwright.Store.Opening;

namespace Duskwright.Store.Tests.Bench;

public sealed class BenchEntryTests : IDisposable
{
    private static readonly LogEntry Reading = new() { Date = new DateOnly(2026, 3, 1), Kind = LogKind.Reading, Supply = "1", Current = Current.FromMilliamperes(12.5), Voltage = Voltage.FromVolts(4.4) };

    private readonly Shelf _shelf = new();

    public void Dispose() => _shelf.Dispose();

    [Fact]
    public void An_entry_sent_twice_is_entered_once()
    {
        using var file = _shelf.Begun(Shelf.Saltmarrow);
        Assert.Empty(file.Enter("phone-1", Reading));
        Assert.Empty(file.Enter("phone-1", Reading));
        Assert.Equal(Shelf.Saltmarrow.Log.Count + 1, file.Town.Log.Count);
        Assert.Equal(Reading with { Id = "phone-1" }, Assert.Single(file.BenchEntries).Entry);
    }

    [Fact]
    public void A_test_with_all_its_readings_comes_back_from_the_file_as_it_was_sent()
    {
        var test = new LogEntry
        {
            Date = new DateOnly(2026, 3, 1),
            Time = new TimeOnly(19, 42),
            Kind = LogKind.Test,
            Building = "chandlery",
            Step = "close",
            Test = "lamps-in-roof-off",
            Passed = false,
            Looks = [new LampSeen { Lamp = "L1", As = SeenAs.Lit }, new LampSeen { Lamp = "L2", As = SeenAs.Flickers }],
            Resistance = Resistance.FromOhms(5.3),
            DiodeOver = true,
            Reversed = true,
            Photograph = new string('a', 64),
            Burnt = Duration.FromHours(2.5),
            Despite = "the lamp stays dark",
            Note = "wiggled",
        };
        using var file = _shelf.Begun(Shelf.Saltmarrow);
        Assert.Empty(file.Enter("phone-2", test));
        Assert.Equal(test with { Id = "phone-2" }, Assert.Single(file.BenchEntries).Entry);
        Assert.Equal(test with { Id = "phone-2" }, file.Town.Log[^1]);
    }

    [Fact]
    public void A_correction_of_an_entry_that_was_never_sent_is_refused()
    {
        using var file = _shelf.Begun(Shelf.Saltmarrow);
        Assert.Contains(file.Enter("phone-3", Reading with { Kind = LogKind.Withdrawn, Corrects = "phone-0" }), p => p.Path.EndsWith(".corrects", StringComparison.Ordinal));
        Assert.Empty(file.BenchEntries);
    }

    [Fact]
    public void An_entry_undone_is_out_of_the_town_and_still_in_the_file()
    {
        using var file = _shelf.Begun(Shelf.Saltmarrow);
        file.Enter("phone-1", Reading);
        file.Undo();
        Assert.Equal(Shelf.Saltmarrow, file.Town);
        Assert.Equal("phone-1", Assert.Single(file.BenchEntries).Key);
    }

    [Fact]
    public void Readings_lie_in_the_file_in_amperes_and_volts()
    {
        using var file = _shelf.Begun(Shelf.Saltmarrow);
        file.Enter("phone-1", Reading);
        Assert.Equal((0.0125, 4.4), file.Connection.One("SELECT current_a, voltage_v FROM bench_entry", r => (r.GetDouble(0), r.GetDouble(1))));
    }

    [Fact]
    public void An_entry_for_a_house_that_is_not_there_is_refused()
    {
        using var file = _shelf.Begun(Shelf.Saltmarrow);
        Assert.NotEmpty(file.Enter("phone-1", Reading with { Building = "nowhere" }));
        Assert.Empty(file.BenchEntries);
    }
}
