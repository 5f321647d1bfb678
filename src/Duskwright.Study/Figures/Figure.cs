using Duskwright.Plan;
using Duskwright.Plan.Parts;

namespace Duskwright.Study.Figures;

/// <summary>A number that can be asked "why?": it knows its formula, its inputs, its source and how sure it is.</summary>
public sealed record Figure
{
    private Figure(string name, double value, string unit)
    {
        Name = name;
        Value = value;
        Unit = unit;
    }

    /// <summary>What the number is, in a maker's words: "pack under load".</summary>
    public string Name { get; }

    /// <summary>The value in its unit, SI without prefix (A, V, Ω, m, W, cd/m², lx) or h, "", "L*", "money".</summary>
    public double Value { get; }

    /// <summary>The unit's symbol; <see cref="FigureText"/> chooses the prefix a maker expects.</summary>
    public string Unit { get; }

    /// <summary>The lowest value that the stated tolerances and unknowns allow, where it has been worked out.</summary>
    public double? Low { get; private init; }

    /// <summary>The highest value that the stated tolerances and unknowns allow, where it has been worked out.</summary>
    public double? High { get; private init; }

    /// <summary>The formula; none for what is given.</summary>
    public Law? Law { get; private init; }

    /// <summary>What the formula was fed with, in its order.</summary>
    public ItemList<Figure> Inputs { get; private init; } = [];

    /// <summary>Where the value, or the formula, comes from.</summary>
    public string Source { get; private init; } = "";

    /// <summary>How sure it is.</summary>
    public Certainty Certainty { get; private init; }

    internal static Figure Given(string name, double value, string unit, string source, Certainty certainty) =>
        new(name, value, unit) { Source = source, Certainty = certainty };

    internal static Figure From(Law law, string name, string unit, params ReadOnlySpan<Figure> inputs)
    {
        var values = new double[inputs.Length];
        for (var i = 0; i < inputs.Length; i++)
        {
            values[i] = inputs[i].Value;
        }

        return new(name, law.Compute(values), unit)
        {
            Law = law,
            Inputs = ItemList.Of(inputs),
            Source = law.Source,
            Certainty = Certainty.Computed,
        };
    }

    /// <summary>Computes the value again from the inputs, down to what is given.</summary>
    /// <returns>The value in <see cref="Unit"/>.</returns>
    public double Evaluate() =>
        Law is null ? Value : Law.Compute([.. Inputs.Select(input => input.Evaluate())]);

    internal Figure Between(double one, double other) =>
        this with { Low = Math.Min(Value, Math.Min(one, other)), High = Math.Max(Value, Math.Max(one, other)) };
}
