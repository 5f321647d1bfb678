using Duskwright.Serve;
using Duskwright.Towns;
using Microsoft.AspNetCore.Builder;
using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(Duskwright.Browser.Tests.AppFixture))]

namespace Duskwright.Browser.Tests;

/// <summary>The real app on a free port of this machine, and one browser.</summary>
public sealed class AppFixture : IAsyncLifetime
{
    // Other test programs share the two cores.
    private const float PatienceMilliseconds = 20_000;
    private const float PatienceForPageMilliseconds = 90_000;

    private readonly WebApplication _app = ServeApp.Build(
        new WebApplicationOptions { ApplicationName = "Duskwright", ContentRootPath = AppContext.BaseDirectory },
        OpenTown.FromFile(null).Town!);

    private readonly Lock _gate = new();
    private readonly Dictionary<string, (string Test, List<IPage> Pages)> _open = [];
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    public string Address { get; private set; } = "";

    public async ValueTask InitializeAsync()
    {
        _app.Urls.Add("http://127.0.0.1:0");
        await _app.StartAsync();
        Assertions.SetDefaultExpectTimeout(PatienceMilliseconds);
        Address = _app.Urls.First();
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new() { ExecutablePath = "/usr/bin/chromium", Args = ["--no-sandbox", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"] });
    }

    /// <summary>Opens a place and waits until it answers to the hand.</summary>
    public Task<IPage> OpenAsync(string place, bool dark = false, bool phone = false, Action<string>? onError = null) => OpenElsewhereAsync($"{Address}/{place}", dark, phone, onError);

    /// <summary>Opens a page of another program and waits until it answers to the hand.</summary>
    public async Task<IPage> OpenElsewhereAsync(string address, bool dark = false, bool phone = false, Action<string>? onError = null)
    {
        var page = await NewPageAsync(new()
        {
            ViewportSize = phone ? new() { Width = 390, Height = 844 } : new() { Width = 1400, Height = 900 },
            ColorScheme = dark ? ColorScheme.Dark : ColorScheme.Light,
            ReducedMotion = ReducedMotion.Reduce,
            HasTouch = phone,
        });
        page.Console += (_, message) =>
        {
            if (message.Type == "error")
            {
                onError?.Invoke(message.Text);
            }
        };
        await page.GotoAsync(address, new() { WaitUntil = WaitUntilState.NetworkIdle });

        // The page is drawn before it listens; what is typed in between would be lost.
        await page.Locator(".app[data-live=yes]").WaitForAsync();
        return page;
    }

    // Every page goes on following the town; those of the tests before in the same class are closed, or each change would draw them all anew.
    private async Task<IPage> NewPageAsync(BrowserNewPageOptions options)
    {
        var (group, test) = (TestContext.Current.TestClass!.UniqueID, TestContext.Current.Test!.UniqueID);
        List<IPage> done = [];
        lock (_gate)
        {
            if (!_open.TryGetValue(group, out var open) || open.Test != test)
            {
                (done, _open[group]) = (open.Pages ?? [], (test, []));
            }
        }

        foreach (var page in done)
        {
            await page.CloseAsync();
        }

        var opened = await _browser!.NewPageAsync(options);
        opened.SetDefaultTimeout(PatienceForPageMilliseconds);
        lock (_gate)
        {
            _open[group].Pages.Add(opened);
        }

        return opened;
    }

    /// <summary>Opens a plain page of the bench on a phone.</summary>
    public Task<IPage> OpenHandheldAsync(string place, bool dark = false) => OpenPlainAsync($"{Address}/{place}", dark);

    /// <summary>Opens a plain page of any address on a phone.</summary>
    public async Task<IPage> OpenPlainAsync(string address, bool dark = false)
    {
        var page = await NewPageAsync(new()
        {
            ViewportSize = new() { Width = 390, Height = 844 },
            ColorScheme = dark ? ColorScheme.Dark : ColorScheme.Light,
            HasTouch = true,
        });
        await page.GotoAsync(address);
        return page;
    }

    /// <summary>Keeps a picture of the whole page in the folder that DUSKWRIGHT_SHOTS names; none where it names none.</summary>
    public static async Task ShotAsync(IPage page, string name)
    {
        if (Environment.GetEnvironmentVariable("DUSKWRIGHT_SHOTS") is { } folder)
        {
            await page.ScreenshotAsync(new() { Path = Path.Combine(folder, $"{name}.png"), FullPage = true });
        }
    }

    /// <summary>Ticks one step after the other, wet or dry, until the one that begins so is next.</summary>
    public static async Task TickUntilAsync(IPage page, string step)
    {
        const int Most = 40;
        for (var i = 0; i < Most; i++)
        {
            var head = await page.Locator("h1").InnerTextAsync();
            if (head.StartsWith(step, StringComparison.Ordinal))
            {
                return;
            }

            if (head.StartsWith("Let it dry", StringComparison.Ordinal))
            {
                await page.GetByText("It is dry already: go on").ClickAsync();
                continue;
            }

            if (await page.Locator(".hand .gate").CountAsync() > 0)
            {
                Assert.Fail($"A test stands before “{head}”.");
            }

            await page.Locator("form.tick button.big").ClickAsync();
            await Assertions.Expect(page.Locator("h1")).Not.ToHaveTextAsync(head);
        }

        Assert.Fail($"“{step}” never came.");
    }

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
        {
            await _browser.DisposeAsync();
        }

        _playwright?.Dispose();
        await _app.DisposeAsync();
    }
}
