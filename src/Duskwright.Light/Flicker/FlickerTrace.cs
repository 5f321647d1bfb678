using System.Collections.Immutable;

namespace Duskwright.Light.Flicker;

/// <summary>One possible course of a flickering lamp: lit and dark by turns, each stay as long as chance will have it.</summary>
/// <param name="LitFirst">Whether it begins lit.</param>
/// <param name="Changes">When it changes, s, ascending.</param>
/// <remarks>A random telegraph signal: stays follow the exponential law, so that the past does not tell the next change (Papoulis, Probability, Random Variables, and Stochastic Processes; from memory).</remarks>
public sealed record FlickerTrace(bool LitFirst, ImmutableArray<double> Changes)
{
    /// <summary>Draws a course.</summary>
    /// <param name="litShare">Mean share of the time that it is lit, between 0 and 1.</param>
    /// <param name="changesPerSecond">Mean changes a second, Hz, more than 0.</param>
    /// <param name="seconds">How long, s.</param>
    /// <param name="seed">The same seed gives the same course.</param>
    /// <returns>The course.</returns>
    public static FlickerTrace Draw(double litShare, double changesPerSecond, double seconds, int seed)
    {
        var chance = new Random(seed);
        var lit = chance.NextDouble() < litShare;
        var first = lit;
        var changes = ImmutableArray.CreateBuilder<double>();

        // Half of all changes end a lit stay: a cycle lasts two changes, and the lit share of it is lit.
        for (var at = 0.0; ; lit = !lit)
        {
            var stay = 2 * (lit ? litShare : 1 - litShare) / changesPerSecond;
            at -= stay * Math.Log(1 - chance.NextDouble());
            if (at >= seconds)
            {
                return new FlickerTrace(first, changes.ToImmutable());
            }

            changes.Add(at);
        }
    }

    /// <summary>Whether it is lit at a time.</summary>
    /// <param name="seconds">From 0, s.</param>
    /// <returns>True where it is.</returns>
    public bool LitAt(double seconds)
    {
        var found = Changes.BinarySearch(seconds);
        return LitFirst == ((found < 0 ? ~found : found + 1) % 2 == 0);
    }
}
