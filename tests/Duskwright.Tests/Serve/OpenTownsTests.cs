using System.Net;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Serve;
using Duskwright.Store;
using Duskwright.Towns;
using Microsoft.AspNetCore.Builder;

namespace Duskwright.Tests.Serve;

/// <summary>Several towns open in one process, and one that another process has.</summary>
public sealed class OpenTownsTests : IAsyncLifetime
{
    private static readonly WebApplicationOptions Options = new() { ApplicationName = "Duskwright", ContentRootPath = AppContext.BaseDirectory };
    private readonly DirectoryInfo _home = Directory.CreateTempSubdirectory("duskwright-");
    private readonly OpenTowns _towns = new(Options);
    private OpenTown _first = default!;
    private WebApplication _app = default!;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        _first = OpenTown.FromFile(Kept("Eelmouth"), _home.FullName).Town!;
        _app = await StartedAsync(ServeApp.Build(Options, _first, _towns));
    }

    public async ValueTask DisposeAsync()
    {
        await _towns.DisposeAsync();
        await _app.DisposeAsync();
        _first.Dispose();
        _home.Delete(recursive: true);
    }

    [Fact]
    public async Task Two_towns_are_open_at_addresses_of_their_own_and_a_change_of_one_leaves_the_other()
    {
        var (address, problems) = await _towns.OpenAsync(Kept("Ropewalk"));
        Assert.Empty(problems);
        Assert.NotEqual(_app.Urls.First(), address);
        _first.Apply(new ChangeBuildings([_first.Town.Buildings[0] with { Note = "mine alone" }], "Note it"));
        Assert.Contains("mine alone", await PageAsync(_app.Urls.First(), "take/town.json"), StringComparison.Ordinal);
        var other = await PageAsync(address!, "take/town.json");
        Assert.Contains("Ropewalk", other, StringComparison.Ordinal);
        Assert.DoesNotContain("mine alone", other, StringComparison.Ordinal);
        Assert.Contains(address!, await PageAsync(_app.Urls.First(), "file"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_that_is_open_already_is_led_to_and_not_opened_again()
    {
        var (address, _) = await _towns.OpenAsync(_first.FilePath!);
        Assert.Equal(_app.Urls.First(), address);
        Assert.Empty(_towns.Beside(_first));
    }

    [Fact]
    public async Task A_town_that_is_closed_answers_no_more_and_leaves_its_file_to_others()
    {
        var path = Kept("Ropewalk");
        var (address, _) = await _towns.OpenAsync(path);
        await _towns.CloseAsync(address!);
        await Assert.ThrowsAsync<HttpRequestException>(() => PageAsync(address!, "town"));
        using var free = WorkingFile.Open(path, TimeProvider.System).File;
        Assert.NotNull(free);
    }

    [Fact]
    public async Task A_town_that_cannot_be_opened_leaves_those_that_are()
    {
        var (address, problems) = await _towns.OpenAsync(Path.Combine(_home.FullName, "nothing.town"));
        Assert.Null(address);
        Assert.Equal("no-file", Assert.Single(problems).Rule);
        Assert.Contains("Eelmouth", await PageAsync(_app.Urls.First(), "town"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_town_that_another_has_is_told_on_one_page_with_who_has_it_until_it_is_free()
    {
        var path = _first.FilePath!;
        var held = HeldTown.Of(path, OpenTown.FromFile(path, _home.FullName).Problems)!;
        using var demo = OpenTown.FromFile(null, _home.FullName).Town!;
        await using var second = await StartedAsync(ServeApp.Build(Options, demo, new OpenTowns(Options), held));
        using var client = new HttpClient(new HttpClientHandler { AllowAutoRedirect = false }) { BaseAddress = new Uri(second.Urls.First()) };
        foreach (var place in new[] { "", "take/town.json", "_blazor/negotiate" })
        {
            using var answer = await client.GetAsync(new Uri(place, UriKind.Relative), Cancel);
            var page = await answer.Content.ReadAsStringAsync(Cancel);
            Assert.Equal(HttpStatusCode.Conflict, answer.StatusCode);
            Assert.Contains($"process {Environment.ProcessId} on {Environment.MachineName}", page, StringComparison.Ordinal);
            Assert.Contains($"href=\"{_app.Urls.First()}/\"", page, StringComparison.Ordinal);
            Assert.DoesNotContain("at Duskwright.", page, StringComparison.Ordinal);
        }

        using (var still = await client.PostAsync(new Uri("held/again", UriKind.Relative), null, Cancel))
        {
            Assert.Equal(HttpStatusCode.Conflict, still.StatusCode);
        }

        _first.Dispose();
        using (var free = await client.PostAsync(new Uri("held/again", UriKind.Relative), null, Cancel))
        {
            Assert.Equal(HttpStatusCode.SeeOther, free.StatusCode);
        }

        Assert.Equal(path, demo.FilePath);
    }

    [Fact]
    public async Task A_town_that_another_has_is_looked_at_as_it_stands_and_changed_in_a_file_of_its_own()
    {
        var held = HeldTown.Of(_first.FilePath!, OpenTown.FromFile(_first.FilePath!, _home.FullName).Problems)!;
        using var demo = OpenTown.FromFile(null, _home.FullName).Town!;
        await using var second = await StartedAsync(ServeApp.Build(Options, demo, new OpenTowns(Options), held));
        using var client = new HttpClient { BaseAddress = new Uri(second.Urls.First()) };
        using var looked = await client.PostAsync(new Uri("held/copy", UriKind.Relative), null, Cancel);
        Assert.Equal(("Eelmouth", null), (demo.Town.Name, demo.FilePath));
        Assert.Empty(demo.Apply(new ChangeBuildings([demo.Town.Buildings[0] with { Note = "elsewhere" }], "Note it")));
        Assert.Equal(Path.Combine(_home.FullName, "eelmouth-2.town"), demo.FilePath);
        Assert.Null(_first.Town.Buildings[0].Note);
    }

    [Fact]
    public void A_town_kept_elsewhere_is_offered_again()
    {
        var elsewhere = Directory.CreateDirectory(Path.Combine(_home.FullName, "elsewhere")).FullName;
        using (var made = WorkingFile.Create(Path.Combine(elsewhere, "weir.town"), Named("Weir"), "Begin", TimeProvider.System).File)
        {
            Assert.NotNull(made);
        }

        using (var open = OpenTown.FromFile(Path.Combine(elsewhere, "weir.town"), _home.FullName).Town)
        {
            Assert.NotNull(open);
        }

        Assert.Equal(["Eelmouth", "Weir"], _first.Kept.Select(k => k.Name).Order(StringComparer.Ordinal));
    }

    private static Town Named(string name) => new() { Name = name, Buildings = [new Building { Name = $"{name} mill", Leds = 2 }] };

    private static async Task<string> PageAsync(string address, string place)
    {
        using var client = new HttpClient();
        return await client.GetStringAsync(new Uri($"{address}/{place}"), Cancel);
    }

    private static async Task<WebApplication> StartedAsync(WebApplication app)
    {
        app.Urls.Add("http://127.0.0.1:0");
        await app.StartAsync(Cancel);
        return app;
    }

    private string Kept(string name)
    {
        var path = TownFolder.FreePath(_home.FullName, name);
        using var file = WorkingFile.Create(path, Named(name), "Begin", TimeProvider.System).File;
        return path;
    }
}
