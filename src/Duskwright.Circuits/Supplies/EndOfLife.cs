using System.Collections.Immutable;
using Duskwright.Circuits.Networks;

namespace Duskwright.Circuits.Supplies;

/// <summary>When a discharge is over for those who look on: the worst lamp is too dim, or the cells are at their end voltage.</summary>
/// <param name="LitSeconds">Time lit until then, s, straight between the two steps round it.</param>
/// <param name="Cause">Which came first.</param>
/// <param name="Name">The lamp or the pack.</param>
public sealed record EndOfLife(double LitSeconds, EndCause Cause, string Name)
{
    /// <summary>Half of its fresh light: a window then looks dim (L* 76).</summary>
    public const double DimShare = 0.5;

    /// <summary>Finds the end in a discharge.</summary>
    /// <param name="network">The network that was run.</param>
    /// <param name="packs">Its packs.</param>
    /// <param name="run">The discharge.</param>
    /// <param name="dimShare">Share of its own fresh light at which a lamp is too dim, above 0 and below 1.</param>
    /// <returns>The end; none when all lamps and cells held until the run was over.</returns>
    public static EndOfLife? Of(Network network, ImmutableArray<PackOnNetwork> packs, DischargeRun run, double dimShare = DimShare)
    {
        EndOfLife? first = null;
        foreach (var element in network.Elements)
        {
            Func<DischargeStep, double>? held = element switch
            {
                LampElement lamp when Light(lamp, run.Steps[0]) is > 0 and var fresh => step => (Light(lamp, step) / fresh) - dimShare,
                SourceElement source when packs.FirstOrDefault(p => p.SourceName == source.Name) is { } pack =>
                    step => step.Solution.NodeVolts[source.Plus] - step.Solution.NodeVolts[source.Minus] - (pack.Law.Series * pack.Law.Cell.EndVolts),
                _ => null,
            };
            if (held is not null && Crossing(run.Steps, held) is { } seconds && (first is null || seconds < first.LitSeconds))
            {
                first = new EndOfLife(seconds, element is LampElement ? EndCause.LampDim : EndCause.EndVoltage, element.Name);
            }
        }

        return first;
    }

    private static double Light(LampElement lamp, DischargeStep step) =>
        lamp.Law.At(step.Solution.NodeVolts[lamp.A] - step.Solution.NodeVolts[lamp.B], lamp.ResistorOhms).Light;

    private static double? Crossing(ImmutableArray<DischargeStep> steps, Func<DischargeStep, double> held)
    {
        var before = held(steps[0]);
        if (before < 0)
        {
            return 0;
        }

        for (var i = 1; i < steps.Length; i++)
        {
            var after = held(steps[i]);
            if (after < 0)
            {
                return steps[i - 1].LitSeconds + (before / (before - after) * (steps[i].LitSeconds - steps[i - 1].LitSeconds));
            }

            before = after;
        }

        return null;
    }
}
