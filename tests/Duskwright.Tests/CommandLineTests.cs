using System.Diagnostics;
using System.Text.Json;
using UglyToad.PdfPig;

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

    [Theory]
    [InlineData("--cells is three; a whole number from 1 to 12 is allowed.", "sums", "resistor", "--cells", "three")]
    [InlineData("--cells is 0; a whole number from 1 to 12 is allowed.", "sums", "resistor", "--cells", "0")]
    [InlineData("--mm is 47cm; a number from 1 to 20000, without its unit, is allowed.", "sums", "wire", "--mm", "47cm")]
    [InlineData("--ma is 1,500; a number from 0.1 to 30, without its unit, is allowed.", "sums", "resistor", "--ma", "1,500")]
    [InlineData("--ma is nan; a number from 0.1 to 30, without its unit, is allowed.", "sums", "resistor", "--ma", "nan")]
    [InlineData("--paper is A3; A4 or Letter is allowed.", "book", "x.json", "--out", "x", "--paper", "A3")]
    [InlineData("--port is 65536; a whole number from 1 to 65535 is allowed.", "serve", "--port", "65536")]
    [InlineData("--wire is \"fuse-wire\", which is not known. Known are cu-0.10,", "sums", "fuse", "--wire", "fuse-wire")]
    [InlineData("Supply 1 gives 144 V; at most 60 V direct current is computed here, and mains never.", "sums", "resistor", "--cell", "adaptor-12v", "--cells", "12")]
    [InlineData("There is no list nothing.csv. Look at the spelling and the folder.", "import", "nothing.csv", "--out", "x.json")]
    [InlineData("Unrecognized command or argument 'stdy'.", "stdy")]
    public async Task What_is_typed_wrong_is_named_with_what_is_allowed(string sentence, params string[] words)
    {
        var (code, text, error) = await Run(words);
        Assert.Equal((2, ""), (code, text));
        Assert.StartsWith(sentence, error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1,5")]
    [InlineData("1.5")]
    public async Task A_decimal_comma_is_a_decimal_point(string milliamperes)
    {
        // 4.5 V and a warm white LED: Ohm's law gives more than a kiloohm at 1.5 mA and about a hundred ohms at 15 mA.
        var (code, text, _) = await Run("sums", "resistor", "--ma", milliamperes);
        Assert.Equal(0, code);
        Assert.StartsWith("1.2\u2009kΩ", text, StringComparison.Ordinal);
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
    public async Task Labels_are_printed_straight_from_ten_typed_lines()
    {
        var list = Path.Combine(_folder.FullName, "list.csv");
        await File.WriteAllTextAsync(list, "Chandlery, 4, 47 cm\nLookout, 1, don't know\n", TestContext.Current.CancellationToken);
        var (code, text, _) = await Run("book", list, "--out", _folder.FullName, "--only", "labels");
        Assert.Equal((0, Path.Combine(_folder.FullName, "bench-book.pdf")), (code, text.Trim()));
        using var labels = PdfDocument.Open(Path.Combine(_folder.FullName, "bench-book.pdf"));
        Assert.All(labels.GetPages(), p => Assert.StartsWith("Labels", p.Text, StringComparison.Ordinal));
        Assert.Contains(labels.GetPages(), p => p.Text.Contains("Chandlery", StringComparison.Ordinal));
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

    [Fact]
    public async Task A_town_goes_from_one_form_to_the_other_and_back()
    {
        var (town, straight, back) = (Path.Combine(_folder.FullName, "saltmarrow.town"), Path.Combine(_folder.FullName, "straight.json"), Path.Combine(_folder.FullName, "back.json"));
        var demo = Path.Combine(AppContext.BaseDirectory, "examples", "saltmarrow.json");
        Assert.Equal(0, (await Run("import", demo, "--out", town)).Code);
        Assert.Equal(0, (await Run("import", town, "--out", back)).Code);
        Assert.Equal(0, (await Run("import", demo, "--out", straight)).Code);
        var token = TestContext.Current.CancellationToken;
        Assert.Equal(await File.ReadAllTextAsync(straight, token), await File.ReadAllTextAsync(back, token));
        Assert.Equal(1, (await Run("study", town)).Code);
    }

    // A file system of its own within the kernel: 64 kB hold the list but no town; mounted for reading it holds a town that may be studied.
    [Theory]
    [InlineData("mount -t tmpfs -o size=64k none $0", "the disk is full", "import", "list.csv", "--out", "full/x.town")]
    [InlineData("mount --bind $0 $0 && mount -o remount,bind,ro $0", "may only be read", "import", "list.csv", "--out", "full/x.town")]
    public async Task A_full_disk_and_a_folder_that_may_only_be_read_are_said_in_a_sentence(string mount, string says, params string[] words)
    {
        var folder = _folder.CreateSubdirectory("full").FullName;
        await File.WriteAllTextAsync(Path.Combine(_folder.FullName, "list.csv"), "Chandlery, 4, 47 cm\n", TestContext.Current.CancellationToken);
        Assert.SkipUnless(OperatingSystem.IsLinux() && (await Start("unshare", "-rm", "sh", "-c", mount, folder)).Code == 0, "This system lets no test mount a folder of its own.");
        var paths = words.Select(w => w.Contains('.', StringComparison.Ordinal) ? Path.Combine(_folder.FullName, w) : w);
        var (code, _, error) = await Start(["unshare", "-rm", "sh", "-c", mount + " && exec dotnet \"$@\"", folder, Path.Combine(AppContext.BaseDirectory, "Duskwright.dll"), .. paths]);
        Assert.Equal(2, code);
        Assert.Contains(says, error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", error, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(folder));
    }

    internal static Task<(int Code, string Text, string Error)> Run(params string[] words) =>
        Start(["dotnet", Path.Combine(AppContext.BaseDirectory, "Duskwright.dll"), .. words]);

    private static async Task<(int Code, string Text, string Error)> Start(params string[] words)
    {
        var start = new ProcessStartInfo(words[0], words[1..]) { RedirectStandardOutput = true, RedirectStandardError = true };
        using var program = Process.Start(start)!;
        var (text, error) = (program.StandardOutput.ReadToEndAsync(), program.StandardError.ReadToEndAsync());
        await program.WaitForExitAsync();
        return (program.ExitCode, await text, await error);
    }
}
