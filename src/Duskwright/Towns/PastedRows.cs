using System.Globalization;
using Duskwright.Plan;
using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Lists;

namespace Duskwright.Towns;

/// <summary>Rows pasted from a spreadsheet: the good ones are one edit, the bad ones stay with a sentence each.</summary>
/// <param name="Edit">The edit; none where no row will do.</param>
/// <param name="Sentences">What is wrong, one sentence a row: its place as it was pasted, what it begins with, and why.</param>
/// <param name="Left">The rows that will not do, below the headings, as they were pasted; empty where all will.</param>
public sealed record PastedRows(TakeRows? Edit, ItemList<string> Sentences, string Left)
{
    /// <summary>Reads pasted rows against the town.</summary>
    /// <param name="town">The town as it stands.</param>
    /// <param name="text">Rows with fields between tabs, semicolons or commas; headings may stand on top.</param>
    /// <param name="lengths">The unit of lengths for which none is said; millimetres where nobody has chosen.</param>
    /// <returns>What comes of them.</returns>
    public static PastedRows Of(Town town, string text, LengthRule? lengths = null)
    {
        var lines = text.Split('\n').Select(l => l.TrimEnd('\r')).ToList();
        var head = lines.FirstOrDefault(l => l.Trim().Length > 0);
        var headed = head is not null && BuildingList.Read(head).Problems.Any(p => p.Rule is "empty" or "list-headings");
        var (sentences, left) = (new List<string>(), new List<string>());
        var (taken, groups, now) = (new Dictionary<string, Building>(StringComparer.Ordinal), new List<SwitchGroup>(), town);
        foreach (var (line, number) in lines.Select((l, i) => (l, i + 1)).Where(l => l.l.Trim().Length > 0 && !(headed && ReferenceEquals(l.l, head))))
        {
            var read = BuildingList.Read(headed ? $"{head}\n{line}" : line, (lengths ?? LengthRule.All[0]).Unit);
            var (row, why) = Row(now, read, taken);
            if (row is { } building)
            {
                var group = building.SwitchGroup is { } id && now.SwitchGroups.All(g => g.Id != id) ? new SwitchGroup { Id = id } : null;
                var after = new TakeRows([building], group is null ? [] : [group]).Apply(now);
                if (TownChecks.Of(after) is [var problem, ..])
                {
                    Refuse(number, line, $"{problem.Message} {problem.Remedy}");
                    continue;
                }

                (now, taken[building.Key]) = (after, building);
                if (group is not null)
                {
                    groups.Add(group);
                }
            }
            else
            {
                Refuse(number, line, why!);
            }
        }

        return new PastedRows(
            taken.Count == 0 ? null : new TakeRows(taken.Values.ToItemList(), groups.ToItemList()),
            sentences.ToItemList(),
            left.Count == 0 ? "" : string.Join('\n', headed ? left.Prepend(head!) : left));

        void Refuse(int number, string line, string why)
        {
            sentences.Add(string.Create(CultureInfo.InvariantCulture, $"Row {number}, “{line.Split('\t', ';', ',')[0].Trim()}”: {why}"));
            left.Add(line);
        }
    }

    private static (Building? Building, string? Why) Row(Town town, ListResult read, Dictionary<string, Building> taken)
    {
        if (read.Town is not { Buildings: [var said] })
        {
            return (null, read.Problems is [var first, ..] ? $"{Bare(first.Message)} {first.Remedy}" : "it holds no house.");
        }

        if (taken.ContainsKey(said.Key))
        {
            return (null, $"{said.Name} stands in an earlier row already. Give one of them another name.");
        }

        if (town.Buildings.FirstOrDefault(b => b.Key == said.Key) is not { } there)
        {
            return (said, null);
        }

        var rooms = there.DescribedLamps().Count();
        return said.Leds is { } leds && rooms > 0 && leds != rooms
            ? (null, $"{said.Name} has {rooms} LEDs drawn in its rooms, and the row says {leds}. Draw them, or leave the number out.")
            : (there with
            {
                Leds = rooms > 0 ? null : said.Leds ?? there.Leds,
                Led = said.Led ?? there.Led,
                Distance = said.Distance ?? there.Distance,
                Resistor = said.Resistor ?? there.Resistor,
                SwitchGroup = said.SwitchGroup ?? there.SwitchGroup,
                State = said.State == BuildingState.Idea ? there.State : said.State,
                Note = said.Note ?? there.Note,
            }, null);
    }

    // The list counts its own lines; here each was read alone.
    private static string Bare(string message) => message.StartsWith("Line ", StringComparison.Ordinal) && message.IndexOf(": ", StringComparison.Ordinal) is > 0 and var colon ? message[(colon + 2)..] : message;
}
