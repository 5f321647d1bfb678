using System.Globalization;
using System.Text;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Study.Figures;

namespace Duskwright.Study.Sums;

/// <summary>The answer to a quick question: sentences with figures, and what to mind.</summary>
public sealed record SumAnswer
{
    /// <summary>The number that answers the question, large.</summary>
    public required Figure Headline { get; init; }

    /// <summary>What answers it better than a number, larger still: "No"; none where the number does.</summary>
    public string? Verdict { get; init; }

    /// <summary>Sentences with the figures' places marked <c>{0}</c>, <c>{1}</c>.</summary>
    public required string Words { get; init; }

    /// <summary>The figures in the order of their places.</summary>
    public ItemList<Figure> Figures { get; init; } = [];

    /// <summary>What will disappoint or harm, with the remedy.</summary>
    public ItemList<string> Warnings { get; init; } = [];

    /// <summary>What follows one after the other: steps, rows, ways.</summary>
    public ItemList<string> Steps { get; init; } = [];

    /// <summary>The little town it was computed in: to be drawn, and to go on with; none where no town was needed.</summary>
    public Town? Town { get; init; }

    /// <summary>The sentences with the numbers in place.</summary>
    public string Text => string.Format(CultureInfo.InvariantCulture, CompositeFormat.Parse(Words), [.. Figures.Select(FigureText.Of)]);
}
