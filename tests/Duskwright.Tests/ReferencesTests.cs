using System.Text.RegularExpressions;

namespace Duskwright.Tests;

/// <summary>Every source named in the code stands in docs/references.md.</summary>
public partial class ReferencesTests
{
    private static readonly string Root = Up();
    private static readonly List<string> Keys = [.. Key().Matches(File.ReadAllText(Path.Combine(Root, "docs", "references.md"))).Select(m => m.Groups[1].Value)];

    [Fact]
    public void Every_source_in_the_code_names_a_key_of_the_references()
    {
        var sources = Code().SelectMany(Sources).ToList();
        Assert.True(sources.Count > 50, $"only {sources.Count} sources were found");
        Assert.Empty(sources.Where(s => !Keys.Any(k => s.Text.Contains(k, StringComparison.Ordinal))).Select(s => $"{s.Place}: \"{s.Text}\" names no key of docs/references.md; add one."));
    }

    [Fact]
    public void Every_table_of_published_values_is_a_key() =>
        Assert.Empty(Directory.GetFiles(Path.Combine(Root, "tests", "Reference"), "*.csv").Select(f => Path.GetFileName(f)!).Except(Keys));

    [Fact]
    public void Every_table_of_published_values_begins_with_its_source() =>
        Assert.All(Directory.GetFiles(Path.Combine(Root, "tests", "Reference"), "*.csv"), f => Assert.StartsWith("# source:", File.ReadLines(f).First(), StringComparison.OrdinalIgnoreCase));

    [Fact]
    public void No_key_is_listed_twice() => Assert.Equal(Keys.Count, Keys.Distinct().Count());

    [Fact]
    public void A_source_that_runs_over_several_lines_is_read_whole_and_the_next_one_is_not_part_of_it()
    {
        string[] lines = ["    // Source: an author,", "    // a title.", "    // Source: another.", "    var x = 1;", "    // not a source"];
        Assert.Equal(["an author, a title.", "another."], In("x.cs", lines).Select(s => s.Text));
    }

    private static IEnumerable<string> Code() => new[] { "src", "tests", "benchmarks" }
        .SelectMany(f => Directory.EnumerateFiles(Path.Combine(Root, f), "*.cs", SearchOption.AllDirectories))
        .Where(f => Path.GetFileName(f) != "ReferencesTests.cs");

    private static IEnumerable<(string Place, string Text)> Sources(string file) => In(Path.GetRelativePath(Root, file), File.ReadAllLines(file));

    private static IEnumerable<(string Place, string Text)> In(string file, string[] lines)
    {
        for (var i = 0; i < lines.Length; i++)
        {
            if (Said().Match(lines[i]) is { Success: true } said)
            {
                var more = lines.Skip(i + 1).TakeWhile(l => l.TrimStart().StartsWith("//", StringComparison.Ordinal) && !Said().IsMatch(l)).Select(l => l.Trim().TrimStart('/').Trim());
                yield return ($"{file}:{i + 1}", string.Join(' ', more.Prepend(said.Groups[1].Value)));
            }
        }
    }

    private static string Up()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder!.FullName, "Duskwright.slnx")))
        {
            folder = folder.Parent;
        }

        return folder.FullName;
    }

    [GeneratedRegex(@"^\| `([^`]+)` \|", RegexOptions.Multiline)]
    private static partial Regex Key();

    [GeneratedRegex(@"//.*\bSource: (.*)$")]
    private static partial Regex Said();
}
