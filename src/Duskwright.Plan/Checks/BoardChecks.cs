using Duskwright.Plan.Document;

namespace Duskwright.Plan.Checks;

/// <summary>The board and what lies on it.</summary>
internal static class BoardChecks
{
    private const double MostBoardMillimetres = 20_000;

    internal static IEnumerable<Problem> Of(Town town)
    {
        if (town.ScaleRatio is { } ratio && !(ratio is >= 1 and <= 2000))
        {
            yield return new Problem("scale_ratio", "scale", $"The scale is 1:{ratio}; 1:1 to 1:2000 is allowed.", "Write the second number of the ratio, 160 for 1:160.");
        }

        if (town.Board is not { } board)
        {
            yield break;
        }

        foreach (var (name, size) in new[] { ("width_mm", board.Width), ("depth_mm", board.Depth) })
        {
            if (size.Millimetres is <= 0 or > MostBoardMillimetres)
            {
                yield return new Problem($"board.{name}", "board-size", $"The board's {name[..^3]} is {size.Millimetres} mm; more than 0 and at most {MostBoardMillimetres} mm is allowed.", "Measure the board in millimetres.");
            }
        }

        foreach (var problem in Twice.In(board.Levels.Select(l => l.Id), "board.levels", "level")
            .Concat(Twice.In(board.Wireways.Select(w => w.Id), "board.wireways", "wireway"))
            .Concat(Twice.In(board.FeedHoles.Select(h => h.Id), "board.feed_holes", "feed hole")))
        {
            yield return problem;
        }

        if (board.Bank is { } bank && !On(board, bank.At))
        {
            yield return Off("board.bank.at", "The bank", bank.At, board);
        }

        if (board.Photograph is { } photograph)
        {
            foreach (var problem in OfPhotograph(photograph))
            {
                yield return problem;
            }
        }

        for (var i = 0; i < board.FeedHoles.Count; i++)
        {
            var hole = board.FeedHoles[i];
            if (!On(board, hole.At))
            {
                yield return Off($"board.feed_holes[{i}].at", $"Feed hole {hole.Id}", hole.At, board);
            }

            if (hole.Bore is { Millimetres: <= 0 or > 100 } bore)
            {
                yield return new Problem($"board.feed_holes[{i}].bore_mm", "size", $"Feed hole {hole.Id} has a bore of {bore.Millimetres} mm; more than 0 and at most 100 mm is allowed.", "Measure the drill.");
            }
        }

        for (var i = 0; i < board.Wireways.Count; i++)
        {
            var way = board.Wireways[i];
            if (way.Points.Count < 2)
            {
                yield return new Problem($"board.wireways[{i}].points", "too-few-points", $"Wireway {way.Id} has {way.Points.Count} points; a line needs at least two.", "Add the point where it ends.");
            }

            if (way.Points.FirstOrDefault(p => !On(board, p)) is { } outside)
            {
                yield return Off($"board.wireways[{i}].points", $"Wireway {way.Id}", outside, board);
            }

            if (way.CapacityPairs is < 1)
            {
                yield return new Problem($"board.wireways[{i}].capacity_pairs", "size", $"Wireway {way.Id} takes {way.CapacityPairs} pairs; at least 1 is allowed.", "Leave it out where it takes as many as are needed.");
            }
        }

        for (var i = 0; i < board.Levels.Count; i++)
        {
            var level = board.Levels[i];
            if (level.Outline.FirstOrDefault(p => !On(board, p)) is { } outside)
            {
                yield return Off($"board.levels[{i}].outline", $"Level {level.Id}", outside, board);
            }

            if (level.Outline.Count is 1 or 2)
            {
                yield return new Problem($"board.levels[{i}].outline", "too-few-points", $"Level {level.Id} has an outline of {level.Outline.Count} points; at least three are needed.", "Add a corner, or leave it out for the whole board.");
            }
            else if (level.Outline.Count > 3 && Outline.CrossesItself(level.Outline))
            {
                yield return new Problem($"board.levels[{i}].outline", "crosses-itself", $"The outline of level {level.Id} crosses itself.", "Go round the corners in order.");
            }
        }

        for (var i = 0; i < board.Scenery.Count; i++)
        {
            foreach (var problem in OfScenery(board, board.Scenery[i], $"board.scenery[{i}]"))
            {
                yield return problem;
            }
        }
    }

    private static IEnumerable<Problem> OfPhotograph(Photograph photograph)
    {
        if (!(photograph.Picture.Length == 64 && photograph.Picture.All(char.IsAsciiHexDigitLower)))
        {
            yield return new Problem("board.photograph.picture", "picture", $"The board names the photograph “{photograph.Picture}”; the id of a picture is 64 hexadecimal digits.", "Leave it out where there is no picture.");
        }

        foreach (var (name, size) in new[] { ("width_mm", photograph.Width), ("depth_mm", photograph.Depth) })
        {
            if (size.Millimetres is <= 0 or > 10 * MostBoardMillimetres)
            {
                yield return new Problem($"board.photograph.{name}", "size", $"The photograph's {name[..^3]} would show {size.Millimetres} mm of the board; more than 0 and at most {10 * MostBoardMillimetres} mm is allowed.", "Set its scale by two points and the distance between them.");
            }
        }
    }

    private static IEnumerable<Problem> OfScenery(Board board, Scenery scenery, string path)
    {
        var least = scenery.Kind switch
        {
            SceneryKind.Water or SceneryKind.Field or SceneryKind.Obstacle or SceneryKind.Hatch or SceneryKind.Free => 3,
            SceneryKind.Tree or SceneryKind.Clutter => 1,
            _ => 2,
        };
        if (scenery.Points.Count < least)
        {
            yield return new Problem($"{path}.points", "too-few-points", $"Scenery of kind {Lower(scenery.Kind)} needs at least {least} points and has {scenery.Points.Count}.", "Add the missing points.");
        }

        if (scenery.Points.FirstOrDefault(p => !On(board, p)) is { } outside)
        {
            yield return Off($"{path}.points", scenery.Label is { } label ? $"Scenery of kind {Lower(scenery.Kind)}, {label}," : $"Scenery of kind {Lower(scenery.Kind)}", outside, board);
        }

        if (scenery.Size is { Millimetres: <= 0 or > MostBoardMillimetres } size)
        {
            yield return new Problem($"{path}.size_mm", "size", $"Scenery of kind {Lower(scenery.Kind)} has a size of {size.Millimetres} mm; more than 0 and at most {MostBoardMillimetres} mm is allowed.", "Leave it out for the usual size.");
        }
    }

    private static string Lower(SceneryKind kind) => kind.ToString().ToLowerInvariant();

    internal static bool On(Board board, Point point) =>
        point.X.Millimetres >= 0 && point.X.Millimetres <= board.Width.Millimetres && point.Y.Millimetres >= 0 && point.Y.Millimetres <= board.Depth.Millimetres;

    internal static Problem Off(string path, string what, Point at, Board board) => new(
        path,
        "off-the-board",
        $"{what} lies at {at.X.Millimetres}, {at.Y.Millimetres} mm, off the board of {board.Width.Millimetres} × {board.Depth.Millimetres} mm.",
        "Move it onto the board, or make the board larger.");
}
