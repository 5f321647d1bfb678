using System.Collections.Immutable;
using Duskwright.Faults.Signatures;

namespace Duskwright.Faults.Finding;

/// <summary>What a pack's current with only one of its switches on says of the faults behind that switch.</summary>
public static class GroupMeter
{
    /// <summary>Weighs a reading.</summary>
    /// <param name="group">What every fault shows with that switch alone on; one pack.</param>
    /// <param name="reading">The pack's current as read then.</param>
    /// <param name="priors">What is taken for granted.</param>
    /// <returns>How well each fault agrees against sound parts: by Bayes' rule its odds after the reading over those before.</returns>
    public static PairFinding Weigh(SignatureTable group, AmpsReading reading, FaultPriors priors)
    {
        var ranking = FaultFinder.Rank(group, Observation.Nothing.Read(0, reading), meter: false, priors);
        var all = group.Rows.Sum(r => priors.Weights[r.Fault.Kind]);
        double Before(Fault fault) => (1 - priors.Healthy - priors.Two) * priors.Weights[fault.Kind] / all / priors.Healthy;
        return new PairFinding(1, ranking.Faults.ToImmutableDictionary(f => (f.Fault.Kind, f.Fault.Place), f => ranking.OneFault * f.Share / ranking.Healthy / Before(f.Fault)));
    }
}
