using System.Collections.Immutable;
using Duskwright.Circuits.Faulting;
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
    /// <summary>How far each tagged pack's current may lie from the planned one with sound parts: deviation of its logarithm, cells apart.</summary>
    public required ImmutableArray<double> AmpsSpread { get; init; }

    /// <summary>What the sound circuit gives on ever emptier cells, as planned first.</summary>
    public required ImmutableArray<PackAge> Ages { get; init; }

    /// <summary>What a shorted pair shows on each age, by its place among the rows: volts that have broken down fall otherwise than sound ones. Lights are shares of what the lamps should give.</summary>
    internal ImmutableDictionary<int, ImmutableArray<Signature>> ShortsByAge { get; private init; } = ImmutableDictionary<int, ImmutableArray<Signature>>.Empty;

    /// <summary>Simulates every fault, each alone.</summary>
    /// <param name="tagged">The network.</param>
    /// <returns>The table.</returns>
    /// <exception cref="InvalidOperationException">A network has no solution; the message names the element.</exception>
    public static SignatureTable Of(TaggedNetwork tagged)
    {
        var sound = OperatingPoint.Solve(tagged.Network);
        if (sound.Status != SolveStatus.Solved)
        {
            throw new InvalidOperationException($"The circuit has no solution at {sound.FailedAt} ({sound.Status}).");
        }

        var faults = FaultyNetwork.Faults(tagged);
        var (healthy, faulty) = Sweep(tagged, tagged.Network, [.. faults.Select(f => FaultyNetwork.InCircuit(tagged, sound, f))]);
        var ages = PackAge.Of(tagged);
        int[] shorts = [.. Enumerable.Range(0, faults.Length).Where(f => faults[f].Kind == FaultKind.PairShorted)];
        var aged = PackAge.Networks(tagged).Zip(ages, (network, age) => Sweep(tagged, network, [.. shorts.Select(f => FaultyNetwork.InCircuit(tagged, sound, faults[f]))])
            .Faulty.Select(s => s with { LightShares = [.. s.LightShares.Zip(age.Light, (share, light) => share * light)] }).ToList()).ToList();
        return new SignatureTable(tagged, healthy, [.. faults.Zip(faulty, (fault, signature) => new FaultSignature(fault, signature))])
        {
            AmpsSpread = CurrentSpread.Of(tagged),
            Ages = ages,
            ShortsByAge = shorts.Select((f, i) => (f, i)).ToImmutableDictionary(x => x.f, x => aged.Select(a => a[x.i]).ToImmutableArray()),
        };
    }

    /// <summary>What faults show in another state of the same network.</summary>
    internal (Signature Healthy, ImmutableArray<Signature> Faulty) Sweep(Network network, ImmutableArray<CircuitFault> faults) => Sweep(Tagged, network, faults);

    private static (Signature Healthy, ImmutableArray<Signature> Faulty) Sweep(TaggedNetwork tagged, Network network, ImmutableArray<CircuitFault> faults)
    {
        var elements = network.Elements;
        int[] Places<T>() => [.. Enumerable.Range(0, elements.Length).Where(i => elements[i] is T)];
        var (lampPlaces, sourcePlaces) = (Places<LampElement>(), Places<SourceElement>());
        int[] lamps = [.. tagged.Lamps.Select(l => Array.BinarySearch(lampPlaces, l.Element))];
        int[] packs = [.. tagged.Packs.Select(p => Array.BinarySearch(sourcePlaces, p.Source))];
        Signature Seen(FaultEffect effect) => effect.Status == SolveStatus.Solved
            ? new([.. lamps.Select(l => effect.LightShares[l])], [.. packs.Select(p => effect.PackAmps[p])], [.. packs.Select(p => effect.PackVolts[p])])
            : throw new InvalidOperationException($"The circuit has no solution at {effect.FailedAt} ({effect.Status}).");
        var (sound, faulty) = FaultSweep.Of(network, faults);
        return (Seen(sound), [.. faulty.Select(Seen)]);
    }
}
