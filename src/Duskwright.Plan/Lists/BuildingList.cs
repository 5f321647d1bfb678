using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;

namespace Duskwright.Plan.Lists;

/// <summary>A town from a plain list of buildings: a spreadsheet's CSV, or lines typed as they come to mind.</summary>
/// <remarks>
/// Fields stand between commas, semicolons or tabs, each line by its own mark. With a line of headings on top the columns may be
/// any of house, LEDs, distance, storeys, width, depth, windows, colour, resistor, group, state and note in any order; without,
/// name, LEDs and distance come first and the rest is told by what it looks like.
/// </remarks>
public static class BuildingList
{
    private const int MostCharacters = 1_000_000;

    /// <summary>Reads the file of a list.</summary>
    /// <param name="bytes">UTF-8, or UTF-16 with its mark, as spreadsheets save "Unicode text".</param>
    /// <param name="usual">The unit of lengths for which none is said: mm, cm, m, in or ft.</param>
    /// <returns>A town with what was assumed, or every problem found.</returns>
    public static ListResult Read(ReadOnlySpan<byte> bytes, string usual = "mm") =>
        ListBytes.Text(bytes) is { } text
            ? Read(text, usual)
            : Refused("", "list-encoding", "The list is not UTF-8 text.", "Save it again as CSV UTF-8, or as plain text in UTF-8.");

    /// <summary>Reads a list.</summary>
    /// <param name="text">The list as text.</param>
    /// <param name="usual">The unit of lengths for which none is said: mm, cm, m, in or ft.</param>
    /// <returns>A town with what was assumed, or every problem found, each with its line.</returns>
    public static ListResult Read(string text, string usual = "mm")
    {
        if (text.Length > MostCharacters)
        {
            return Refused("", "too-large", $"The list has {text.Length} characters; at most {MostCharacters} are read.", "Check that this is a list of buildings.");
        }

        var lines = ListLine.Of(text).ToList();
        var columns = lines.Count > 0 ? ListColumn.From(lines[0].Fields) : null;
        var body = columns is null ? lines : lines[1..];
        if (body.Count == 0)
        {
            return Refused("line 1", "empty", "The list holds no building.", "Write one house on each line: Chandlery, 4, 47 cm.");
        }

        if (columns is not null && columns.All(c => c.Field != ListField.Name))
        {
            return Refused("line 1", "list-headings", "Line 1: no heading says where the names stand.", "Call that column house or name.");
        }

        var readers = body.Select(line => (Line: line, Reader: Read(line, columns, usual))).ToList();
        var problems = readers.SelectMany(r => r.Reader.Problems).ToList();

        // Of a line whose quote is never closed nothing more can be said.
        var whole = readers.Where(r => !r.Line.IsOpen).ToList();
        var town = TownOf(whole.Select(r => r.Reader.Row), out var assumptions);
        problems.AddRange(TownChecks.Of(town).Select(p => AtLine(p, i => whole[i].Line.Number)));

        if (readers.Any(r => r.Reader.UnitAssumed))
        {
            assumptions.Insert(0, $"Lengths without a unit are taken as {LengthText.Called(usual)}.");
        }

        assumptions.AddRange((columns ?? []).Where(c => c.Field == ListField.Unread && c.Heading.Length > 0)
            .Select(c => $"The column \"{c.Heading}\" was left out; understood are {string.Join(", ", ListColumn.Headings)}."));
        return problems.Count > 0
            ? new ListResult(null, problems.ToItemList(), [])
            : new ListResult(town, [], assumptions.ToItemList());
    }

    private static ListRowReader Read(ListLine line, IReadOnlyList<ListColumn>? columns, string usual)
    {
        var reader = new ListRowReader(line.Number, usual);
        if (line.IsOpen)
        {
            reader.Problems.Add(new Problem($"line {line.Number}", "list-quote", $"Line {line.Number}: a quote is opened and never closed.", "Close it, or take it out."));
            return reader;
        }

        for (var i = 0; i < line.Fields.Count; i++)
        {
            if (columns is null)
            {
                reader.ReadByLooks(i, line.Fields[i]);
            }
            else if (i < columns.Count)
            {
                reader.Read(columns[i].Field, line.Fields[i], columns[i].UnitWord);
            }
            else if (line.Fields[i].Length > 0)
            {
                reader.Problems.Add(new Problem($"line {line.Number}", "list-fields", $"Line {line.Number} has {line.Fields.Count} fields, and there are {columns.Count} headings.", "Put fields that hold a comma between quotes."));
                break;
            }
        }

        return reader;
    }

    private static Town TownOf(IEnumerable<ListRow> rows, out List<string> assumptions)
    {
        var said = new List<string>();
        var buildings = new List<Building>();
        foreach (var row in rows)
        {
            var rooms = RoomsOfRow.Of(row);
            if (rooms is { } assumed)
            {
                said.Add(assumed.Assumption);
            }
            else if (RoomsOfRow.LeftOut(row) is { } left)
            {
                said.Add(left);
            }

            if (row.Leds is null)
            {
                said.Add($"{row.Name}: the number of LEDs is not known yet.");
            }

            buildings.Add(new Building
            {
                Name = row.Name,
                Leds = rooms is null ? row.Leds : null,
                Led = row.Led,
                Distance = row.Distance,
                Resistor = row.Resistor,
                SwitchGroup = row.SwitchGroup,
                State = row.State,
                Note = row.Note,
                Storeys = rooms?.Storeys ?? [],
            });
        }

        assumptions = said;
        return new Town
        {
            Name = "My town",
            Buildings = buildings.ToItemList(),
            SwitchGroups = buildings.Select(b => b.SwitchGroup).OfType<string>().Distinct(StringComparer.Ordinal)
                .Select(id => new SwitchGroup { Id = id }).ToItemList(),
        };
    }

    // A check of the town names a building by its place in the list; the maker sees lines.
    private static Problem AtLine(Problem problem, Func<int, int> lineOf)
    {
        var open = problem.Path.IndexOf('[', StringComparison.Ordinal);
        var close = problem.Path.IndexOf(']', StringComparison.Ordinal);
        if (!problem.Path.StartsWith("buildings[", StringComparison.Ordinal) || !int.TryParse(problem.Path.AsSpan(open + 1, close - open - 1), out var index))
        {
            return problem;
        }

        var line = lineOf(index);
        return problem with
        {
            Path = $"line {line}",
            Message = $"Line {line}: {problem.Message}",
            Remedy = problem.Rule == "named-twice" ? "Give one of them another name." : problem.Remedy, // a list has no ids
        };
    }

    private static ListResult Refused(string path, string rule, string message, string remedy) =>
        new(null, [new Problem(path, rule, message, remedy)], []);
}
