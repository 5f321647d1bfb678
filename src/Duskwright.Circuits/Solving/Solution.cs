using System.Collections.Immutable;

namespace Duskwright.Circuits.Solving;

/// <summary>How a solve ended, and the voltages and currents it found.</summary>
/// <param name="Status">Whether to believe it.</param>
/// <param name="Attempt">The named attempt that ended the solve.</param>
/// <param name="Iterations">Newton steps over all attempts.</param>
/// <param name="ResidualAmps">The largest error of Kirchhoff's current law at any node, A.</param>
/// <param name="NodeVolts">Voltage of each node against node 0, V.</param>
/// <param name="ElementAmps">Current of each element, A, in the element's own direction (a source's is what it delivers).</param>
/// <param name="FailedAt">The element beside the node that failed; none when solved.</param>
public sealed record Solution(
    SolveStatus Status,
    string Attempt,
    int Iterations,
    double ResidualAmps,
    ImmutableArray<double> NodeVolts,
    ImmutableArray<double> ElementAmps,
    string? FailedAt);
