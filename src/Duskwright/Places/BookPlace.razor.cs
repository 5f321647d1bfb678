using System.Globalization;
using Duskwright.Book.Drawings;
using Duskwright.Book.Lists;
using Duskwright.Study.Results;

namespace Duskwright.Places;

/// <summary>The book on the screen: one house's drawings, labels, and every list as it is printed and taken away.</summary>
public partial class BookPlace
{
    private string? _key;

    private BuildingResult? House => Open.Study.Buildings.FirstOrDefault(b => b.Building.Key == HouseKey);

    private string? HouseKey
    {
        get => _key ?? View.At ?? Open.Study.Buildings.FirstOrDefault(b => b.Lamps.Count > 0)?.Building.Key;
        set => _key = value;
    }

    private void Turned() => Look(View with { At = _key });

    private static string Wide(Drawing picture) => string.Create(CultureInfo.InvariantCulture, $"width:{picture.Width / picture.Pen:0.##}mm;max-width:100%");

    // Labels stand above as labels; tests are read at the bench.
    private static IEnumerable<TownList> Shown(IEnumerable<TownList> lists) => lists.Where(l => l.Id is not ("label" or "test"));
}
