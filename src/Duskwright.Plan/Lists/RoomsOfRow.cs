using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Lists;

/// <summary>Rooms, lamps and windows where a list tells only storeys, width or windows.</summary>
internal static class RoomsOfRow
{
    // A row of equal windows reads as windows where there is about as much wall as glass; common practice, no source.
    private const double GlassShare = 0.5;

    // Domestic windows are taller than wide; common practice, no source.
    private const double TallerThanWide = 1.25;

    /// <summary>The sentence that says what a row tells of the house and the town cannot hold; none where nothing is lost.</summary>
    /// <remarks>Storeys, windows, width and depth are kept in rooms, and rooms are made only where lamps can be shared among them.</remarks>
    internal static string? LeftOut(ListRow row)
    {
        var told = new[] { ("storeys", row.Storeys is not null), ("windows", row.Windows is not null), ("width", row.Width is not null), ("depth", row.Depth is not null) }
            .Where(t => t.Item2).Select(t => t.Item1).ToList();
        return told.Count == 0 || Of(row) is not null
            ? null
            : $"{row.Name}: its {And(told)} {(told is ["width"] or ["depth"] ? "is" : "are")} left out, because {(row.Leds is > 0 ? "no storeys or windows are told" : "it has no LEDs to put in rooms")}.";
    }

    /// <summary>The storeys, ground floor first, and the sentence that says what was assumed; none where the row tells too little.</summary>
    internal static (ItemList<Storey> Storeys, string Assumption)? Of(ListRow row)
    {
        if ((row.Storeys is null && row.Windows is null) || row.Leds is not > 0)
        {
            return null;
        }

        var storeys = row.Storeys ?? 1;
        var roomsOnStorey = Shared(row.Leds.Value, storeys);
        var rooms = roomsOnStorey.Sum(n => Math.Max(n, 1));
        var windows = row.Width is null ? Shared(0, rooms) : Shared(row.Windows ?? rooms, rooms);
        var next = 0;
        var described = roomsOnStorey.Select(lamps =>
        {
            var count = Math.Max(lamps, 1);
            var roomWidth = row.Width is { } width ? width * (1.0 / count) : (Length?)null;
            return new Storey
            {
                Rooms = Enumerable.Range(0, count).Select(r => new Room
                {
                    Width = roomWidth,
                    Depth = row.Depth,
                    Lamps = lamps > 0 ? [new Lamp()] : [],
                    Windows = roomWidth is { } wide ? Row(windows[next++], wide, r) : [],
                }).ToItemList(),
            };
        }).ToItemList();

        var glazing = row.Width is null
            ? "no windows, because its width is not told"
            : $"{windows.Sum()} windows in the front, evenly spaced and as wide as the wall between them";
        return (described, $"{row.Name}: assumed {Counted(storeys, "storey")}, a room for each LED, shared from the ground floor up, and {glazing}.");
    }

    private static ItemList<Window> Row(int count, Length room, int placeOnStorey) =>
        Enumerable.Range(0, count).Select(w =>
        {
            var pitch = room * (1.0 / count);
            var wide = pitch * GlassShare;
            return new Window
            {
                FromLeft = (room * placeOnStorey) + (pitch * w) + (pitch * ((1 - GlassShare) / 2)),
                Width = wide,
                Height = wide * TallerThanWide,
            };
        }).ToItemList();

    // The first get one more where it does not come out even.
    private static int[] Shared(int total, int places) =>
        [.. Enumerable.Range(0, places).Select(p => (total / places) + (p < total % places ? 1 : 0))];

    private static string And(List<string> words) =>
        words.Count == 1 ? words[0] : $"{string.Join(", ", words.SkipLast(1))} and {words[^1]}";

    private static string Counted(int count, string what) => count == 1 ? $"one {what}" : $"{count} {what}s";
}
