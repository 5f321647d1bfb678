using Duskwright.Faults.Finding;
using Duskwright.Faults.Signatures;

namespace Duskwright.Benchmarks.Faults;

/// <summary>The finder asks, the case answers: from one lamp that was noticed, till what is wrong is named or nothing tells it further apart.</summary>
/// <remarks>Who looks at one window of a pack sees them all: asked for any lamp, all answer at once, and that counts as one test; so do volts and amperes together.</remarks>
internal static class TrialDialogue
{
    /// <summary>What is wrong counts as named from this probability of its class.</summary>
    internal const double Named = 0.8;

    /// <summary>Asks through one case.</summary>
    /// <param name="board">The pack.</param>
    /// <param name="made">The case.</param>
    /// <param name="meter">Whether a meter is at hand.</param>
    /// <param name="classes">Weights of classes by a ranking.</param>
    /// <returns>How many tests were asked for, whether a class was named, and whether the likeliest was right.</returns>
    internal static (int Tests, bool Named, bool Right) Of(TrialBoard board, TrialCase made, bool meter, Func<FaultRanking, Dictionary<(int, int), double>> classes)
    {
        var noticed = Array.FindIndex(made.Seen, l => l != LampLook.Lit);
        var (told, seen) = (made.Observed(), noticed < 0 ? Observation.Nothing : Observation.Nothing.Saw(noticed, made.Seen[noticed]));
        for (var tests = 0; ; tests++)
        {
            var ranking = FaultFinder.Rank(board.Table, seen, meter);
            var weights = classes(ranking);
            var likeliest = weights.MaxBy(w => w.Value);
            var named = likeliest.Value >= Named * weights.Values.Sum();
            if (named || ranking.Next is not { } next)
            {
                return (tests, named, likeliest.Key == made.Truth);
            }

            seen = next.Kind == LookKind.SeeLamp
                ? seen with { Looks = told.Looks }
                : seen with { Readings = told.Readings, Volts = told.Volts };
        }
    }
}
