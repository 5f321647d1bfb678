using Duskwright.Faults.Finding;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Mending;

/// <summary>What a meter would show at the pair of a building, off the bank.</summary>
internal sealed record PairToReadQuery(string Building, CircuitInput OffTheBank)
{
    internal PairToRead Answer() => PairToRead.Of(Building, FaultTableQuery.Tagged(CircuitNetwork.Of(OffTheBank)));
}
