using System.Globalization;
using Duskwright.Study.Figures;

namespace Duskwright.Book.Lists;

/// <summary>A cell of a list: its text, and the number behind it where a spreadsheet may count on with it.</summary>
public sealed record ListCell
{
    private ListCell(string text, double? number) => (Text, Number) = (text, number);

    /// <summary>The text, the same wherever the list is shown.</summary>
    public string Text { get; }

    /// <summary>The number that the text says, for cells that are bare numbers.</summary>
    public double? Number { get; }

    internal static ListCell Of(string? text) => new(text ?? "", null);

    internal static ListCell Of(double number)
    {
        var text = number.ToString("0.##", CultureInfo.InvariantCulture);
        return new(text, double.Parse(text, CultureInfo.InvariantCulture));
    }

    internal static ListCell Of(Figure? figure) => Of(figure is null ? null : FigureText.Of(figure));

    internal static ListCell Band(Figure? figure) => Of(figure is null ? null : FigureText.Range(figure));
}
