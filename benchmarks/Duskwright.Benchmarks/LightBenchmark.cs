using System.Diagnostics;
using System.Globalization;
using Duskwright.Book.Night;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Format;
using Duskwright.Plan.Quantities;
using Duskwright.Study;
using Spectre.Console;

namespace Duskwright.Benchmarks;

/// <summary>Light of Saltmarrow and of five hundred buildings: how long every room takes, how much of it an edit leaves standing, and how many triangles the night view draws.</summary>
/// <remarks>Circuits are solved before the clock starts; what is measured is rooms, panes, colours and the results about them.</remarks>
internal static class LightBenchmark
{
    private const int Turns = 5;

    // 42 buildings twelve times.
    private const int Copies = 12;

    internal static int Run()
    {
        var town = TownJson.Read(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "examples", "saltmarrow.json"))).Town!;
        _ = Light(TownStudy.Of(town));
        var one = Median(() => TownStudy.Of(town));
        var alike = CopiedTown.Of(town, Copies, 0);
        var same = Median(() => TownStudy.Of(alike));
        var different = CopiedTown.Of(town, Copies, 0.1);
        var all = Median(() => TownStudy.Of(different));
        var before = TownStudy.Of(different);
        _ = before.Panes;
        var turn = 0;
        var edited = Median(() => before.After(WithSill(different, ++turn)));

        var table = new Table().AddColumns("claim", "goal", "measured", "holds");
        var buildings = alike.Buildings.Count;
        var panes = before.Panes.Count;
        var triangles = Triangles(NightScene.Of(before)!);
        var holds = Row(table, "light of Saltmarrow", "under 500 ms", $"{Text(one)} ms", one < 500)
            & Row(table, $"light of {buildings} buildings, {panes} panes, like rooms once", "under 5000 ms", $"{Text(same)} ms", same < 5000)
            & Row(table, "the same, no two rooms alike", "under 5000 ms", $"{Text(all)} ms", all < 5000)
            & Row(table, "one window moved: share of that which is computed again", "under 10 %", $"{Text(100 * edited / all)} %", edited < 0.1 * all)
            & Row(table, $"night view of {buildings} buildings, triangles", "under 300000", triangles.ToString(CultureInfo.InvariantCulture), triangles < 300_000);
        AnsiConsole.Write(table);
        return holds ? 0 : 1;
    }

    // An outline of n corners is n − 2 triangles; a pane is drawn once as itself and once as its glare.
    private static int Triangles(NightScene scene) => scene.Faces.Sum(f => f.Corners.Count - 2) + scene.Glows.Sum(g => g.Corners.Count - 2) + (4 * scene.Panes.Count);

    private static string Text(double value) => value.ToString("0.0", CultureInfo.InvariantCulture);

    private static bool Row(Table table, string claim, string goal, string measured, bool holds)
    {
        table.AddRow(claim, goal, measured, holds ? "yes" : "NO");
        return holds;
    }

    private static double Median(Func<TownStudy> next)
    {
        var times = Enumerable.Range(0, Turns).Select(_ =>
        {
            var study = next();
            return Light(study);
        }).Order().ToList();
        return times[Turns / 2];
    }

    private static double Light(TownStudy study)
    {
        _ = study.Packs;
        var start = Stopwatch.GetTimestamp();
        _ = study.Panes;
        return Stopwatch.GetElapsedTime(start).TotalMilliseconds;
    }

    private static Town WithSill(Town town, int turn)
    {
        var done = false;
        Room Moved(Room room)
        {
            if (done || room.Windows.Count == 0 || room.Lamps.Count == 0)
            {
                return room;
            }

            done = true;
            return room with { Windows = [room.Windows[0] with { Sill = Length.FromMillimetres(5 + (0.1 * turn)) }, .. room.Windows.Skip(1)] };
        }

        return town with { Buildings = town.Buildings.Select(b => done ? b : b with { Storeys = b.Storeys.Select(s => s with { Rooms = s.Rooms.Select(Moved).ToItemList() }).ToItemList() }).ToItemList() };
    }
}
