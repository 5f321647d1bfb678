using System.Collections.Immutable;
using Duskwright.Circuits.Fitting;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Supplies;

namespace Duskwright.Circuits.Tolerance;

/// <summary>How long packs of cells as they are sold last on lamps as they are sold.</summary>
public static class RunTimeSpread
{
    /// <summary>Draws circuits and runs each down.</summary>
    /// <param name="network">The circuit as planned.</param>
    /// <param name="packs">Its packs.</param>
    /// <param name="spreads">How parts spread; of a pack, the charge and resistance of its cells.</param>
    /// <param name="settings">Hours a day and the most hours; a circuit that holds longer counts with the most hours.</param>
    /// <param name="draws">Circuits to draw, 1 or more; sixty give the range to about a tenth of itself.</param>
    /// <param name="seed">The same seed gives the same result.</param>
    /// <param name="dimShare">Share of its own fresh light at which a lamp is too dim, above 0 and below 1.</param>
    /// <param name="cancel">Ends the work early.</param>
    /// <returns>Time lit until the worst lamp is dim or the cells are at their end voltage, s.</returns>
    public static Estimate Run(
        Network network, ImmutableArray<PackOnNetwork> packs, Spreads spreads, DischargeSettings settings, int draws, int seed, double dimShare = EndOfLife.DimShare, CancellationToken cancel = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(draws, 1);
        var parts = new DrawnParts(network, spreads, []);
        var values = new StratifiedDraws(draws, parts.Dimensions + (2 * packs.Length), unchecked((ulong)seed));
        var seconds = new double[draws];
        Parallel.For(0, draws, new ParallelOptions { CancellationToken = cancel }, draw =>
        {
            var drawn = new Network(network.NodeCount, [.. parts.Of(values, draw)]);
            ImmutableArray<PackOnNetwork> stores = [.. packs.Select((p, i) => Varied(p, spreads, values.Normal(draw, parts.Dimensions + (2 * i)), values.Normal(draw, parts.Dimensions + (2 * i) + 1)))];

            // The run may stop once the end has been passed.
            EndOfLife? end = null;
            var steps = ImmutableArray.CreateBuilder<DischargeStep>();
            Discharge.Run(drawn, stores, settings with
            {
                Stop = step =>
                {
                    steps.Add(step);
                    end = steps.Count < 2 ? null : EndOfLife.Of(drawn, stores, new DischargeRun([steps[0], .. steps.Skip(Math.Max(1, steps.Count - 2))]), dimShare);
                    return end is not null;
                },
            });
            seconds[draw] = end?.LitSeconds ?? steps[^1].LitSeconds;
        });
        Array.Sort(seconds);
        double At(double share) => seconds[Math.Min(draws - 1, (int)(share * draws))];
        return new Estimate(At(0.05), At(0.5), At(0.95));
    }

    private static PackOnNetwork Varied(PackOnNetwork pack, Spreads spreads, double charge, double ohms)
    {
        var cell = pack.Law.Cell;
        var chargeShare = Math.Max(0.3, 1 + (spreads.Charge * charge));
        var ohmsShare = Math.Exp(spreads.SourceOhms * ohms);
        var varied = cell with
        {
            ChargeCoulombs = cell.ChargeCoulombs * chargeShare,
            Curve = [.. cell.Curve.Select(p => p with { Ohms = p.Ohms * ohmsShare })],
        };
        return pack with
        {
            Law = pack.Law with { Cell = varied },
            Start = new CellState(pack.Start.AvailableCoulombs * chargeShare, pack.Start.BoundCoulombs * chargeShare),
        };
    }
}
