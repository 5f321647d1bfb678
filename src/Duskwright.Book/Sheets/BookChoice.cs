using System.Globalization;
using Duskwright.Study;

namespace Duskwright.Book.Sheets;

/// <summary>Which part of the book is printed.</summary>
/// <param name="Kind">Which.</param>
/// <param name="Key">Key of the building, id of the pack, word of the sheet or day of the evening; none for the others.</param>
public sealed record BookChoice(BookPart Kind, string? Key = null)
{
    /// <summary>The whole book.</summary>
    public static BookChoice Whole { get; } = new(BookPart.Whole);

    /// <summary>The labels alone.</summary>
    public static BookChoice Labels { get; } = new(BookPart.Labels);

    /// <summary>The sheet of one building.</summary>
    /// <param name="key">Its key.</param>
    /// <returns>The choice.</returns>
    public static BookChoice Building(string key) => new(BookPart.Building, key);

    /// <summary>The sheets of the buildings on one pack.</summary>
    /// <param name="id">The supply's id.</param>
    /// <returns>The choice.</returns>
    public static BookChoice Pack(string id) => new(BookPart.Pack, id);

    /// <summary>One of the town's own sheets: the board's tiles, the circuits, the cut list.</summary>
    /// <param name="id">One of <see cref="BenchBook.SheetWords"/>.</param>
    /// <returns>The choice.</returns>
    public static BookChoice Sheet(string id) => new(BookPart.Sheet, id);

    /// <summary>One evening of the accepted calendar: its work, the sheets of its houses and their labels.</summary>
    /// <param name="day">The day.</param>
    /// <returns>The choice.</returns>
    public static BookChoice Evening(DateOnly day) => new(BookPart.Evening, day.ToString("O", CultureInfo.InvariantCulture));

    /// <summary>The evening that is chosen; none where another part is.</summary>
    internal DateOnly? Day => Kind == BookPart.Evening ? DateOnly.ParseExact(Key!, "O", CultureInfo.InvariantCulture) : null;

    internal bool Holds(BookSheet sheet, TownStudy study) => Kind switch
    {
        BookPart.Labels => sheet.Id is BenchBook.LabelsId or BenchBook.FlagsId or BenchBook.StripsId,
        BookPart.Sheet => sheet.Id == Key,
        BookPart.Building => sheet.Building == Key,
        BookPart.Evening => sheet.Id is BenchBook.TonightId or BenchBook.FlagsId || (sheet.Building is { } house && TonightSheet.Houses(study, Day!.Value).Contains(house)),
        BookPart.Pack => sheet.Building is { } key && study.Packs.First(p => p.Supply.Id == Key).Buildings.Contains(key),
        _ => true,
    };
}

/// <summary>Parts of the book.</summary>
public enum BookPart
{
    /// <summary>All of it.</summary>
    Whole,

    /// <summary>The labels alone.</summary>
    Labels,

    /// <summary>One building.</summary>
    Building,

    /// <summary>The buildings of one pack.</summary>
    Pack,

    /// <summary>One of the town's own sheets.</summary>
    Sheet,

    /// <summary>One evening of the calendar.</summary>
    Evening,
}
