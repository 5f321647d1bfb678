using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Study.Figures;
using Duskwright.Study.Results;

namespace Duskwright.Study.Comparing;

/// <summary>What was said otherwise of one house.</summary>
internal static class HousesCompared
{
    internal static SaidChange? Of(BuildingResult was, BuildingResult now)
    {
        var (before, after) = (was.Building, now.Building);
        var said = new Clauses();
        said.Add(before.Name != after.Name, $"was called {before.Name}");
        said.Add(before.State != after.State, $"is {Word(after.State)}, was {Word(before.State)}");
        Moved(said, before.Place, after.Place);
        said.Add(was.Lamps.Count != now.Lamps.Count, $"holds {Count(now.Lamps.Count, "LED")}, was {was.Lamps.Count}");
        said.Add(Kinds(was) != Kinds(now), $"with {Kinds(now)}, was {Kinds(was)}");
        said.Add("most with", Usual(now), Usual(was));
        said.Add(Switches(was) != Switches(now), $"on {Switches(now)}, was on {Switches(was)}");
        said.Add(was.Circuit != now.Circuit, now.Circuit == 0 ? "on no pack now" : $"on pack {now.Circuit}, was {(was.Circuit == 0 ? "on none" : $"{was.Circuit}")}");
        said.Add("its pair is", now.PairLength, was.PairLength);
        said.Add(was.Wire.Id != now.Wire.Id, $"of {now.Wire.Name}, was {was.Wire.Name}");
        said.Add((before.Tile, before.Pack, before.FeedHole, before.Wireway) != (after.Tile, after.Pack, after.FeedHole, after.Wireway), "keeps to another tile, pack, hole or wireway");
        said.Add(before.Storeys.Count != after.Storeys.Count, $"has {Count(after.Storeys.Count, "storey")}, was {before.Storeys.Count}");
        said.Add(Rooms(before) != Rooms(after), $"has {Count(Rooms(after), "room")}, was {Rooms(before)}");
        said.Add(Windows(before) != Windows(after), $"has {Count(Windows(after), "window")}, was {Windows(before)}");
        said.Add(before.Roof != after.Roof, "has another roof");
        said.Add(before.Note != after.Note, "has another note");
        said.Add(said.Count == 0 && !before.Storeys.Equals(after.Storeys), "windows, lamps or rooms are in other places or of other kinds");
        said.Add(said.Count == 0 && before != after, "other details");
        return said.Count == 0 ? null : said.Sentence(after.Name);
    }

    internal static string Count(int count, string thing) => $"{count} {thing}{(count == 1 ? "" : "s")}";

    private static void Moved(Clauses said, Placement? was, Placement? now)
    {
        if (was is not null && now is not null)
        {
            var metres = Math.Sqrt(Math.Pow(now.At.X.Metres - was.At.X.Metres, 2) + Math.Pow(now.At.Y.Metres - was.At.Y.Metres, 2));
            if (metres > 0)
            {
                said.Add("moved by", Figure.Given("way it was moved", metres, "m", "from where it stood to where it stands", Certainty.Computed));
            }

            said.Add(was.Rotation != now.Rotation, $"turned to {now.Rotation.Degrees:0}°, was {was.Rotation.Degrees:0}°");
            said.Add(was with { At = now.At, Rotation = now.Rotation } != now, "on other ground");
        }
        else
        {
            said.Add(was is null && now is not null, "put on the board");
            said.Add(was is not null && now is null, "taken off the board");
        }
    }

    private static string Word(BuildingState state) => state == BuildingState.Idea ? "an idea" : state == BuildingState.Shell ? "a shell" : state.ToString().ToLowerInvariant();

    private static string Kinds(BuildingResult house) => house.Lamps.Count == 0 ? "none" : string.Join(" and ", house.Lamps.Select(l => l.PartUnknown ? "unknown lamps" : l.Part.Name).Distinct());

    private static string Switches(BuildingResult house) =>
        house.Lamps.Select(l => l.SwitchGroup).OfType<string>().Distinct().ToList() is { Count: > 0 } groups ? $"switch {string.Join(" and ", groups)}" : "no switch";

    private static Figure? Usual(BuildingResult house) => house.Lamps.GroupBy(l => l.Resistor.Value).MaxBy(g => g.Count())?.First().Resistor;

    private static int Rooms(Building house) => house.Storeys.Sum(s => s.Rooms.Count);

    private static int Windows(Building house) => house.Storeys.Sum(s => s.Rooms.Sum(r => r.Windows.Count));
}
