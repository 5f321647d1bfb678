using Duskwright.Plan.Document;

namespace Duskwright.Study.Wiring;

/// <summary>What a pair is longer than the straight line from the bank to its house.</summary>
public static class PairAllowance
{
    /// <summary>What a pair has over the length of its way.</summary>
    /// <param name="town">The town.</param>
    /// <returns>Metres; the usual quarter metre (common practice, no source) where the town says nothing.</returns>
    public static double SlackMetres(Town town) => town.Wiring.Slack?.Metres ?? Usual.SlackMetres;

    /// <summary>Way over straight distance where no way is drawn.</summary>
    /// <param name="town">The town.</param>
    /// <returns>1 or more; the usual 1.4 (common practice, no source) where the town says nothing.</returns>
    public static double DetourFactor(Town town) => town.Wiring.DetourFactor ?? Usual.DetourFactor;
}
