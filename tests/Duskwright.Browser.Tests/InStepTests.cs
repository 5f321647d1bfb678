using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using Deque.AxeCore.Playwright;
using Duskwright.Serve;
using Duskwright.Towns;
using Microsoft.AspNetCore.Builder;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Duskwright.Browser.Tests;

/// <summary>One town in several tabs, and in a program that is killed: no stroke is lost.</summary>
public sealed class InStepTests(AppFixture app) : IClassFixture<AppFixture>
{
    [Fact]
    public async Task Two_tabs_on_one_town_stay_in_step_and_either_takes_back_what_the_other_did()
    {
        var one = await app.OpenAsync("town?at=chandlery");
        var other = await app.OpenAsync("town?at=chandlery");
        await one.Locator("summary", new() { HasText = "Change it" }).ClickAsync();
        await one.GetByLabel("Name", new() { Exact = true }).FillAsync("Ship chandler");
        await one.Keyboard.PressAsync("Tab");
        await Expect(other.Locator(".margin h1")).ToHaveTextAsync("Ship chandler");
        await Undo(other).ClickAsync();
        await Expect(one.Locator(".margin h1")).ToHaveTextAsync("Chandlery");
        await Expect(one.GetByRole(AriaRole.Button, new() { Name = "Redo", Exact = true })).ToHaveCountAsync(1);
    }

    [Fact]
    public async Task A_maker_goes_on_where_they_were_after_the_program_was_killed_and_started_again()
    {
        var folder = Directory.CreateTempSubdirectory("duskwright-");
        try
        {
            var town = Path.Combine(folder.FullName, "saltmarrow.json");
            File.Copy(Path.Combine(AppContext.BaseDirectory, "examples", "saltmarrow.json"), town);
            var port = FreePort();
            using (var first = await StartedAsync(town, port))
            {
                var page = await app.OpenElsewhereAsync($"http://127.0.0.1:{port}/town?at=lookout");
                await page.Locator("summary", new() { HasText = "Change it" }).ClickAsync();
                await page.GetByLabel("Name", new() { Exact = true }).FillAsync("Storm lookout");
                await page.Keyboard.PressAsync("Tab");
                await Expect(page.Locator(".margin h1")).ToHaveTextAsync("Storm lookout");
                first.Kill(entireProcessTree: true);
                await first.WaitForExitAsync(TestContext.Current.CancellationToken);
                await Expect(page.Locator(".reconnect")).ToBeVisibleAsync();
                using var second = await StartedAsync(town, port);
                try
                {
                    await page.ReloadAsync();
                    await page.Locator(".app[data-live=yes]").WaitForAsync();
                    await Expect(page.Locator(".margin h1")).ToHaveTextAsync("Storm lookout");
                    await Undo(page).ClickAsync();
                    await Expect(page.Locator(".margin h1")).ToHaveTextAsync("Lookout");
                }
                finally
                {
                    second.Kill(entireProcessTree: true);
                    await second.WaitForExitAsync(TestContext.Current.CancellationToken);
                }
            }
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public async Task A_phone_that_may_only_look_comes_in_by_its_code_and_is_told_when_it_would_change_something()
    {
        using var town = OpenTown.FromFile(null).Town!;
        await using var door = new PhoneDoor(new WebApplicationOptions { ApplicationName = "Duskwright", ContentRootPath = AppContext.BaseDirectory }, town, () => [IPAddress.Loopback]);
        Assert.Empty(await door.OpenAsync(lookOnly: true));
        var page = await app.OpenPlainAsync($"{door.Address}/");
        await Expect(page.Locator("h1")).ToHaveTextAsync("The town is at the desk");
        await AppFixture.ShotAsync(page, "door");
        Assert.Empty((await page.RunAxe()).Violations.Select(v => $"{v.Id} {v.Nodes[0].Html}"));
        await page.Locator("input[name=code]").FillAsync(door.Code!);
        await page.GetByRole(AriaRole.Button, new() { Name = "Come in" }).ClickAsync();
        await page.WaitForURLAsync("**/bench");
        await AppFixture.ShotAsync(page, "let-in");
        await page.GotoAsync($"{door.Address}/town?at=chandlery");
        await page.Locator(".app[data-live=yes]").WaitForAsync();
        await page.Locator("summary", new() { HasText = "Change it" }).ClickAsync();
        await page.GetByLabel("Name", new() { Exact = true }).FillAsync("Mine");
        await page.Keyboard.PressAsync("Tab");
        await Expect(page.Locator(".trouble")).ToContainTextAsync("From here the town may be looked at and not changed.");
        await AppFixture.ShotAsync(page, "look-only");
        Assert.Equal("Chandlery", town.Town.Buildings.First(b => b.Key == "chandlery").Name);
        await page.GetByRole(AriaRole.Button, new() { Name = "I have read it" }).ClickAsync();
        await Expect(page.Locator(".trouble")).ToHaveCountAsync(0);
    }

    private static ILocator Undo(IPage page) => page.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true });

    private static int FreePort()
    {
        using var probe = new TcpListener(IPAddress.Loopback, 0);
        probe.Start();
        return ((IPEndPoint)probe.LocalEndpoint).Port;
    }

    // The program as a maker starts it, with a home of its own.
    private static async Task<Process> StartedAsync(string town, int port)
    {
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "Duskwright.dll"), "serve", town, "--port", $"{port}"]) { RedirectStandardOutput = true };
        start.Environment["HOME"] = Path.GetDirectoryName(town);
        start.Environment["XDG_DATA_HOME"] = Path.GetDirectoryName(town);
        var program = Process.Start(start)!;
        for (var line = ""; line is not null; line = await program.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken))
        {
            if (line.Contains($"127.0.0.1:{port}", StringComparison.Ordinal))
            {
                return program;
            }
        }

        throw new InvalidOperationException("The program ended before it answered.");
    }
}
