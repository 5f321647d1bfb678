using System.Collections.Immutable;
using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Supplies;

namespace Duskwright.Circuits.Tests.Supplies;

/// <summary>A pack taken apart into its cells, so that a weak one, or a row of old ones beside new ones, shows what it does.</summary>
/// <remarks>
/// Each cell is a source of its own in the network; the solver then shares the current among the rows and finds which cell is driven
/// backwards. Run it with <see cref="DischargeSettings.PastDryCells"/> to see reversal.
/// </remarks>
/// <param name="Network">The network with a source for every cell; all other elements keep their places, what is new comes last.</param>
/// <param name="Cells">The cells, row by row from minus to plus.</param>
internal sealed record CellByCell(Network Network, ImmutableArray<PackOnNetwork> Cells)
{
    /// <summary>Takes a pack apart.</summary>
    /// <param name="network">A network in which one source stands for the pack.</param>
    /// <param name="sourceName">That source's name.</param>
    /// <param name="rows">Rows side by side, each of cells from minus to plus; at least one row, and one cell in each.</param>
    /// <param name="extraOhms">Resistance of contacts and holder in all, Ω, zero or more.</param>
    /// <returns>The network and its cells, called "cell 2 of row 1 of " and the source's name.</returns>
    /// <exception cref="ArgumentException">No source has the name, or there is no row, or one without cells.</exception>
    public static CellByCell Split(Network network, string sourceName, ImmutableArray<ImmutableArray<CellInPack>> rows, double extraOhms)
    {
        if (rows.IsEmpty || rows.Any(r => r.IsEmpty))
        {
            throw new ArgumentException("A pack has at least one row, and at least one cell in each.", nameof(rows));
        }

        var at = network.Elements.ToList().FindIndex(e => e is SourceElement && e.Name == sourceName);
        if (at < 0)
        {
            throw new ArgumentException($"No source of the network is called {sourceName}.", nameof(sourceName));
        }

        var pack = (SourceElement)network.Elements[at];
        var nodes = network.NodeCount;
        var added = new List<Element>();
        var cells = ImmutableArray.CreateBuilder<PackOnNetwork>();
        var plus = extraOhms > 0 ? nodes++ : pack.Plus;
        for (var row = 0; row < rows.Length; row++)
        {
            var minus = pack.Minus;
            for (var i = 0; i < rows[row].Length; i++)
            {
                var name = $"cell {i + 1} of row {row + 1} of {sourceName}";
                var end = i == rows[row].Length - 1 ? plus : nodes++;
                var cell = rows[row][i];
                var (volts, ohms) = cell.Law.At(cell.State);
                added.Add(new SourceElement(name, end, minus, volts, ohms));
                cells.Add(new PackOnNetwork(name, new PackLaw(cell.Law, 1, 1, 0), cell.State));
                minus = end;
            }
        }

        if (extraOhms > 0)
        {
            added.Add(new ResistorElement($"contacts of {sourceName}", plus, pack.Plus, extraOhms));
        }

        return new CellByCell(new Network(nodes, [.. network.Elements.SetItem(at, added[0]), .. added.Skip(1)]), cells.ToImmutable());
    }

    /// <summary>What became of each cell.</summary>
    /// <param name="run">A discharge of <see cref="Network"/> with <see cref="Cells"/>.</param>
    /// <returns>One verdict a cell, in the order of <see cref="Cells"/>.</returns>
    public ImmutableArray<CellVerdict> Verdicts(DischargeRun run) =>
        [.. Cells.Select((cell, i) => Verdict(run, network: Network, cell, i, Network.Elements.First(e => e.Name == cell.SourceName)))];

    private static CellVerdict Verdict(DischargeRun run, Network network, PackOnNetwork cell, int index, Element element)
    {
        var at = network.Elements.IndexOf(element);
        var verdict = new CellVerdict(cell.SourceName, null, double.PositiveInfinity, 0, 1);
        foreach (var step in run.Steps)
        {
            var volts = step.Solution.NodeVolts[element.B] - step.Solution.NodeVolts[element.A];
            verdict = verdict with
            {
                ReversedAtSeconds = verdict.ReversedAtSeconds ?? (volts < 0 ? step.LitSeconds : null),
                LeastVolts = Math.Min(verdict.LeastVolts, volts),
                MostFedAmps = Math.Max(verdict.MostFedAmps, -step.Solution.ElementAmps[at]),
                LeftAtEnd = cell.Law.Cell.Left(step.Packs[index]),
            };
        }

        return verdict;
    }
}
