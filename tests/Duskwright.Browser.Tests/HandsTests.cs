using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Duskwright.Browser.Tests;

/// <summary>Journeys of a maker who draws: by pointer, and by keys alone.</summary>
public sealed class HandsTests(AppFixture app) : IClassFixture<AppFixture>
{
    [Fact]
    public async Task A_window_is_dragged_sized_copied_and_taken_away_and_every_stroke_is_one_step_back()
    {
        var page = await app.OpenAsync("house?at=the-drowned-bell");
        var windows = page.Locator(".walls .pick[data-key^='window:']");
        var before = await windows.CountAsync();
        var window = page.Locator(".walls .pick[data-key='window:1/0/0']");
        await window.ClickAsync();
        var width = page.GetByLabel("Width", new() { Exact = true });
        var wide = await width.InputValueAsync();
        var sill = await page.GetByLabel("Sill above the floor").InputValueAsync();

        await DragAsync(page, window, 0, -9);
        await Expect(page.GetByLabel("Sill above the floor")).Not.ToHaveValueAsync(sill);
        await page.Locator(".walls .pick[data-key='size:window:1/0/0']").PressAsync("Shift+ArrowLeft");
        await Expect(width).Not.ToHaveValueAsync(wide);
        await page.Locator("label:has-text('Pane') select").SelectOptionAsync("Frosted");
        await page.GetByRole(AriaRole.Button, new() { Name = "Remove it" }).ClickAsync();
        await Expect(windows).ToHaveCountAsync(before - 1);

        var undo = page.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true });
        foreach (var label in (string[])["a window less", "change a window", "size a window", "move a window"])
        {
            await Expect(undo).ToHaveAttributeAsync("title", $"The Drowned Bell: {label}");
            await undo.ClickAsync();
        }

        await Expect(windows).ToHaveCountAsync(before);
    }

    [Fact]
    public async Task A_house_gets_a_storey_a_room_a_window_and_a_lamp_by_keys_alone()
    {
        var page = await app.OpenAsync("house?at=chandlery");
        var rooms = await page.Locator(".floors .pick[data-key^='room:']").CountAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "One storey more" }).PressAsync("Enter");
        await Expect(page.Locator(".floors .pick[data-key^='room:']")).ToHaveCountAsync(rooms + 1);
        var room = page.Locator(".floors .pick[data-key^='room:']").Last;
        await room.PressAsync("Enter");
        await page.GetByLabel("Room is called").FillAsync("drying room");
        await page.Keyboard.PressAsync("Tab");
        await Expect(page.Locator(".margin h2").First).ToContainTextAsync("drying room");
        await page.GetByRole(AriaRole.Button, new() { Name = "front", Exact = true }).PressAsync("Enter");
        await Expect(page.Locator(".margin h2").First).ToContainTextAsync("A window");
        await room.PressAsync("Enter");
        await page.GetByRole(AriaRole.Button, new() { Name = "One lamp more" }).PressAsync("Enter");
        await Expect(page.Locator(".margin h2").First).ToContainTextAsync("Lamp L5");
        var lamp = page.Locator(".floors .pick[aria-pressed=true]");
        await lamp.PressAsync("ArrowUp");
        await Expect(page.GetByLabel("Behind the pane")).ToHaveValueAsync("22 mm");
        await lamp.PressAsync("Delete");
        await Expect(page.Locator(".margin h1")).ToHaveTextAsync("Chandlery");
        var undo = page.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true });
        foreach (var label in (string[])["a lamp less", "move a lamp", "one lamp more", "one window more", "change a room", "one storey more"])
        {
            await Expect(undo).ToHaveAttributeAsync("title", $"Chandlery: {label}");
            await undo.ClickAsync();
        }
    }

    [Theory]
    [InlineData(false, false)]
    [InlineData(true, true)]
    public async Task A_house_on_the_drawing_board_is_open_to_everybody(bool dark, bool phone)
    {
        var page = await app.OpenAsync("house?at=chandlery", dark, phone);
        await page.Locator(".walls .pick[data-key^='window:']").First.PressAsync("Enter");
        await Expect(page.GetByLabel("Sill above the floor")).ToBeVisibleAsync();
        Assert.Empty((await page.RunAxe()).Violations.Select(v => $"{v.Id} {v.Nodes[0].Html}"));
        Assert.Equal(0, await page.EvaluateAsync<int>("Math.max(0, document.documentElement.scrollWidth - innerWidth)"));
        if (Environment.GetEnvironmentVariable("DUSKWRIGHT_SHOTS") is { } folder)
        {
            await page.ScreenshotAsync(new() { Path = Path.Combine(folder, $"house-{(phone ? "phone" : "desktop")}-{(dark ? "dark" : "light")}.png"), FullPage = true });
        }
    }

    private static async Task DragAsync(IPage page, ILocator thing, float right, float down)
    {
        var box = (await thing.BoundingBoxAsync())!;
        var (x, y) = (box.X + (box.Width / 2), box.Y + (box.Height / 2));
        await page.Mouse.MoveAsync(x, y);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(x + right, y + down, new() { Steps = 4 });
        await page.Mouse.UpAsync();
    }
}
