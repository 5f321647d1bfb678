using System.Collections.Immutable;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Solving;
using Duskwright.Faults.Testing;

namespace Duskwright.Faults.Signatures;

/// <summary>What all well and every fault would show while a pack holds just the volts that were read: its cells, holder and the meter's burden no longer matter.</summary>
/// <param name="Healthy">With all well; lights are shares of what the lamps should give.</param>
/// <param name="Rows">With each fault, in the order of the table.</param>
/// <param name="Deviation">Of the logarithm of the sound pack's current, by batch, lengths and the error of the volts.</param>
internal sealed record SignaturesAtVolts(Signature Healthy, ImmutableArray<Signature> Rows, double Deviation)
{
    // Lost at an ampere: a microvolt.
    private const double StiffOhms = 1e-6;
    private const double LeastLight = 1e-9;

    /// <summary>Solves every fault on those volts.</summary>
    /// <param name="table">What they would show on the planned cells.</param>
    /// <param name="pack">Place of the pack among the tagged packs.</param>
    /// <param name="volts">The volts read, V, more than zero.</param>
    /// <param name="errorVolts">How far off they may be either way, V.</param>
    /// <exception cref="InvalidOperationException">A network has no solution; the message names the element.</exception>
    internal static SignaturesAtVolts Of(SignatureTable table, int pack, double volts, double errorVolts)
    {
        var (tagged, source) = (table.Tagged, table.Tagged.Packs[pack].Source);
        var planned = OperatingPoint.Solve(tagged.Network);
        var stiff = new Network(tagged.Network.NodeCount, tagged.Network.Elements.SetItem(source, ((SourceElement)tagged.Network.Elements[source]) with { OpenVolts = volts, Ohms = StiffOhms }));
        var fresh = PackAge.Lights(tagged, tagged.Network, planned);
        ImmutableArray<double> shares = [.. PackAge.Lights(tagged, stiff, OperatingPoint.Solve(stiff)).Zip(fresh, (now, should) => should > LeastLight ? now / should : 1)];

        // A flat cell shows in the volts, and on the volts that are read as nothing else.
        int[] changed = [.. Enumerable.Range(0, table.Rows.Length).Where(r => table.Rows[r].Fault is not { Kind: FaultKind.CellFlat } flat || flat.Index != pack)];
        var (sound, faulty) = table.Sweep(stiff, [.. changed.Select(r => FaultyNetwork.InCircuit(tagged, planned, table.Rows[r].Fault))]);
        Signature Aged(Signature s) => s with { LightShares = [.. s.LightShares.Zip(shares, (fault, age) => fault * age)] };
        var healthy = Aged(sound);
        var rows = Enumerable.Repeat(healthy, table.Rows.Length).ToArray();
        for (var i = 0; i < changed.Length; i++)
        {
            rows[changed[i]] = Aged(faulty[i]);
        }

        var spread = Prediction.Of(new TestCircuit(tagged.Network, source, CurrentSpread.Factors(tagged)).AtVolts(source, volts, errorVolts)).Deviation;
        return new SignaturesAtVolts(healthy, [.. rows], spread);
    }
}
