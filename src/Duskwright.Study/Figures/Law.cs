namespace Duskwright.Study.Figures;

/// <summary>A formula by which a figure follows from its inputs.</summary>
/// <param name="Words">The formula as a maker reads it: "current = (pack − wire − lamp) ÷ resistor".</param>
/// <param name="Source">Where the formula comes from.</param>
/// <param name="Compute">The formula itself, on the inputs' values in the order of the figure, SI units.</param>
public sealed record Law(string Words, string Source, Func<IReadOnlyList<double>, double> Compute);
