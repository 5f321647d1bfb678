using System.Collections.Immutable;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Solving;
using Duskwright.Faults.Tagging;

namespace Duskwright.Faults.Signatures;

/// <summary>What every single fault of a network shows.</summary>
/// <param name="Tagged">The network.</param>
/// <param name="Healthy">What it shows without a fault.</param>
/// <param name="Rows">Each fault with what it shows.</param>
public sealed record SignatureTable(TaggedNetwork Tagged, Signature Healthy, ImmutableArray<FaultSignature> Rows)
{
    /// <summary>Simulates every fault, one at a time.</summary>
    /// <param name="tagged">The network.</param>
    /// <returns>The table.</returns>
    /// <exception cref="InvalidOperationException">A network has no solution; the message names the element.</exception>
    public static SignatureTable Of(TaggedNetwork tagged)
    {
        var (light, amps) = Solved(tagged, tagged.Network);
        Signature Seen((ImmutableArray<double> Light, ImmutableArray<double> Amps) faulty) => new(
            [.. faulty.Light.Zip(light, (now, should) => should > 0 ? now / should : 1)], faulty.Amps);
        return new SignatureTable(
            tagged,
            Seen((light, amps)),
            [.. FaultyNetwork.Faults(tagged).Select(f => new FaultSignature(f, Seen(Solved(tagged, FaultyNetwork.With(tagged, f)))))]);
    }

    private static (ImmutableArray<double> Light, ImmutableArray<double> Amps) Solved(TaggedNetwork tagged, Network network)
    {
        var solution = OperatingPoint.Solve(network);
        if (solution.Status != SolveStatus.Solved)
        {
            throw new InvalidOperationException($"The circuit has no solution at {solution.FailedAt} ({solution.Status}).");
        }

        double Light(LampTag tag) => network.Elements[tag.Element] is LampElement lamp
            ? lamp.Law.At(solution.NodeVolts[lamp.Anode] - solution.NodeVolts[lamp.Cathode], lamp.ResistorOhms).Light
            : 0;
        return ([.. tagged.Lamps.Select(Light)], [.. tagged.Packs.Select(p => solution.ElementAmps[p.Source])]);
    }
}
