using System.Globalization;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;

namespace Duskwright.Towns;

/// <summary>What is told of a change to a maker who does not see the drawing: what was done and, where one thing alone was moved or sized, where it is now.</summary>
public static class SpokenChange
{
    /// <summary>Tells a change in one sentence or two.</summary>
    /// <param name="before">The town before it.</param>
    /// <param name="after">The town after it.</param>
    /// <param name="label">What was done, or taken back.</param>
    /// <param name="lengths">The unit in which the maker measures.</param>
    /// <returns>The words.</returns>
    public static string Of(Town before, Town after, string label, LengthRule lengths)
    {
        var old = before.Buildings.ToDictionary(b => b.Key, StringComparer.Ordinal);
        var changed = after.Buildings.Where(b => !old.TryGetValue(b.Key, out var was) || was != b).ToList();
        return changed is [var one] && old.TryGetValue(one.Key, out var then) && Now(then, one, lengths) is { } now ? $"{label}. {now}" : $"{label}.";
    }

    private static string? Now(Building was, Building now, LengthRule lengths)
    {
        if (was.Place != now.Place)
        {
            return now.Place is { } place
                ? string.Create(CultureInfo.InvariantCulture, $"It stands {lengths.Words(place.At.X)} from the left edge and {lengths.Words(place.At.Y)} from the front edge{(place.Rotation.Degrees == 0 ? "" : $", turned by {place.Rotation.Degrees:0.#}°")}.")
                : null;
        }

        return (Changed(was, now, r => r.Windows), Changed(was, now, r => r.Lamps)) switch
        {
            ([var window], []) => Sentence($"{lengths.Words(window.Width)} wide and {lengths.Words(window.Height)} high", Said("from the wall's left end", window.FromLeft, lengths), Said("from floor to sill", window.Sill, lengths)),
            ([], [var lamp]) => Sentence(Said("from the room's left wall", lamp.FromLeft, lengths), Said("above the floor", lamp.AboveFloor, lengths), Said("behind the pane", lamp.BehindPane, lengths)),
            _ => null,
        };
    }

    private static string? Sentence(params string?[] parts) => parts.OfType<string>().ToList() is { Count: > 0 } said ? $"It is {string.Join(", ", said)}." : null;

    private static string? Said(string words, Length? length, LengthRule lengths) => length is { } said ? $"{lengths.Words(said)} {words}" : null;

    // Pieces that are other than they were; none where rooms or pieces came or went.
    private static List<T> Changed<T>(Building was, Building now, Func<Room, ItemList<T>> pieces)
        where T : class
    {
        var rooms = was.Storeys.SelectMany(s => s.Rooms).Zip(now.Storeys.SelectMany(s => s.Rooms)).ToList();
        var alike = was.Storeys.Sum(s => s.Rooms.Count) == now.Storeys.Sum(s => s.Rooms.Count) && rooms.TrueForAll(r => pieces(r.First).Count == pieces(r.Second).Count);
        return alike ? [.. rooms.SelectMany(r => pieces(r.First).Zip(pieces(r.Second))).Where(p => !p.First.Equals(p.Second)).Select(p => p.Second)] : [];
    }
}
