using System.Collections.Immutable;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Solving;
using Duskwright.Circuits.Supplies;
using Duskwright.Faults.Tagging;

namespace Duskwright.Faults.Signatures;

/// <summary>What a sound circuit gives on cells that are emptier than planned, as shares of what it gives on those planned.</summary>
/// <param name="Volts">Volts between the ends of each tagged pack.</param>
/// <param name="Amps">Current of each tagged pack.</param>
/// <param name="Light">Light of each tagged lamp.</param>
public sealed record PackAge(ImmutableArray<double> Volts, ImmutableArray<double> Amps, ImmutableArray<double> Light)
{
    // What is left, as a share of what is planned; below it cells are changed.
    private static readonly double[] Left = [1, 0.9, 0.8, 0.7, 0.6, 0.5, 0.4, 0.3];

    // Less than this is no light, and no current.
    private const double Nothing = 1e-6;

    /// <summary>The circuit on ever emptier cells, as planned first; one age where no supply has cells.</summary>
    internal static ImmutableArray<PackAge> Of(TaggedNetwork tagged)
    {
        if (tagged.Packs.All(p => p.Law is null))
        {
            return [new PackAge([.. tagged.Packs.Select(_ => 1.0)], [.. tagged.Packs.Select(_ => 1.0)], [.. tagged.Lamps.Select(_ => 1.0)])];
        }

        var shown = Left.Select(left => Shown(tagged, left)).ToList();
        ImmutableArray<double> Shares(IEnumerable<double> now, IEnumerable<double> planned) => [.. now.Zip(planned, (n, p) => p > Nothing ? n / p : 1)];
        return [.. shown.Select(s => new PackAge(Shares(s.Volts, shown[0].Volts), Shares(s.Amps, shown[0].Amps), Shares(s.Light, shown[0].Light)))];
    }

    /// <summary>Between two ages.</summary>
    internal static PackAge Between(PackAge one, PackAge other, double along)
    {
        ImmutableArray<double> Mixed(ImmutableArray<double> a, ImmutableArray<double> b) => [.. a.Zip(b, (x, y) => x + (along * (y - x)))];
        return new PackAge(Mixed(one.Volts, other.Volts), Mixed(one.Amps, other.Amps), Mixed(one.Light, other.Light));
    }

    /// <summary>The network on each of those ages of its cells.</summary>
    internal static IEnumerable<Network> Networks(TaggedNetwork tagged) => tagged.Packs.All(p => p.Law is null) ? [tagged.Network] : Left.Select(left => At(tagged, left));

    private static Network At(TaggedNetwork tagged, double left)
    {
        var elements = tagged.Network.Elements.ToBuilder();
        foreach (var pack in tagged.Packs)
        {
            if (pack.Law is { } law)
            {
                var state = CellState.At(law.Cell, law.Cell.Left(pack.State) * left);
                elements[pack.Source] = ((SourceElement)elements[pack.Source]) with { OpenVolts = law.OpenVolts(state), Ohms = law.Ohms(state) };
            }
        }

        return new Network(tagged.Network.NodeCount, elements.ToImmutable());
    }

    private static (double[] Volts, double[] Amps, double[] Light) Shown(TaggedNetwork tagged, double left)
    {
        var network = At(tagged, left);
        var solution = OperatingPoint.Solve(network);
        return (
            [.. tagged.Packs.Select(p => -Across(network, solution, p.Source))],
            [.. tagged.Packs.Select(p => solution.ElementAmps[p.Source])],
            Lights(tagged, network, solution));
    }

    /// <summary>Light of each tagged lamp, as its law counts it.</summary>
    internal static double[] Lights(TaggedNetwork tagged, Network network, Solution solution) =>
        [.. tagged.Lamps.Select(l => (LampElement)network.Elements[l.Element] is var lamp ? lamp.Law.At(Across(network, solution, l.Element), lamp.ResistorOhms).Light : 0)];

    private static double Across(Network network, Solution solution, int element) => solution.NodeVolts[network.Elements[element].A] - solution.NodeVolts[network.Elements[element].B];
}
