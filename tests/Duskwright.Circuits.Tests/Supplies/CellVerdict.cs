namespace Duskwright.Circuits.Tests.Supplies;

/// <summary>What became of one cell among others.</summary>
/// <param name="Name">Its name in the network.</param>
/// <param name="ReversedAtSeconds">
/// Time lit at which the others first drove it past nothing, s; none when they never did. A reversed alkaline cell makes gas and leaks.
/// </param>
/// <param name="LeastVolts">The least voltage across it, V; below zero its poles are reversed.</param>
/// <param name="MostFedAmps">The most current that its neighbours drove into it backwards, A; zero when none. Primary cells must not be charged.</param>
/// <param name="LeftAtEnd">Share of its charge left at the end, 0 to 1.</param>
internal sealed record CellVerdict(string Name, double? ReversedAtSeconds, double LeastVolts, double MostFedAmps, double LeftAtEnd);
