using Duskwright.Circuits.Networks;

namespace Duskwright.Circuits.Solving;

/// <summary>The steady state of a network.</summary>
public static class OperatingPoint
{
    /// <summary>Finds the voltages and currents of a network from nothing.</summary>
    /// <param name="network">The network.</param>
    /// <returns>The solution; its status says whether to believe it.</returns>
    public static Solution Solve(Network network) => new NetworkSolver(network).Solve(network);
}
