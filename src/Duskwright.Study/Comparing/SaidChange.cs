using System.Globalization;
using System.Text;
using Duskwright.Plan;
using Duskwright.Study.Figures;

namespace Duskwright.Study.Comparing;

/// <summary>One thing in which two towns differ, or one thing that came of it.</summary>
/// <param name="Words">A sentence with the figures' places marked <c>{0}</c>, <c>{1}</c>.</param>
/// <param name="Figures">The figures, in the order of their places.</param>
public sealed record SaidChange(string Words, ItemList<Figure> Figures)
{
    /// <summary>The sentence with its numbers in place.</summary>
    public string Text => string.Format(CultureInfo.InvariantCulture, CompositeFormat.Parse(Words), [.. Figures.Select(FigureText.Of)]);
}
