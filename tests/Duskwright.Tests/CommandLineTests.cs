using System.Diagnostics;
using System.Text.Json;

namespace Duskwright.Tests;

/// <summary>The real program, run with its words as a maker runs it.</summary>
public sealed class CommandLineTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("duskwright-");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public async Task A_list_becomes_a_town_that_is_studied_without_spoiling_anything()
    {
        var (list, town) = (Path.Combine(_folder.FullName, "list.csv"), Path.Combine(_folder.FullName, "town.json"));
        await File.WriteAllTextAsync(list, "Chandlery, 4, 47 cm\nLookout, 1, don't know\n", TestContext.Current.CancellationToken);
        Assert.Equal(0, (await Run("import", list, "--out", town)).Code);
        var (code, text, _) = await Run("study", town);
        Assert.Equal(0, code);
        Assert.Contains("5 lamps", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("study")]
    [InlineData("study", "there-is-no-such-town.json")]
    [InlineData("sums", "resistor", "--cell", "LR99")]
    [InlineData("frobnicate")]
    public async Task Bad_input_ends_with_two_and_one_sentence_and_no_trace(params string[] words)
    {
        var (code, _, error) = await Run(words);
        Assert.Equal(2, code);
        Assert.NotEmpty(error);
        Assert.DoesNotContain("   at ", error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_broken_town_names_the_place()
    {
        var town = Path.Combine(_folder.FullName, "town.json");
        await File.WriteAllTextAsync(town, """{ "format": "duskwright-town", "version": 1, "name": "X", "buildings": [ { "name": "Inn", "leds": -1 } ] }""", TestContext.Current.CancellationToken);
        var (code, _, error) = await Run("study", town);
        Assert.Equal(2, code);
        Assert.Contains("buildings[0].leds", error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_book_comes_with_every_list_and_says_which_files_it_wrote()
    {
        var town = Path.Combine(AppContext.BaseDirectory, "examples", "tavern.json");
        var (code, text, error) = await Run("book", town, "--out", _folder.FullName, "--json");
        Assert.Equal((0, ""), (code, error));
        var files = JsonDocument.Parse(text).RootElement.GetProperty("files").EnumerateArray().Select(f => f.GetString()!).ToList();
        Assert.All(files, f => Assert.True(new FileInfo(f).Length > 0, f));
        Assert.Equal(files.Order(StringComparer.Ordinal), Directory.GetFiles(_folder.FullName).Order(StringComparer.Ordinal));
        Assert.Empty(new[] { "bench-book.pdf", "lists.xlsx", "cut-list.csv", "load-list.csv", "switch-list.csv", "parts-list.csv", "label-list.csv", "test-list.csv" }.Except(files.Select(f => Path.GetFileName(f)!)));
    }

    [Fact]
    public async Task A_list_can_be_taken_in_by_another_program()
    {
        var (list, town) = (Path.Combine(_folder.FullName, "list.csv"), Path.Combine(_folder.FullName, "town.json"));
        await File.WriteAllTextAsync(list, "Chandlery, 4, 47 cm\nLookout, 1, don't know\n", TestContext.Current.CancellationToken);
        var (code, text, _) = await Run("import", list, "--out", town, "--json");
        var said = JsonDocument.Parse(text).RootElement;
        Assert.Equal((0, 2, 5), (code, said.GetProperty("buildings").GetInt32(), said.GetProperty("lamps").GetInt32()));
        Assert.True(File.Exists(said.GetProperty("town").GetString()));
    }

    [Theory]
    [InlineData("study")]
    [InlineData("book")]
    [InlineData("import")]
    [InlineData("schema")]
    [InlineData("serve")]
    public async Task Every_verb_teaches_with_lines_to_try(string verb)
    {
        var (code, text, _) = await Run(verb, "--help");
        Assert.Equal(0, code);
        Assert.Contains($"Duskwright {verb}", text[text.IndexOf("Try:", StringComparison.Ordinal)..], StringComparison.Ordinal);
    }

    private static async Task<(int Code, string Text, string Error)> Run(params string[] words)
    {
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "Duskwright.dll"), .. words]) { RedirectStandardOutput = true, RedirectStandardError = true };
        using var program = Process.Start(start)!;
        var (text, error) = (program.StandardOutput.ReadToEndAsync(), program.StandardError.ReadToEndAsync());
        await program.WaitForExitAsync();
        return (program.ExitCode, await text, await error);
    }
}
