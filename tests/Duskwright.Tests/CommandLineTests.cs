using System.Diagnostics;

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

    private static async Task<(int Code, string Text, string Error)> Run(params string[] words)
    {
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "Duskwright.dll"), .. words]) { RedirectStandardOutput = true, RedirectStandardError = true };
        using var program = Process.Start(start)!;
        var (text, error) = (program.StandardOutput.ReadToEndAsync(), program.StandardError.ReadToEndAsync());
        await program.WaitForExitAsync();
        return (program.ExitCode, await text, await error);
    }
}
