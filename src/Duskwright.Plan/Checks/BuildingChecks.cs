using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Checks;

/// <summary>Buildings, their rooms, windows and lamps.</summary>
internal static class BuildingChecks
{
    /// <summary>The most lamps in one building.</summary>
    internal const int MostLeds = 200;

    private const double MostSizeMillimetres = 20_000;

    // Footprints are drawn by hand; a millimetre over the edge is the pen and not the house.
    private const double EdgeMillimetres = 1;

    internal static IEnumerable<Problem> Of(Town town)
    {
        foreach (var problem in Twice.In(town.Buildings.Select(b => b.Key), "buildings", "building"))
        {
            yield return problem;
        }

        for (var i = 0; i < town.Buildings.Count; i++)
        {
            foreach (var problem in OfBuilding(town, town.Buildings[i], $"buildings[{i}]"))
            {
                yield return problem;
            }
        }
    }

    private static IEnumerable<Problem> OfBuilding(Town town, Building building, string path)
    {
        var name = building.Name;
        if (building.Leds is < 0 or > MostLeds)
        {
            yield return new Problem($"{path}.leds", "led-count", $"{name} has {building.Leds} LEDs; 0 to {MostLeds} are allowed.", "Count its lamps.");
        }

        var described = building.DescribedLamps().Count();
        if (building.Leds is { } said && described > 0 && said != described)
        {
            yield return new Problem($"{path}.leds", "led-count", $"{name} is said to have {said} LEDs, and its rooms hold {described}.", "Leave \"leds\" out where the rooms are described.");
        }

        foreach (var problem in Sizes(
            name,
            path,
            ("distance_mm", building.Distance),
            ("pair_length_mm", building.PairLength),
            ("tail_length_mm", building.TailLength),
            ("place.width_mm", building.Place?.Width),
            ("place.depth_mm", building.Place?.Depth),
            ("roof.rise_mm", building.Roof?.Rise)))
        {
            yield return problem;
        }

        foreach (var problem in OfPlace(town, building, path))
        {
            yield return problem;
        }

        for (var s = 0; s < building.Storeys.Count; s++)
        {
            foreach (var problem in Sizes($"A storey of {name}", $"{path}.storeys[{s}]", ("height_mm", building.Storeys[s].Height)))
            {
                yield return problem;
            }

            for (var r = 0; r < building.Storeys[s].Rooms.Count; r++)
            {
                var room = building.Storeys[s].Rooms[r];
                foreach (var problem in Sizes($"A room of {name}", $"{path}.storeys[{s}].rooms[{r}]", ("width_mm", room.Width), ("depth_mm", room.Depth)))
                {
                    yield return problem;
                }

                for (var w = 0; w < room.Windows.Count; w++)
                {
                    foreach (var problem in OfWindow(building, building.Storeys[s], room.Windows[w], $"{path}.storeys[{s}].rooms[{r}].windows[{w}]"))
                    {
                        yield return problem;
                    }
                }

                for (var l = 0; l < room.Lamps.Count; l++)
                {
                    if (room.Lamps[l].BehindPane is { Millimetres: <= 0 or > 1000 } behind)
                    {
                        yield return new Problem($"{path}.storeys[{s}].rooms[{r}].lamps[{l}].behind_pane_mm", "size", $"A lamp of {name} sits {behind.Millimetres} mm behind its pane; more than 0 and at most 1000 mm is allowed.", "Leave it out where it is not known.");
                    }
                }
            }
        }
    }

    private static IEnumerable<Problem> Sizes(string what, string path, params (string Field, Length? Length)[] sizes) =>
        from size in sizes
        where size.Length is { Millimetres: <= 0 or > MostSizeMillimetres }
        select new Problem($"{path}.{size.Field}", "size", $"{what}: {size.Field} is {size.Length!.Value.Millimetres}; more than 0 and at most {MostSizeMillimetres} mm is allowed.", "Leave it out where it is not known.");

    private static IEnumerable<Problem> OfPlace(Town town, Building building, string path)
    {
        if (building.Place is not { } place)
        {
            yield break;
        }

        if (place.Outline.Count is 1 or 2)
        {
            yield return new Problem($"{path}.place.outline", "too-few-points", $"{building.Name} has an outline of {place.Outline.Count} points; at least three are needed.", "Add a corner, or give width and depth.");
        }
        else if (place.Outline.Count > 3 && Outline.CrossesItself(place.Outline))
        {
            yield return new Problem($"{path}.place.outline", "crosses-itself", $"The outline of {building.Name} crosses itself.", "Go round the corners in order.");
        }

        if (town.Board is { } board
            && Outline.Corners(place).FirstOrDefault(p =>
                p.X.Millimetres < -EdgeMillimetres || p.X.Millimetres > board.Width.Millimetres + EdgeMillimetres
                || p.Y.Millimetres < -EdgeMillimetres || p.Y.Millimetres > board.Depth.Millimetres + EdgeMillimetres) is { } outside)
        {
            yield return BoardChecks.Off($"{path}.place", $"A corner of {building.Name}", Point.At(Math.Round(outside.X.Millimetres, 1), Math.Round(outside.Y.Millimetres, 1)), board);
        }
    }

    private static IEnumerable<Problem> OfWindow(Building building, Storey storey, Window window, string path)
    {
        if (window.Width.Millimetres <= 0 || window.Height.Millimetres <= 0)
        {
            yield return new Problem(path, "size", $"A window of {building.Name} is {window.Width.Millimetres} × {window.Height.Millimetres} mm; both must be more than 0.", "Measure the opening.");
            yield break;
        }

        if (window.FromLeft is { Millimetres: < 0 } || window.Sill is { Millimetres: < 0 })
        {
            yield return new Problem(path, "window-off-wall", $"A window of {building.Name} begins left of its wall or under its floor; 0 mm or more is allowed.", "Measure from the wall's left end and from the floor.");
        }

        var wall = window.Wall is WallSide.Front or WallSide.Back ? building.Place?.Width : building.Place?.Depth ?? building.Place?.Width;
        if (wall is { } wide && (window.FromLeft?.Millimetres ?? 0) + window.Width.Millimetres > wide.Millimetres)
        {
            yield return new Problem($"{path}.width_mm", "window-off-wall", $"A window of {building.Name} reaches to {(window.FromLeft?.Millimetres ?? 0) + window.Width.Millimetres} mm on a wall {wide.Millimetres} mm wide.", "Make it narrower, or move it to the left.");
        }

        if (storey.Height is { } high && (window.Sill?.Millimetres ?? 0) + window.Height.Millimetres > high.Millimetres)
        {
            yield return new Problem($"{path}.height_mm", "window-off-wall", $"A window of {building.Name} reaches to {(window.Sill?.Millimetres ?? 0) + window.Height.Millimetres} mm in a storey {high.Millimetres} mm high.", "Make it lower, or lower its sill.");
        }
    }
}
