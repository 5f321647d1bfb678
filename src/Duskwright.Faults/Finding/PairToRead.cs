using System.Collections.Immutable;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Solving;
using Duskwright.Faults.Signatures;
using Duskwright.Faults.Tagging;

namespace Duskwright.Faults.Finding;

/// <summary>A pair that can be taken off the bank, power off, and what the resistance range of a usual meter would show at its ends.</summary>
/// <param name="Name">Whose pair it is.</param>
/// <param name="Sound">With all well behind it, Ω; none where it shows no number.</param>
/// <param name="Faulty">With each fault behind it, by kind and place, Ω; none where it shows no number.</param>
public sealed record PairToRead(string Name, double? Sound, ImmutableDictionary<(FaultKind Kind, string Place), double?> Faulty)
{
    /// <summary>Computes it.</summary>
    /// <param name="name">Whose pair it is.</param>
    /// <param name="alone">What hangs on the pair, on one pack, whose place the meter takes.</param>
    /// <returns>What would be shown.</returns>
    /// <exception cref="InvalidOperationException">A circuit has no solution; the message names the element.</exception>
    public static PairToRead Of(string name, TaggedNetwork alone)
    {
        var (sound, source) = (OperatingPoint.Solve(alone.Network), alone.Packs[0].Source);
        double? Shown(Network network) => PairMeter.Shows(network, source, PairRange.Ohms, reversed: false);
        return new PairToRead(
            name,
            Shown(alone.Network),
            FaultyNetwork.Faults(alone).Where(f => f.Kind != FaultKind.CellFlat)
                .ToImmutableDictionary(f => (f.Kind, f.Place), f => Shown(FaultyNetwork.InCircuit(alone, sound, f).In(alone.Network))));
    }

    /// <summary>What would be shown with a fault anywhere.</summary>
    /// <param name="fault">The fault.</param>
    /// <returns>Ω; none where it shows no number. One that is not behind this pair leaves it as it is.</returns>
    public double? Shows(Fault fault) => Faulty.TryGetValue((fault.Kind, fault.Place), out var ohms) ? ohms : Sound;
}
