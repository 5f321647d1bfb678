using System.Net;
using Duskwright.Serve;
using Duskwright.Towns;
using Microsoft.AspNetCore.Builder;
using UglyToad.PdfPig;

namespace Duskwright.Tests.Serve;

/// <summary>The real host on a free port, asked as any program on the machine may ask it.</summary>
public sealed class HostTests : IAsyncLifetime
{
    private readonly WebApplication _app = ServeApp.Build(
        new WebApplicationOptions { ApplicationName = "Duskwright", ContentRootPath = AppContext.BaseDirectory }, OpenTown.FromFile(null).Town!);

    private HttpClient _client = new();

    public async ValueTask InitializeAsync()
    {
        _app.Urls.Add("http://127.0.0.1:0");
        await _app.StartAsync(TestContext.Current.CancellationToken);
        _client = new HttpClient { BaseAddress = new Uri(_app.Urls.First()) };
    }

    public async ValueTask DisposeAsync()
    {
        _client.Dispose();
        await _app.DisposeAsync();
    }

    [Fact]
    public async Task The_town_leads_to_the_start_page_and_that_offers_every_example_by_name()
    {
        Assert.Contains("href=\"/start#examples\"", await _client.GetStringAsync(new Uri("", UriKind.Relative), TestContext.Current.CancellationToken), StringComparison.Ordinal);
        var start = WebUtility.HtmlDecode(await _client.GetStringAsync(new Uri("start", UriKind.Relative), TestContext.Current.CancellationToken));
        Assert.All(ExampleTown.All, e => Assert.Contains($">Open {e.Town.Name}</button>", start, StringComparison.Ordinal));
    }

    // The smallest that each format allows to be told by: PNG, ISO/IEC 15948, 5.2; what follows is not looked into.
    [Fact]
    public async Task A_photograph_sent_twice_from_the_bench_is_kept_once_and_given_back_as_it_came()
    {
        byte[] picture = [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, 1, 2, 3];
        for (var i = 0; i < 2; i++)
        {
            using var sent = await SendPhotographAsync(picture, "shot");
            Assert.Equal(HttpStatusCode.OK, sent.StatusCode);
        }

        var page = await _client.GetStringAsync(new Uri("bench/house/chandlery", UriKind.Relative), TestContext.Current.CancellationToken);
        var id = Assert.Single(page.Split("src=\"/bench/pictures/").Skip(1))[..64];
        using var back = await _client.GetAsync(new Uri($"bench/pictures/{id}", UriKind.Relative), TestContext.Current.CancellationToken);
        Assert.Equal("image/png", back.Content.Headers.ContentType!.MediaType);
        Assert.Equal(picture, await back.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task What_only_calls_itself_a_photograph_is_refused_and_nothing_is_entered()
    {
        using var sent = await SendPhotographAsync("<svg onload=alert(1)>"u8.ToArray(), "script");
        Assert.Equal(HttpStatusCode.UnprocessableEntity, sent.StatusCode);
        Assert.Contains("neither a PNG nor a JPEG", await sent.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
        Assert.DoesNotContain("/bench/pictures/", await _client.GetStringAsync(new Uri("bench/house/chandlery", UriKind.Relative), TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Typed_lines_become_labels_and_leave_the_open_town_as_it_is()
    {
        using var form = new FormUrlEncodedContent(new Dictionary<string, string> { ["lines"] = "Eel house, 4, 47 cm\nLookout, 1, don't know", ["paper"] = "letter" });
        using var answer = await _client.PostAsync(new Uri("take/labels.pdf", UriKind.Relative), form, TestContext.Current.CancellationToken);
        Assert.Equal("application/pdf", answer.Content.Headers.ContentType!.MediaType);
        using var labels = PdfDocument.Open(await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken));
        Assert.All(labels.GetPages(), p => Assert.StartsWith("Labels", p.Text, StringComparison.Ordinal));
        Assert.Contains(labels.GetPages(), p => p.Text.Contains("Eel house", StringComparison.Ordinal));
        Assert.DoesNotContain("Eel house", await _client.GetStringAsync(new Uri("take/town.json", UriKind.Relative), TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    private async Task<HttpResponseMessage> SendPhotographAsync(byte[] bytes, string key)
    {
        using var form = new MultipartFormDataContent
        {
            { new StringContent("note"), "what" }, { new StringContent("chandlery"), "building" }, { new StringContent("fit"), "step" }, { new StringContent(key), "key" },
            { new ByteArrayContent(bytes), "photo", "photograph.png" },
        };
        return await _client.PostAsync(new Uri("bench/entries", UriKind.Relative), form, TestContext.Current.CancellationToken);
    }

    [Theory]
    [InlineData("")]
    [InlineData("power")]
    [InlineData("night")]
    [InlineData("bench")]
    [InlineData("book")]
    [InlineData("questions")]
    [InlineData("start")]
    [InlineData("file")]
    public async Task Every_place_is_drawn_without_a_script(string place)
    {
        var page = await _client.GetStringAsync(new Uri(place, UriKind.Relative), TestContext.Current.CancellationToken);
        Assert.Contains("<h1>", page, StringComparison.Ordinal);
        Assert.DoesNotContain("at Duskwright.", page, StringComparison.Ordinal);
    }

    // A page elsewhere that reaches for the town, by whatever way a browser lets it.
    [Theory]
    [InlineData("http://evil.example", "")]
    [InlineData("http://evil.example", "take/town.json")]
    [InlineData("null", "take/town.json")]
    [InlineData("http://evil.example", "_blazor")]
    [InlineData("https://127.0.0.1:1", "night/scene.json")]
    public async Task A_page_of_another_origin_is_refused(string origin, string address)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, new Uri(address, UriKind.Relative));
        request.Headers.Add("Origin", origin);
        using var answer = await _client.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.DoesNotContain("Saltmarrow", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    // Ways up the folders that have opened other programs, spelled as they come: OWASP, Web Security Testing Guide 4.2, WSTG-ATHZ-01, from memory.
    [Fact]
    public async Task No_address_leads_out_of_the_programs_own_folders()
    {
        string[] up = ["../", "..%2f", "..%2F", "%2e%2e/", "%2e%2e%2f", "..%5c", "%252e%252e%252f", "....//"];
        foreach (var way in up.SelectMany(u => new[] { $"fonts/{u}Duskwright.dll", $"fonts/{u}{u}{u}{u}{u}{u}{u}{u}etc/passwd", $"bench/pictures/{u}{u}etc%2fpasswd", $"take/printed/{u}{u}x.pdf", $"take/{u}saltmarrow.csv" }))
        {
            // A Uri would take the dots out itself; a program that attacks does not.
            var (code, body) = await RawAsync(way);
            Assert.True(code is 400 or 404, $"{way}: {code}");
            Assert.DoesNotContain("root:", body, StringComparison.Ordinal);
            Assert.DoesNotContain("This program cannot be run", body, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("bench/entries")]
    [InlineData("bench/steps")]
    [InlineData("take/labels.pdf")]
    public async Task Nothing_that_a_page_of_another_origin_posts_is_taken(string address)
    {
        var before = await _client.GetStringAsync(new Uri("take/town.json", UriKind.Relative), TestContext.Current.CancellationToken);
        using var request = new HttpRequestMessage(HttpMethod.Post, new Uri(address, UriKind.Relative)) { Content = new FormUrlEncodedContent(new Dictionary<string, string> { ["what"] = "note", ["building"] = "chandlery", ["note"] = "from elsewhere", ["lines"] = "Mill, 2, 30 cm" }) };
        request.Headers.Add("Origin", "http://evil.example");
        using var answer = await _client.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.Equal(before, await _client.GetStringAsync(new Uri("take/town.json", UriKind.Relative), TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task The_towns_own_pages_are_answered()
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, new Uri("take/town.json", UriKind.Relative));
        request.Headers.Add("Origin", _client.BaseAddress!.GetLeftPart(UriPartial.Authority));
        using var answer = await _client.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    [Fact]
    public async Task No_script_runs_but_the_programs_own()
    {
        using var answer = await Ask("");
        var policy = string.Join(' ', answer.Headers.GetValues("Content-Security-Policy"));
        var script = policy.Split("script-src")[1].Split(';')[0];
        Assert.DoesNotContain("unsafe", script, StringComparison.Ordinal);
        Assert.DoesNotContain("*", policy, StringComparison.Ordinal);
        var page = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        var within = Assert.Single(System.Text.RegularExpressions.Regex.Matches(page, "<script(?![^>]*src=)[^>]*>(.*?)</script>", System.Text.RegularExpressions.RegexOptions.Singleline));
        Assert.Contains(Convert.ToBase64String(System.Security.Cryptography.SHA256.HashData(System.Text.Encoding.UTF8.GetBytes(within.Groups[1].Value))), script, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"\son[a-z]+=", page);
    }

    [Theory]
    [InlineData("nowhere")]
    [InlineData("take/nothing.csv")]
    [InlineData("take/b5.pdf")]
    [InlineData("take/7.pdf")]
    public async Task An_address_with_nothing_behind_it_says_so(string address)
    {
        using var answer = await Ask(address);
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        Assert.Contains("There is nothing at this address", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("take/cut.csv", "text/csv", "saltmarrow-cut-list.csv", "\uFEFFLabel,From,To,")]
    [InlineData("take/scene.csv", "text/csv", "saltmarrow-scene-list.csv", "\uFEFFScene,")]
    [InlineData("take/lists.xlsx", "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet", "saltmarrow-lists.xlsx", "PK")]
    [InlineData("take/a4.pdf", "application/pdf", "saltmarrow-bench-book.pdf", "%PDF-")]
    [InlineData("take/letter.pdf", "application/pdf", "saltmarrow-bench-book.pdf", "%PDF-")]
    [InlineData("take/town.json", "application/json", "saltmarrow.json", "{")]
    public async Task A_file_is_taken_away_under_its_name_and_kind(string address, string kind, string name, string begins)
    {
        using var answer = await Ask(address);
        Assert.Equal((HttpStatusCode.OK, kind), (answer.StatusCode, answer.Content.Headers.ContentType!.MediaType));
        Assert.Equal(name, answer.Content.Headers.ContentDisposition!.FileNameStar);
        var bytes = await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken);
        Assert.StartsWith(begins, System.Text.Encoding.UTF8.GetString(bytes), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("app.css")]
    [InlineData("take/cut.csv")]
    [InlineData("nowhere")]
    public async Task Every_answer_keeps_its_kind_and_its_address_to_itself(string address)
    {
        using var answer = await Ask(address);
        Assert.Equal(["nosniff"], answer.Headers.GetValues("X-Content-Type-Options"));
        Assert.Equal(["same-origin"], answer.Headers.GetValues("Referrer-Policy"));
    }

    [Fact]
    public async Task No_page_may_be_framed()
    {
        using var answer = await Ask("");
        var policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("town.example", HttpStatusCode.BadRequest)]
    [InlineData("localhost", HttpStatusCode.OK)]
    public async Task A_name_that_is_not_this_machines_reaches_nothing(string host, HttpStatusCode code)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, "take/town.json") { Headers = { Host = host } };
        using var answer = await _client.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.Equal(code, answer.StatusCode);
    }

    private async Task<(int Code, string Body)> RawAsync(string way)
    {
        using var wire = new System.Net.Sockets.TcpClient();
        await wire.ConnectAsync(IPAddress.Loopback, _client.BaseAddress!.Port, TestContext.Current.CancellationToken);
        await using var stream = wire.GetStream();
        await stream.WriteAsync(System.Text.Encoding.ASCII.GetBytes($"GET /{way} HTTP/1.1\r\nHost: 127.0.0.1:{_client.BaseAddress.Port}\r\nConnection: close\r\n\r\n"), TestContext.Current.CancellationToken);
        using var reader = new StreamReader(stream);
        var answer = await reader.ReadToEndAsync(TestContext.Current.CancellationToken);
        return (int.Parse(answer.Split(' ')[1], System.Globalization.CultureInfo.InvariantCulture), answer);
    }

    private Task<HttpResponseMessage> Ask(string address) => _client.GetAsync(new Uri(address, UriKind.Relative), TestContext.Current.CancellationToken);
}
