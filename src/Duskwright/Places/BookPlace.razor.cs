using System.Globalization;
using Duskwright.Book.Drawings;
using Duskwright.Book.Lists;
using Duskwright.Serve;
using Duskwright.Study.Results;
using Microsoft.AspNetCore.WebUtilities;

namespace Duskwright.Places;

/// <summary>The book on the screen: one house's drawings, labels, and every list as it is printed and taken away.</summary>
public partial class BookPlace
{
    private string? _key;
    private string _paper = "a4";
    private string? _since;
    private string? _said;

    // None on a phone that was let in.
    private PhoneDoor? Door => Services.GetService<PhoneDoor>();

    private BuildingResult? House => Open.Study.Buildings.FirstOrDefault(b => b.Building.Key == HouseKey);

    private string? HouseKey
    {
        get => _key ?? View.At ?? Open.Study.Buildings.FirstOrDefault(b => b.Lamps.Count > 0)?.Building.Key;
        set => _key = value;
    }

    private string? Since => _since ?? (Open.Points.Count > 0 ? Open.Points[^1].Name : null);

    private string Pdf(string? only, string? since = null) => QueryHelpers.AddQueryString(
        $"/take/{_paper}.pdf", new Dictionary<string, string?> { ["only"] = only, ["since"] = since }.Where(q => q.Value is not null));

    // A named point is what later printings are compared with.
    private void Remember()
    {
        var name = string.Create(CultureInfo.InvariantCulture, $"printed {TimeProvider.System.GetLocalNow():d MMMM yyyy, HH:mm}");
        _said = Open.NamePoint(name).Count == 0 ? "Next time only what has changed need be printed." : string.Join(' ', Open.Trouble.Select(t => t.Message));
        _since = null;
    }

    private void Turned() => Look(View with { At = _key });

    private static string Wide(Drawing picture) => string.Create(CultureInfo.InvariantCulture, $"width:{picture.Width / picture.Pen:0.##}mm;max-width:100%");

    // Labels stand above as labels; tests are read at the bench.
    private static IEnumerable<TownList> Shown(IEnumerable<TownList> lists) => lists.Where(l => l.Id is not ("label" or "test"));
}
