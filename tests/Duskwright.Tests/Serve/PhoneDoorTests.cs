using System.Net;
using System.Net.Sockets;
using Duskwright.Plan.Edits;
using Duskwright.Serve;
using Duskwright.Towns;
using Microsoft.AspNetCore.Builder;

namespace Duskwright.Tests.Serve;

/// <summary>A phone is let in by a code used once, and nobody else is.</summary>
public sealed class PhoneDoorTests : IAsyncLifetime
{
    private static readonly WebApplicationOptions Options = new() { ApplicationName = "Duskwright", ContentRootPath = AppContext.BaseDirectory };
    private readonly OpenTown _town = OpenTown.FromFile(null).Town!;
    private PhoneDoor _door = default!;

    public ValueTask InitializeAsync()
    {
        _door = new PhoneDoor(Options, _town, () => [IPAddress.Loopback]);
        return ValueTask.CompletedTask;
    }

    public async ValueTask DisposeAsync()
    {
        await _door.DisposeAsync();
        _town.Dispose();
    }

    [Fact]
    public async Task It_is_shut_until_it_is_opened_and_shut_again_nothing_answers()
    {
        Assert.Null(_door.Address);
        Assert.Empty(await _door.OpenAsync(false));
        using var client = Device();
        Assert.Equal(HttpStatusCode.Forbidden, (await client.GetAsync("bench", Cancel)).StatusCode);
        await _door.ShutAsync();
        await Assert.ThrowsAsync<HttpRequestException>(() => client.GetAsync("bench", Cancel));
    }

    [Theory]
    [InlineData("")]
    [InlineData("bench")]
    [InlineData("take/town.json")]
    [InlineData("app.css")]
    [InlineData("_blazor/negotiate")]
    [InlineData("in?code=")]
    [InlineData("in?code=00000000%00")]
    public async Task Without_the_code_there_is_nothing_but_the_question_for_it(string address)
    {
        await _door.OpenAsync(false);
        using var client = Device();
        using var answer = await client.GetAsync(address, Cancel);
        var page = await answer.Content.ReadAsStringAsync(Cancel);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.DoesNotContain("Saltmarrow", page, StringComparison.Ordinal);
        Assert.Contains("name=\"code\"", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_code_lets_one_device_in_and_is_worth_nothing_after_that()
    {
        await _door.OpenAsync(false);
        var code = _door.Code!;
        using var first = Device();
        using var second = Device();
        Assert.Equal(HttpStatusCode.OK, (await first.GetAsync($"in?code={code}", Cancel)).StatusCode);
        Assert.Contains("Saltmarrow", await first.GetStringAsync("take/town.json", Cancel), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Forbidden, (await second.GetAsync($"in?code={code}", Cancel)).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await second.GetAsync("take/town.json", Cancel)).StatusCode);
        Assert.Equal(1, _door.Devices);
    }

    [Fact]
    public async Task A_code_guessed_at_too_often_is_void_even_for_who_has_it()
    {
        await _door.OpenAsync(false);
        var code = _door.Code!;
        using var client = Device();
        for (var guess = 0; guess < PhoneDoor.MostGuesses; guess++)
        {
            var wrong = code[0] == '1' ? $"2{code[1..]}" : $"1{code[1..]}";
            Assert.Equal(HttpStatusCode.Forbidden, (await client.GetAsync($"in?code={wrong}", Cancel)).StatusCode);
        }

        Assert.Equal(HttpStatusCode.Forbidden, (await client.GetAsync($"in?code={code}", Cancel)).StatusCode);
        _door.NewCode();
        Assert.Equal(HttpStatusCode.OK, (await client.GetAsync($"in?code={_door.Code}", Cancel)).StatusCode);
    }

    [Fact]
    public async Task After_too_many_wrong_codes_the_door_and_the_desk_say_what_to_do()
    {
        await _door.OpenAsync(false);
        var wrong = _door.Code![0] == '1' ? "20000000" : "10000000";
        using var client = Device();
        Assert.Contains("not the code", await SaidAsync(client, wrong), StringComparison.Ordinal);
        Assert.False(_door.IsGuessedAt);
        for (var guess = 1; guess < PhoneDoor.MostGuesses; guess++)
        {
            await client.GetAsync($"in?code={wrong}", Cancel);
        }

        Assert.True(_door.IsGuessedAt);
        Assert.Contains("A code for another device", await SaidAsync(client, wrong), StringComparison.Ordinal);
        _door.NewCode();
        Assert.False(_door.IsGuessedAt);
    }

    [Fact]
    public async Task A_device_that_is_in_and_scans_the_next_code_is_led_on_and_leaves_it_to_another()
    {
        await _door.OpenAsync(false);
        using var first = new HttpClient(new HttpClientHandler { AllowAutoRedirect = false }) { BaseAddress = new Uri(_door.Address + "/") };
        await first.GetAsync($"in?code={_door.Code}", Cancel);
        _door.NewCode();
        var next = _door.Code;
        using var answer = await first.GetAsync($"in?code={next}", Cancel);
        Assert.Equal("/bench", answer.Headers.Location?.OriginalString);
        Assert.Equal(next, _door.Code);
    }

    [Theory]
    [InlineData("bench/house/chandlery", "/bench/house/chandlery")]
    [InlineData("", "/bench")]
    [InlineData("in?to=https://evil.example/", "/bench")]
    [InlineData("in?to=//evil.example/bench/house/x", "/bench")]
    [InlineData("in?to=/bench/house/%22%3E%3Cscript%3E", "/bench")]
    public async Task Who_comes_by_a_printed_label_goes_on_to_its_house_and_nobody_to_an_address_elsewhere(string opened, string place)
    {
        await _door.OpenAsync(false);
        using var client = Device();
        using var asked = await client.GetAsync(opened, Cancel);
        Assert.Contains($"name=\"to\" value=\"{place}\"", await asked.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
        using var let = await client.GetAsync($"in?to={Uri.EscapeDataString(place)}&code={_door.Code}", Cancel);
        Assert.Contains($"content=\"0;url={place}\"", await let.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Who_may_only_look_is_told_so_before_anything_is_typed(bool lookOnly)
    {
        await _door.OpenAsync(lookOnly);
        using var client = Device();
        await client.GetAsync($"in?code={_door.Code}", Cancel);
        Assert.Equal(lookOnly, (await client.GetStringAsync("file", Cancel)).Contains("To look at only", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Who_is_sent_out_does_not_come_in_again_with_the_old_token()
    {
        await _door.OpenAsync(false);
        var token = _door.Admit(_door.Code!);
        Assert.True(_door.Knows(token));
        await _door.OpenAsync(false);
        Assert.False(_door.Knows(token));
    }

    [Theory]
    [InlineData("town.example", null, HttpStatusCode.BadRequest)]
    [InlineData(null, "http://evil.example", HttpStatusCode.Forbidden)]
    public async Task A_device_that_is_in_is_not_used_by_pages_from_elsewhere(string? host, string? origin, HttpStatusCode code)
    {
        await _door.OpenAsync(false);
        using var client = Device();
        await client.GetAsync($"in?code={_door.Code}", Cancel);
        using var request = new HttpRequestMessage(HttpMethod.Get, "take/town.json");
        request.Headers.Host = host;
        if (origin is not null)
        {
            request.Headers.Add("Origin", origin);
        }

        Assert.Equal(code, (await client.SendAsync(request, Cancel)).StatusCode);
    }

    [Fact]
    public void Who_may_only_look_sees_every_change_and_makes_none()
    {
        var looked = _town.ToLookAt();
        var building = _town.Town.Buildings[0];
        var house = building.Key;
        Assert.Single(looked.Apply(new RemoveBuildings([building])));
        Assert.Contains(_town.Town.Buildings, b => b.Key == house);
        Assert.Empty(_town.Apply(new RemoveBuildings([building])));
        Assert.DoesNotContain(looked.Town.Buildings, b => b.Key == house);
        Assert.Single(looked.Replace(_town.Town, "anything"));
        looked.Undo();
        Assert.DoesNotContain(_town.Town.Buildings, b => b.Key == house);
    }

    [Fact]
    public async Task A_machine_without_a_network_says_so()
    {
        await using var door = new PhoneDoor(Options, _town, () => []);
        var problem = Assert.Single(await door.OpenAsync(false));
        Assert.Contains("Wi-Fi", problem.Remedy, StringComparison.Ordinal);
        Assert.Null(door.Address);
    }

    [Fact]
    public async Task It_is_found_again_at_the_address_on_printed_labels_and_says_why_when_it_is_not()
    {
        var home = Directory.CreateTempSubdirectory("duskwright-");
        try
        {
            using var town = OpenTown.FromFile(null, home.FullName).Town!;
            town.Apply(new ChangeBuildings([town.Town.Buildings[0] with { Note = "mine" }], "Begin a file"));
            Uri first;
            await using (var door = new PhoneDoor(Options, town, () => [IPAddress.Loopback]))
            {
                Assert.Empty(await door.OpenAsync(false));
                Assert.Null(door.Elsewhere);
                first = new Uri(door.Address!);
            }

            await using var next = new PhoneDoor(Options, town, () => [IPAddress.Loopback]);
            using (var another = new TcpListener(IPAddress.Loopback, first.Port))
            {
                another.Start();
                await next.OpenAsync(false);
                Assert.NotEqual(first.Port, new Uri(next.Address!).Port);
                Assert.Contains($"Another program has port {first.Port}", next.Elsewhere, StringComparison.Ordinal);
            }

            await next.OpenAsync(false);
            Assert.Equal((first, null), (new Uri(next.Address!), next.Elsewhere));

            await using var moved = new PhoneDoor(Options, town, () => [IPAddress.Parse("127.0.0.2")]);
            await next.ShutAsync();
            await moved.OpenAsync(false);
            Assert.Equal(first.Port, new Uri(moved.Address!).Port);
            Assert.Contains("another address in the house than before (127.0.0.1)", moved.Elsewhere, StringComparison.Ordinal);
        }
        finally
        {
            home.Delete(recursive: true);
        }
    }

    [Fact]
    public async Task A_town_that_has_had_no_port_leaves_alone_what_labels_of_another_name()
    {
        var home = Directory.CreateTempSubdirectory("duskwright-");
        try
        {
            var usual = FreePort();
            using var town = OpenTown.FromFile(null, home.FullName).Town!;
            town.Apply(new ChangeBuildings([town.Town.Buildings[0] with { Note = "mine" }], "Begin a file"));
            await using (var door = new PhoneDoor(Options, town, () => [IPAddress.Loopback], usual))
            {
                await door.OpenAsync(false);
                Assert.Equal(usual, new Uri(door.Address!).Port);
            }

            await using var other = new PhoneDoor(Options, town, () => [IPAddress.Loopback], usual);
            town.Begin(new Plan.Document.Town { Name = "Umber" });
            await other.OpenAsync(false);
            Assert.NotEqual(usual, new Uri(other.Address!).Port);
        }
        finally
        {
            home.Delete(recursive: true);
        }
    }

    private static int FreePort()
    {
        using var probe = new TcpListener(IPAddress.Loopback, 0);
        probe.Start();
        return ((IPEndPoint)probe.LocalEndpoint).Port;
    }

    [Fact]
    public async Task A_device_that_is_in_stays_in_when_its_camera_opens_the_address_on_a_label()
    {
        await _door.OpenAsync(false);
        using var client = new HttpClient(new HttpClientHandler { UseCookies = false }) { BaseAddress = new Uri(_door.Address + "/") };
        using var let = await client.GetAsync($"in?code={_door.Code}", Cancel);

        // A cookie that is "strict" is left at home when another program opens an address: RFC 6265bis, section 5.6.7.1 (from memory).
        Assert.Contains("samesite=lax", Assert.Single(let.Headers.GetValues("Set-Cookie")), StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task A_phone_that_comes_in_at_the_door_of_another_town_stays_in_at_the_first()
    {
        using var other = OpenTown.FromFile(null).Town!;
        await using var second = new PhoneDoor(Options, other, () => [IPAddress.Loopback]);
        await _door.OpenAsync(false);
        await second.OpenAsync(false);

        // Source: RFC 6265, section 8.5: "Cookies do not provide isolation by port." (from memory) The container of this client does not either.
        using var phone = Device();
        await phone.GetAsync($"in?code={_door.Code}", Cancel);
        await phone.GetAsync($"{second.Address}/in?code={second.Code}", Cancel);
        Assert.Equal(HttpStatusCode.OK, (await phone.GetAsync("take/town.json", Cancel)).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await phone.GetAsync($"{second.Address}/take/town.json", Cancel)).StatusCode);
    }

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private static async Task<string> SaidAsync(HttpClient client, string code)
    {
        using var answer = await client.GetAsync($"in?code={code}", Cancel);
        return await answer.Content.ReadAsStringAsync(Cancel);
    }

    private HttpClient Device() => new(new HttpClientHandler { CookieContainer = new CookieContainer() }) { BaseAddress = new Uri(_door.Address + "/") };
}
