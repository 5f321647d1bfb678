using Duskwright.Light.Flicker;

namespace Duskwright.Light.Tests.Flicker;

// Source: closed forms of the random telegraph signal (Papoulis; from memory): mean p, c changes a second, correlation e^(−s·τ) with s = c ÷ (2p(1 − p)).
public class FlickerTraceTests
{
    private const double Share = 0.65;
    private const double Changes = 12;
    private const double Seconds = 20_000;
    private static readonly FlickerTrace Long = FlickerTrace.Draw(Share, Changes, Seconds, 7);

    [Fact]
    public void It_is_lit_for_its_share_of_the_time()
    {
        // Standard error of the mean: √(p(1 − p)·2 ÷ (s·T)).
        var error = Math.Sqrt(Share * (1 - Share) * 2 / (Decay * Seconds));
        Assert.Equal(Share, Sampled(0.01).Average(lit => lit ? 1 : 0), 4 * error);
    }

    [Fact]
    public void It_changes_as_often_as_said() =>
        Assert.Equal(Changes, Long.Changes.Length / Seconds, 4 * Math.Sqrt(Changes / Seconds));

    [Theory]
    [InlineData(0.02)]
    [InlineData(0.06)]
    public void What_it_did_is_forgotten_at_the_rate_of_its_changes(double lag)
    {
        var lit = Sampled(lag).Select(l => (l ? 1 : 0) - Share).ToList();
        var correlation = lit.Zip(lit.Skip(1), (now, next) => now * next).Average() / (Share * (1 - Share));
        Assert.Equal(Math.Exp(-Decay * lag), correlation, 0.01);
    }

    [Fact]
    public void The_same_seed_gives_the_same_course_and_another_seed_another()
    {
        Assert.Equal(FlickerTrace.Draw(Share, Changes, 3, 1).Changes, FlickerTrace.Draw(Share, Changes, 3, 1).Changes);
        Assert.NotEqual(FlickerTrace.Draw(Share, Changes, 3, 1).Changes, FlickerTrace.Draw(Share, Changes, 3, 2).Changes);
    }

    private static double Decay => Changes / (2 * Share * (1 - Share));

    private static IEnumerable<bool> Sampled(double every) => Enumerable.Range(0, (int)(Seconds / every)).Select(i => Long.LitAt(i * every));
}
