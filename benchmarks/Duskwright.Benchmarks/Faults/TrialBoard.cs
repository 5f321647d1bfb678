using System.Collections.Immutable;
using Duskwright.Circuits.Faulting;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Solving;
using Duskwright.Circuits.Tests.Faulting;
using Duskwright.Faults.Signatures;

namespace Duskwright.Benchmarks.Faults;

/// <summary>One pack in the trial: its noise-free table, the classes fixed from it beforehand, and what it shows built from other parts.</summary>
internal sealed class TrialBoard
{
    // What a meter on the pack tells apart: a lamp takes two milliamperes; without one nothing is read.
    private static readonly BankView WithMeter = new(0.05, 0.001);
    private static readonly BankView ByEye = new(1e9, 1e9);

    internal TrialBoard(TrialPack pack)
    {
        Pack = pack;
        Table = SignatureTable.Of(pack.Build());
        Faults = [.. Table.Rows.Select(r => r.Fault)];
        var network = Table.Tagged.Network;
        var sound = OperatingPoint.Solve(network);
        var (soundEffect, effects) = FaultSweep.Of(network, [.. Faults.Select(f => FaultyNetwork.InCircuit(Table.Tagged, sound, f))]);
        Classes = new() { [true] = ClassOf(soundEffect, effects, WithMeter), [false] = ClassOf(soundEffect, effects, ByEye) };
    }

    internal TrialPack Pack { get; }

    internal SignatureTable Table { get; }

    internal ImmutableArray<Fault> Faults { get; }

    /// <summary>The class of each fault, with a meter and without; −1 is all well.</summary>
    internal Dictionary<bool, int[]> Classes { get; }

    /// <summary>What each fault shows with the parts of a draw: light as a share of what the planned house gives on fresh cells, and the pack's amperes and volts behind the ammeter.</summary>
    internal (double[] SoundLight, double SoundAmps, double SoundVolts, double[][] Light, double[] Amps, double[] Volts) Show(TrialDraw draw, IEnumerable<int> faults, double burdenOhms)
    {
        var tagged = Pack.Build(draw);
        var source = (SourceElement)tagged.Network.Elements[0];
        var network = new Network(tagged.Network.NodeCount, tagged.Network.Elements.SetItem(0, source with { Ohms = source.Ohms + burdenOhms }));
        tagged = tagged with { Network = network };
        var sound = OperatingPoint.Solve(network);
        var fresh = LampAmps(Pack.Build(draw, fresh: true).Network);
        var aged = LampAmps(network).Zip(fresh, (a, f) => f > 0 ? a / f : 1).ToArray();
        var (soundEffect, effects) = FaultSweep.Of(network, [.. faults.Select(f => Worsened(FaultyNetwork.InCircuit(tagged, sound, Faults[f]), network, draw.Severity))]);
        double[] Seen(FaultEffect effect) => [.. effect.LightShares.Zip(aged, (s, a) => s * a)];
        return (Seen(soundEffect), soundEffect.PackAmps[0], soundEffect.PackVolts[0], [.. effects.Select(Seen)], [.. effects.Select(e => e.PackAmps[0])], [.. effects.Select(e => e.PackVolts[0])]);
    }

    /// <summary>Two faults at once.</summary>
    internal (double[] Light, double Amps, double Volts) ShowBoth(TrialDraw draw, int one, int other, double burdenOhms)
    {
        var tagged = Pack.Build(draw);
        var sound = OperatingPoint.Solve(tagged.Network);
        var (a, b) = (FaultyNetwork.InCircuit(tagged, sound, Faults[one]), FaultyNetwork.InCircuit(tagged, sound, Faults[other]));
        var elements = b.In(a.In(tagged.Network)).Elements;
        elements = elements.SetItem(0, ((SourceElement)elements[0]) with { Ohms = ((SourceElement)elements[0]).Ohms + burdenOhms });
        var both = new Network(tagged.Network.NodeCount, elements);
        var fresh = LampAmps(Pack.Build(draw, fresh: true).Network);
        var solution = OperatingPoint.Solve(both);
        var lamps = tagged.Lamps.Select((l, i) => both.Elements[l.Element] is LampElement ? Math.Max(0, solution.ElementAmps[l.Element]) / fresh[i] : 0);
        return ([.. lamps], solution.ElementAmps[0], solution.NodeVolts[1]);
    }

    private static double[] LampAmps(Network network)
    {
        var solution = OperatingPoint.Solve(network);
        return [.. Enumerable.Range(0, network.Elements.Length).Where(i => network.Elements[i] is LampElement).Select(i => solution.ElementAmps[i])];
    }

    private static CircuitFault Worsened(CircuitFault fault, Network network, double severity) => fault.Kind != CircuitFaultKind.WireNicked
        ? fault
        : fault with
        {
            Changes = [.. fault.Changes.Select(c => (c.Element, (Element)((ResistorElement)c.Now with { Ohms = ((ResistorElement)network.Elements[c.Element]).Ohms + (severity * (((ResistorElement)c.Now).Ohms - ((ResistorElement)network.Elements[c.Element]).Ohms)) })))],
        };

    private static int[] ClassOf(FaultEffect sound, ImmutableArray<FaultEffect> effects, BankView view)
    {
        var (unseen, classes) = FaultClasses.Of(sound, effects, view);
        var of = new int[effects.Length];
        foreach (var (members, c) in classes.Select((m, c) => (m, c)).Append((unseen, -1)))
        {
            foreach (var fault in members)
            {
                of[fault] = c;
            }
        }

        return of;
    }
}
