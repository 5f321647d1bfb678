namespace Duskwright.Plan.Lists;

/// <summary>What a column of a list holds.</summary>
internal enum ListField
{
    Unread,
    Name,
    Leds,
    Distance,
    Storeys,
    Width,
    Depth,
    Windows,
    Colour,
    Resistor,
    SwitchGroup,
    State,
    Note,
}

/// <summary>A column as its heading tells it.</summary>
/// <param name="Field">What it holds.</param>
/// <param name="Heading">The heading as written.</param>
/// <param name="UnitWord">The unit that the heading names, for the bare numbers below it.</param>
internal sealed record ListColumn(ListField Field, string Heading, string? UnitWord)
{
    private static readonly (ListField Field, string[] Words)[] Known =
    [
        (ListField.Name, ["house", "houses", "name", "building", "buildings", "house name", "what"]),
        (ListField.Leds, ["led", "leds", "lamp", "lamps", "lights", "bulbs", "number of leds", "no of leds", "number of lamps", "how many leds", "how many"]),
        (ListField.Distance, ["distance", "how far", "far", "dist", "distance to bank", "distance from bank", "distance to the bank"]),
        (ListField.Storeys, ["storeys", "storey", "stories", "floors"]),
        (ListField.Width, ["width", "wide", "front"]),
        (ListField.Depth, ["depth", "deep"]),
        (ListField.Windows, ["windows", "window", "panes", "number of windows"]),
        (ListField.Colour, ["colour", "color", "led colour", "led color", "lamp colour", "led kind", "kind of led"]),
        (ListField.Resistor, ["resistor", "resistors", "resistance", "ohm", "ohms"]),
        (ListField.SwitchGroup, ["group", "switch", "switch group"]),
        (ListField.State, ["state", "progress", "how far built"]),
        (ListField.Note, ["note", "notes", "remark", "remarks"]),
    ];

    /// <summary>The headings that are understood, one for each field.</summary>
    internal static IEnumerable<string> Headings => Known.Select(k => k.Words[0]);

    /// <summary>The columns that a line of headings tells; none where the line is a building already.</summary>
    internal static IReadOnlyList<ListColumn>? From(IReadOnlyList<string> fields)
    {
        var said = fields.Where(f => f.Length > 0).ToList();
        var columns = fields.Select(Read).ToList();
        var understood = columns.Count(c => c.Field != ListField.Unread);
        return understood * 2 >= said.Count && understood > 0 && !said.Any(f => char.IsAsciiDigit(f[0])) ? columns : null;
    }

    private static ListColumn Read(string heading)
    {
        var words = heading.ToLowerInvariant().Split([' ', '_', '(', ')', '[', ']', '/', '.', ':'], StringSplitOptions.RemoveEmptyEntries).ToList();
        string? unit = null;
        if (words.Count > 1 && LengthText.IsUnit(words[^1]))
        {
            unit = words[^1];
            words.RemoveAt(words.Count - 1);
            if (words.Count > 1 && words[^1] == "in")
            {
                words.RemoveAt(words.Count - 1);
            }
        }
        else if (words.Count > 1 && words[^1] is "ohm" or "ohms" or "ω")
        {
            words.RemoveAt(words.Count - 1);
        }

        var plain = string.Join(' ', words);
        return new ListColumn(Known.FirstOrDefault(k => k.Words.Contains(plain)).Field, heading, unit);
    }
}
