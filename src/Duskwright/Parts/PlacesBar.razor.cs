using Duskwright.Towns;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>The program's mark and the six places.</summary>
public partial class PlacesBar
{
    private static readonly string[] Places = ["Questions", "Town", "Power", "Night", "Bench", "Book"];

    /// <summary>From where the town is looked at; it is taken along.</summary>
    [Parameter, EditorRequired]
    public Viewpoint View { get; set; } = default!;

    /// <summary>Where one is.</summary>
    [Parameter, EditorRequired]
    public string Place { get; set; } = "";

    private bool IsHere(string place) => Place.Split('/')[0] is var here && (string.Equals(here, place, StringComparison.OrdinalIgnoreCase) || (place == "Town" && here is "" or "start" or "house"));
}
