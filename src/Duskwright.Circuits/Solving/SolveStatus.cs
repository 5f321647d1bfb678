namespace Duskwright.Circuits.Solving;

/// <summary>How a solve ended.</summary>
public enum SolveStatus
{
    /// <summary>Every node balances.</summary>
    Solved,

    /// <summary>A part of the network hangs on nothing.</summary>
    Floating,

    /// <summary>No attempt made every node balance.</summary>
    NotConverged,
}
