using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Study;
using Duskwright.Study.Lists;
using Duskwright.Study.Results;

namespace Duskwright.Book.Sheets;

/// <summary>How a bench book is printed.</summary>
/// <param name="Paper">The paper.</param>
/// <param name="Date">The date on every sheet.</param>
public sealed record BookOptions(PaperSize Paper, DateOnly Date)
{
    /// <summary>Routes that are suggested and not accepted yet, drawn thin on the board.</summary>
    public ItemList<Route> Suggested { get; init; } = [];

    /// <summary>Where a phone in the house finds the town, without a page: <c>http://192.168.1.20:5188</c>. Labels then carry a code that opens their house's page; none prints labels without one.</summary>
    public string? Address { get; init; }

    /// <summary>Which part is printed.</summary>
    public BookChoice Choice { get; init; } = BookChoice.Whole;

    /// <summary>An earlier printing; only what has changed since is printed. None prints all.</summary>
    public Printing? Since { get; init; }

    /// <summary>The labels to print: all, or those of the evening's houses.</summary>
    internal IReadOnlyList<LabelRow> LabelsOf(TownStudy study)
    {
        if (Choice.Day is not { } day)
        {
            return study.Labels;
        }

        var houses = TonightSheet.Houses(study, day);
        var codes = study.Buildings.Where(b => houses.Contains(b.Building.Key)).Select(b => b.Code).ToHashSet(StringComparer.Ordinal);
        return [.. study.Labels.Where(l => codes.Contains(l.Code))];
    }

    /// <summary>The page of a house for whoever stands at the bench.</summary>
    internal string? HousePage(BuildingResult house) => Address is null ? null : $"{Address.TrimEnd('/')}/bench/house/{Uri.EscapeDataString(house.Building.Key)}";
}

/// <summary>Papers.</summary>
public enum PaperSize
{
    /// <summary>210 × 297 mm (ISO 216).</summary>
    A4,

    /// <summary>215.9 × 279.4 mm (ANSI/ASME Y14.1, 8.5 × 11 inches).</summary>
    Letter,
}
