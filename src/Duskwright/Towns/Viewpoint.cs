using System.Globalization;
using Microsoft.AspNetCore.WebUtilities;

namespace Duskwright.Towns;

/// <summary>What is looked at: the hour of the show, the light in the room, and what is selected. It lives in the address.</summary>
/// <param name="Hour">Hours since the lamps were switched on.</param>
/// <param name="Lux">Light in the room, lx.</param>
/// <param name="At">What is selected: a building's key or <c>pack:ID</c>; none for the town.</param>
public sealed record Viewpoint(double Hour, double Lux, string? At)
{
    /// <summary>The dimmest room on the dial, lx.</summary>
    public const double LeastLux = 0.1;

    /// <summary>The brightest room on the dial, lx.</summary>
    public const double MostLux = 10_000;

    /// <summary>Reads an address; what it does not say is taken from the town.</summary>
    /// <param name="uri">The address.</param>
    /// <param name="hours">Hours of the show.</param>
    /// <param name="usualLux">Light in the room where the address is silent.</param>
    /// <returns>The viewpoint, within the dials.</returns>
    public static Viewpoint Of(string uri, double hours, double usualLux)
    {
        var query = QueryHelpers.ParseQuery(new Uri(uri).Query);
        return new Viewpoint(
            Math.Clamp(Number(query.GetValueOrDefault("hour"), 0), 0, hours),
            Math.Clamp(Number(query.GetValueOrDefault("lux"), usualLux), LeastLux, MostLux),
            query.TryGetValue("at", out var at) && at.Count > 0 && at[0]!.Length > 0 ? at[0] : null);
    }

    /// <summary>The address of a place seen from here.</summary>
    /// <param name="place">The place: <c>power</c>.</param>
    /// <returns>The address, without the host.</returns>
    public string In(string place)
    {
        var query = new Dictionary<string, string?>
        {
            ["hour"] = Hour.ToString("0.##", CultureInfo.InvariantCulture),
            ["lux"] = Lux.ToString("0.###", CultureInfo.InvariantCulture),
            ["at"] = At,
        };
        return QueryHelpers.AddQueryString($"/{place}", query.Where(q => q.Value is not null));
    }

    /// <summary>A word for a room's light.</summary>
    public string RoomWords => Lux switch
    {
        < 0.5 => "moonlight",
        < 5 => "one candle",
        < 20 => "evening lamp",
        < 100 => "living room",
        < 500 => "lit kitchen",
        < 2000 => "bright workshop",
        _ => "daylight",
    };

    private static double Number(string? text, double otherwise) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value) ? value : otherwise;
}
