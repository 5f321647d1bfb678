using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Lists;

/// <summary>Reads the fields of one line into a row, noting what cannot be understood and what had to be assumed.</summary>
internal sealed class ListRowReader(int line, string usual)
{
    private const int MostStoreys = 12;
    private const int MostWindows = 100;

    /// <summary>The row so far.</summary>
    internal ListRow Row { get; private set; } = new();

    /// <summary>What cannot be understood.</summary>
    internal List<Problem> Problems { get; } = [];

    /// <summary>Lengths without a unit, taken to be in the usual one.</summary>
    internal bool UnitAssumed { get; private set; }

    /// <summary>Reads a field whose column is known.</summary>
    internal void Read(ListField field, string text, string? unitWord)
    {
        if (text.Length == 0 || text is "-" or "–")
        {
            return;
        }

        switch (field)
        {
            case ListField.Name:
                Row = Row with { Name = text };
                break;
            case ListField.Leds:
                Leds(text);
                break;
            case ListField.Distance:
                Size(text, unitWord, "distance", l => Row = Row with { Distance = l });
                break;
            case ListField.Width:
                Size(text, unitWord, "width", l => Row = Row with { Width = l });
                break;
            case ListField.Depth:
                Size(text, unitWord, "depth", l => Row = Row with { Depth = l });
                break;
            case ListField.Storeys:
                Whole(text, "storeys", MostStoreys, n => Row = Row with { Storeys = n });
                break;
            case ListField.Windows:
                Whole(text, "windows", MostWindows, n => Row = Row with { Windows = n });
                break;
            case ListField.Colour:
                Colour(text);
                break;
            case ListField.Resistor:
                Resistor(text);
                break;
            case ListField.SwitchGroup:
                Row = Row with { SwitchGroup = text };
                break;
            case ListField.State:
                State(text);
                break;
            case ListField.Note:
                Row = Row with { Note = text };
                break;
        }
    }

    /// <summary>Reads a field of a line without headings: name, LEDs and distance by their place, the rest by what it looks like.</summary>
    internal void ReadByLooks(int place, string text)
    {
        if (place == 0)
        {
            Read(ListField.Name, text, null);
        }
        else if (text.Length == 0 || text is "-" or "–")
        {
            return;
        }
        else if (place == 1 && (ListWords.Count(text) is null || LengthText.Read(text, null) is not { UnitAssumed: false }))
        {
            Read(ListField.Leds, text, null);
        }
        else if (Row.Distance is null && (ListWords.IsUnknown(text) || LengthText.Read(text, null) is not null))
        {
            Read(ListField.Distance, text, null);
        }
        else
        {
            Read(Looks(text), text, null);
        }
    }

    private ListField Looks(string text)
    {
        var word = ListWords.Count(text)?.Word.ToLowerInvariant();
        if (word is "storey" or "storeys" or "floor" or "floors")
        {
            return ListField.Storeys;
        }

        if (word is "window" or "windows")
        {
            return ListField.Windows;
        }

        if (ListWords.State(text) is not null)
        {
            return ListField.State;
        }

        if (ListWords.Lamp(text) is not null)
        {
            return ListField.Colour;
        }

        if (ResistorText.Read(text) is not null)
        {
            return ListField.Resistor;
        }

        if (text.Length == 1 && char.IsLetter(text[0]))
        {
            return ListField.SwitchGroup;
        }

        // A number in the place of the distance is meant as one; it is said there why it cannot be.
        if (Row.Distance is null && (char.IsAsciiDigit(text[0]) || text[0] == '-'))
        {
            return ListField.Distance;
        }

        Wrong("list-field", $"\"{text}\" cannot be understood", "Put a line of headings on top, such as house, LEDs, distance, storeys.");
        return ListField.Unread;
    }

    private void Leds(string text)
    {
        if (ListWords.IsUnknown(text))
        {
            return;
        }

        if (ListWords.Count(text) is not { } read)
        {
            Wrong("list-leds", $"\"{text}\" is no number of LEDs; a whole number is allowed", "Write 2, or 2 amber, or ? where it is not known.");
            return;
        }

        Row = Row with { Leds = read.Count };
        var words = read.Word.Split(' ', StringSplitOptions.RemoveEmptyEntries).Where(w => w.ToLowerInvariant() is not ("led" or "leds" or "lamp" or "lamps" or "lights"));
        if (string.Join(' ', words) is { Length: > 0 } colour)
        {
            Colour(colour);
        }
    }

    private void Colour(string text)
    {
        if (ListWords.IsUnknown(text))
        {
            Row = Row with { Led = PartId.Unknown };
        }
        else if (ListWords.Lamp(text) is { } part)
        {
            Row = Row with { Led = part };
        }
        else
        {
            Wrong("list-colour", $"\"{text}\" is no colour of lamp that is known; known are {string.Join(", ", ListWords.ColourWords)}", "Write one of them, or the id of a part.");
        }
    }

    private void Resistor(string text)
    {
        if (ResistorText.Read(text) is { } choice)
        {
            Row = Row with { Resistor = choice };
        }
        else
        {
            Wrong("list-resistor", $"\"{text}\" is no resistor; a number of ohms above 0, \"none\" or \"don't know\" is allowed", "Write 270, or 1k2 for 1200 Ω.");
        }
    }

    private void State(string text)
    {
        if (ListWords.State(text) is { } state)
        {
            Row = Row with { State = state };
        }
        else
        {
            Wrong("list-state", $"\"{text}\" is no state of building; idea, shell, fitted and fixed are allowed", "Write fitted once the lamps are in, fixed once it is glued down.");
        }
    }

    private void Size(string text, string? unitWord, string what, Action<Length> take)
    {
        if (ListWords.IsUnknown(text))
        {
            return;
        }

        if (LengthText.Read(text, unitWord ?? usual) is { } read)
        {
            UnitAssumed |= unitWord is null && LengthText.Read(text, null) is { UnitAssumed: true };
            take(read.Length);
        }
        else
        {
            Wrong("list-length", $"\"{text}\" is no {what}; a number in mm, cm, m or inches is allowed", "Write 47 cm, or don't know.");
        }
    }

    private void Whole(string text, string what, int most, Action<int> take)
    {
        if (ListWords.IsUnknown(text))
        {
            return;
        }

        if (ListWords.Count(text) is { Count: var count } && count >= 1 && count <= most)
        {
            take(count);
        }
        else
        {
            Wrong($"list-{what}", $"\"{text}\" is no number of {what}; 1 to {most} are allowed", "Write a whole number, or leave it empty.");
        }
    }

    private void Wrong(string rule, string what, string remedy) => Problems.Add(new Problem(
        $"line {line}",
        rule,
        $"Line {line}{(Row.Name.Length > 0 ? $", {Row.Name}" : "")}: {what}.",
        remedy));
}
