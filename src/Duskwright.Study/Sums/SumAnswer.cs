using System.Globalization;
using System.Text;
using Duskwright.Plan;
using Duskwright.Study.Figures;

namespace Duskwright.Study.Sums;

/// <summary>The answer to a quick question: sentences with figures, and what to mind.</summary>
public sealed record SumAnswer
{
    /// <summary>The number that answers the question, large.</summary>
    public required Figure Headline { get; init; }

    /// <summary>Sentences with the figures' places marked <c>{0}</c>, <c>{1}</c>.</summary>
    public required string Words { get; init; }

    /// <summary>The figures in the order of their places.</summary>
    public ItemList<Figure> Figures { get; init; } = [];

    /// <summary>What will disappoint or harm, with the remedy.</summary>
    public ItemList<string> Warnings { get; init; } = [];

    /// <summary>The sentences with the numbers in place.</summary>
    public string Text => string.Format(CultureInfo.InvariantCulture, CompositeFormat.Parse(Words), [.. Figures.Select(FigureText.Of)]);
}
