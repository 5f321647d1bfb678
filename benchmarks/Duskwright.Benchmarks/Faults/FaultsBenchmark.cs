using System.Globalization;
using Duskwright.Faults.Finding;
using Duskwright.Plan.Format;
using Duskwright.Study;
using Spectre.Console;

namespace Duskwright.Benchmarks.Faults;

/// <summary>The fault finder, blind: cases made by a generator that is not its own model, beside a reference that knows the generator.</summary>
internal static class FaultsBenchmark
{
    private const int CasesOfEach = 500;
    private const int TownSeed = 7;

    // The finder was made with cases of other seeds before its eyes.
    private const int Seed = 2031;

    internal static int Run()
    {
        var study = TownStudy.Of(TownJson.Read(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "examples", "saltmarrow.json"))).Town!);
        var table = new Table().AddColumns("claim", "goal", "measured", "holds");
        var holds = true;
        foreach (var (name, packs) in new[] { ("Saltmarrow", TrialPack.Of(study)), ("200 buildings", TrialPack.Generated(200, TownSeed)) })
        {
            var boards = packs.ConvertAll(p => new TrialBoard(p));
            foreach (var meter in new[] { true, false })
            {
                holds &= Trial(table, name, boards, meter);
            }
        }

        holds &= FalseAlarms.Run(table, study);
        AnsiConsole.Write(table);
        return holds ? 0 : 1;
    }

    private static bool Trial(Table table, string name, List<TrialBoard> boards, bool meter)
    {
        var sizes = boards.SelectMany(b => b.Classes[meter].GroupBy(c => c)).Select(g => (Unseen: g.Key < 0, Size: g.Count())).ToList();
        var with = $"{name}, {(meter ? "with a meter" : "by eye")}";
        Console.WriteLine($"{with}: {sizes.Count(s => !s.Unseen)} classes of faults, sizes {string.Join(", ", sizes.Where(s => !s.Unseen).GroupBy(s => s.Size).OrderBy(g => g.Key).Select(g => $"{g.Count()} of {g.Key}"))}; {sizes.Where(s => s.Unseen).Sum(s => s.Size)} show nothing");
        var chance = new Random(Seed);
        var references = new Dictionary<TrialBoard, TrialReference>();
        var (ours, theirs, asked) = (new TrialScore(), new TrialScore(), new List<(int Tests, bool Named, bool Right)>());
        for (var c = 0; c < CasesOfEach; c++)
        {
            var board = boards[chance.Next(boards.Count)];
            var made = TrialCase.Of(board, meter, chance);
            if (!references.TryGetValue(board, out var reference))
            {
                references[board] = reference = new TrialReference(board, meter ? TrialCase.BurdenOhms : 0, new Random(Seed + 1));
            }

            ours.Note(made.What, Classes(board, FaultFinder.Rank(board.Table, made.Observed(), meter), meter), made.Truth);
            asked.Add(TrialDialogue.Of(board, made, meter, ranking => Classes(board, ranking, meter)));
            theirs.Note(made.What, reference.Classes(made.Seen, made.Amps, made.Volts, meter), made.Truth);
        }

        var missed = new Table().Title(with).AddColumns("what was wrong", "cases", "first, ours", "first, reference", "first three, ours", "first three, reference", "log score, ours", "log score, reference");
        foreach (var (o, t) in ours.ByFault.Zip(theirs.ByFault))
        {
            missed.AddRow(o.What, Text(o.Cases, "0"), Text(o.First, "0"), Text(t.First, "0"), Text(o.FirstThree, "0"), Text(t.FirstThree, "0"), Text(o.Log, "0.00"), Text(t.Log, "0.00"));
        }

        AnsiConsole.Write(missed);
        var holds = Row(table, $"{with}: calibration error", "at most 0.05", Text(ours.CalibrationError, "0.000"), ours.CalibrationError <= 0.05);
        Row(table, $"{with}: log score, ours and reference", "stated", $"{Text(ours.LogScore, "0.00")} and {Text(theirs.LogScore, "0.00")}", true);
        var median = asked.Select(a => a.Tests).Order().ElementAt(asked.Count / 2);
        var named = asked.Where(a => a.Named).ToList();
        holds &= Row(table, $"{with}: median number of tests (a look over all windows is one, volts and amperes are one) till named with probability {Text(TrialDialogue.Named, "0.0")} or no further apart", "at most 3", Text(median, "0"), median <= 3);
        Row(table, $"{with}: named so, and right when named", "stated", $"{Text(100.0 * named.Count / asked.Count, "0.0")} %, {Text(100.0 * named.Count(a => a.Right) / Math.Max(1, named.Count), "0.0")} %; most tests {asked.Max(a => a.Tests)}", true);
        holds &= Beside("in first place", ours.First, theirs.First, 0.85);
        holds &= Beside("among the first three", ours.FirstThree, theirs.FirstThree, 0.97);
        return holds;

        // Where only looks are taken the figures are stated; with a meter they are held against one who knows how the cases are made.
        bool Beside(string claim, double our, double their, double share) =>
            Row(table, $"{with}: {claim}", meter ? $"{Text(100 * share, "0")} % of the reference" : "stated", $"{Text(100 * our, "0.0")} %, reference {Text(100 * their, "0.0")} %: {Text(100 * our / their, "0")} % of it", !meter || our >= share * their)
            & Row(table, $"{with}: {claim}, points behind the reference", meter ? "at most 3" : "stated", Text(100 * (their - our), "0.0"), !meter || our >= their - 0.03);
    }

    private static Dictionary<(int, int), double> Classes(TrialBoard board, FaultRanking ranking, bool meter)
    {
        var (classes, places) = (board.Classes[meter], board.Faults.Select((f, i) => (f, i)).ToDictionary(x => x.f, x => x.i));
        var result = new Dictionary<(int, int), double> { [(-1, -1)] = ranking.Healthy };
        void Add((int, int) key, double weight) => result[key] = result.GetValueOrDefault(key) + weight;
        foreach (var fault in ranking.Faults)
        {
            Add(TrialCase.Key(classes[places[fault.Fault]]), fault.Share * ranking.OneFault);
        }

        foreach (var pair in ranking.Pairs)
        {
            Add(TrialCase.Key(classes[places[pair.One]], classes[places[pair.Other]]), pair.Probability);
        }

        return result;
    }

    internal static bool Row(Table table, string claim, string goal, string measured, bool holds)
    {
        table.AddRow(claim, goal, measured, holds ? "yes" : "NO");
        return holds;
    }

    internal static string Text(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
