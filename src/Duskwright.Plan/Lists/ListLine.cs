namespace Duskwright.Plan.Lists;

/// <summary>One line of a list, taken apart.</summary>
/// <param name="Number">Its number in the text, from 1.</param>
/// <param name="Fields">Its fields without the blanks around them.</param>
/// <param name="IsOpen">Whether a quote is opened and never closed.</param>
internal sealed record ListLine(int Number, IReadOnlyList<string> Fields, bool IsOpen)
{
    /// <summary>The lines of a text; empty ones are left out.</summary>
    internal static IEnumerable<ListLine> Of(string text) =>
        text.TrimStart('\uFEFF').Split('\n')
            .Select((line, index) => (Line: line.Replace('\u00A0', ' ').Trim('\r', ' '), Number: index + 1))
            .Where(l => l.Line.Trim('\t', ',', ';', ' ').Length > 0)
            .Select(l => Of(l.Line, l.Number));

    private static ListLine Of(string line, int number)
    {
        // Each line by its own mark: makers paste typed lines under those of a spreadsheet.
        foreach (var mark in "\t;")
        {
            var fields = Split(line, mark, keepDecimalCommas: false, out var open);
            if (fields.Count > 1 || open)
            {
                return new ListLine(number, fields, open);
            }
        }

        // "Chandlery, 4, 47,5 cm": where the marks have a blank behind them, a comma between two digits is a decimal comma.
        var typed = Split(line, ',', keepDecimalCommas: true, out var typedOpen);
        if (typed.Count > 2 && line.Contains(", ", StringComparison.Ordinal))
        {
            return new ListLine(number, typed, typedOpen);
        }

        // "Mill house 4 LEDs 47,5 cm" has no mark but a decimal comma.
        var loose = typed.Count == 1 && !typedOpen && !line.StartsWith('"') ? LooseLine.Fields(line) : typed;
        return loose.Count > 1 && typed.Count == 1
            ? new ListLine(number, loose, false)
            : new ListLine(number, Split(line, ',', keepDecimalCommas: false, out var plainOpen), plainOpen);
    }

    // RFC 4180: a quote is special only where a field starts with it, so that 18" stays eighteen inches.
    private static List<string> Split(string line, char mark, bool keepDecimalCommas, out bool open)
    {
        var fields = new List<string>();
        var at = 0;
        open = false;
        while (at <= line.Length)
        {
            while (at < line.Length && line[at] == ' ')
            {
                at++;
            }

            if (at < line.Length && line[at] == '"')
            {
                var close = at + 1;
                while (close < line.Length && (line[close] != '"' || (close + 1 < line.Length && line[close + 1] == '"')))
                {
                    close += line[close] == '"' ? 2 : 1;
                }

                open |= close >= line.Length;
                fields.Add(line[(at + 1)..Math.Min(close, line.Length)].Replace("\"\"", "\"", StringComparison.Ordinal).Trim());
                var next = close < line.Length ? line.IndexOf(mark, close) : -1;
                at = next < 0 ? line.Length + 1 : next + 1;
                continue;
            }

            var end = at;
            while (end < line.Length && (line[end] != mark || (keepDecimalCommas && BetweenDigits(line, end))))
            {
                end++;
            }

            fields.Add(line[at..end].Trim());
            at = end + 1;
        }

        return fields;
    }

    private static bool BetweenDigits(string line, int at) =>
        at > 0 && at + 1 < line.Length && char.IsAsciiDigit(line[at - 1]) && char.IsAsciiDigit(line[at + 1]);
}
