using System.Collections.Immutable;
using Duskwright.Circuits.Faulting;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Solving;
using Duskwright.Circuits.Supplies;

namespace Duskwright.Circuits.Tests.Faulting;

/// <summary>Every single fault that a circuit can have.</summary>
internal static class FaultList
{
    /// <summary>Lists them.</summary>
    /// <param name="network">The circuit.</param>
    /// <param name="pairs">Its pairs.</param>
    /// <param name="packs">Its packs of cells.</param>
    /// <returns>
    /// Each wire open and nicked, each lamp open, shorted and reversed, each pair swapped and shorted, each pack with one cell flat; in the
    /// order of the elements, then of the pairs, then of the packs.
    /// </returns>
    /// <exception cref="InvalidOperationException">The circuit has no solution, or a pack no source; the message says where.</exception>
    public static ImmutableArray<CircuitFault> Of(Network network, ImmutableArray<WirePair> pairs, ImmutableArray<PackOnNetwork> packs)
    {
        var sound = OperatingPoint.Solve(network);
        if (sound.Status != SolveStatus.Solved)
        {
            throw new InvalidOperationException($"The circuit has no solution at {sound.FailedAt} ({sound.Status}).");
        }

        var elementsAt = PairSwap.ElementsAt(network);
        return
        [
            .. network.Elements.SelectMany((e, i) => OfPart(network, e, i, sound)),
            .. pairs.SelectMany(p => new[] { PairSwap.Of(network, p, elementsAt), FaultyPart.Bridged(p.Name, p.FarPlus, p.FarMinus) }),
            .. packs.Select(p => FaultyPart.CellFlat(network, SourceOf(network, p), p.Law, p.Start)),
        ];
    }

    private static CircuitFault[] OfPart(Network network, Element element, int place, Solution sound) => element switch
    {
        ResistorElement => [FaultyPart.Open(network, place), FaultyPart.Nicked(network, place, sound)],
        LampElement => [FaultyPart.Open(network, place), FaultyPart.Shorted(network, place), FaultyPart.Reversed(network, place)],
        _ => [],
    };

    private static int SourceOf(Network network, PackOnNetwork pack)
    {
        for (var i = 0; i < network.Elements.Length; i++)
        {
            if (network.Elements[i] is SourceElement source && source.Name == pack.SourceName)
            {
                return i;
            }
        }

        throw new InvalidOperationException($"The circuit has no source called {pack.SourceName}.");
    }
}
