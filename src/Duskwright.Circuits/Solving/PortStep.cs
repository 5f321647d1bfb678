namespace Duskwright.Circuits.Solving;

/// <summary>What a step of the walk over the ports does.</summary>
internal enum PortStepKind : byte
{
    /// <summary>A chain with one port in it is part of a port.</summary>
    Link,

    /// <summary>Two ports one after the other act as a third.</summary>
    Join,

    /// <summary>A port whose far node is joined to nothing else carries no current.</summary>
    End,
}

/// <summary>One step of the walk: upwards it gathers conductances, downwards it spreads voltages.</summary>
/// <param name="Kind">What it does.</param>
/// <param name="Port">The port below; of a join the first one.</param>
/// <param name="Sign">1 where that port points the same way as what it is part of, otherwise −1.</param>
/// <param name="Second">Of a join the second port.</param>
/// <param name="SecondSign">Its sign.</param>
/// <param name="Into">The port above.</param>
/// <param name="Chain">Of a link its chain, whose resistance it passes.</param>
internal readonly record struct PortStep(PortStepKind Kind, int Port, double Sign, int Second, double SecondSign, int Into, int Chain);
