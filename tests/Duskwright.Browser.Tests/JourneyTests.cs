using System.Globalization;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Duskwright.Browser.Tests;

/// <summary>Whole journeys in a town of the maker's own, from an empty board.</summary>
public sealed class JourneyTests(AppFixture app) : IClassFixture<AppFixture>
{
    [Fact]
    public async Task Three_houses_are_drawn_from_nothing_to_clean_results_and_a_printed_book()
    {
        var page = await EmptyBoardAsync();
        await AddAsync(page, "Cottage", "Eel house");
        await AddAsync(page, "Shop", "Ropery");
        await AddAsync(page, "Tower", "Beacon");

        // One window more and its lamp, by hand.
        await page.Locator(".board .pick[data-key='ropery']").ClickAsync();
        await page.GetByText("Draw its walls and rooms").ClickAsync();
        await page.Locator(".floors .pick[data-key='room:1/0']").PressAsync("Enter");
        await page.GetByRole(AriaRole.Button, new() { Name = "right side" }).ClickAsync();
        await Expect(page.Locator(".walls .pick[data-key='window:1/0/2']")).ToHaveCountAsync(1);
        await page.GetByText("Back to the board").ClickAsync();
        await page.GetByText("Back to the whole town").ClickAsync();

        await page.Locator(".places a", new() { HasText = "Power" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Share them over packs" }).ClickAsync();
        await Expect(page.Locator(".hang li")).ToHaveCountAsync(3);
        await page.Locator(".places a", new() { HasText = "Town" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Take these 3 routes" }).ClickAsync();
        await Expect(page.Locator(".margin .speaks").First).ToContainTextAsync("Nothing spoils the show.");

        // A house that moves leaves its route, and the wire it would take now is seen at once.
        var wire = page.Locator(".board path[class*='i-suggested']");
        await Expect(wire).ToHaveCountAsync(0);
        await page.Locator(".board .pick[data-key='beacon']").PressAsync("ArrowRight");
        await Expect(wire).ToHaveCountAsync(1);
        var before = await wire.GetAttributeAsync("d");
        await page.Locator(".board .pick[data-key='beacon']").PressAsync("ArrowRight");
        await Expect(wire).Not.ToHaveAttributeAsync("d", before!);
        await page.GetByRole(AriaRole.Button, new() { Name = "Take this route" }).ClickAsync();

        await page.Locator(".places a", new() { HasText = "Book" }).ClickAsync();
        await Expect(page.Locator(".labels li")).ToHaveCountAsync(3);
        await page.GetByText("Print the whole book (PDF)").ClickAsync();
        var download = await page.RunAndWaitForDownloadAsync(() => page.GetByText("Take the book").ClickAsync(new() { Timeout = 180_000 }));
        await using var file = await download.CreateReadStreamAsync();
        var head = new byte[5];
        await file.ReadExactlyAsync(head, TestContext.Current.CancellationToken);
        Assert.Equal("%PDF-"u8.ToArray(), head);
    }

    [Fact]
    public async Task Fifty_steps_of_the_keyboard_are_taken_back_one_by_one()
    {
        var page = await EmptyBoardAsync();
        await AddAsync(page, "Shed", "Net shed");
        var house = page.Locator(".board .pick[data-key='net-shed']");
        await house.PressAsync("Enter");
        await page.GetByText("Change it").PressAsync("Enter");
        var left = page.GetByLabel("From the left edge");
        var begun = int.Parse((await left.InputValueAsync()).Split(' ')[0], CultureInfo.InvariantCulture);
        await house.FocusAsync();
        for (var step = 1; step <= 50; step++)
        {
            await page.Keyboard.PressAsync("Shift+ArrowRight");
            await Expect(left).ToHaveValueAsync($"{begun + step} mm");
        }

        var undo = page.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true });
        for (var step = 49; step >= 0; step--)
        {
            await undo.PressAsync("Enter");
            await Expect(left).ToHaveValueAsync($"{begun + step} mm");
        }

        Assert.Empty((await page.RunAxe()).Violations.Select(v => $"{v.Id} {v.Nodes[0].Html}"));
    }

    private async Task<IPage> EmptyBoardAsync()
    {
        var page = await app.OpenAsync("start");
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin with an empty board" }).PressAsync("Enter");
        await Expect(page.Locator(".margin h1")).ToHaveTextAsync("My town");
        return page;
    }

    private static async Task AddAsync(IPage page, string shape, string name)
    {
        await page.GetByText("Add a house, or size the board").PressAsync("Enter");
        await page.GetByLabel("Begin from").SelectOptionAsync(shape);
        await page.GetByLabel("Called").FillAsync(name);
        await page.Keyboard.PressAsync("Tab");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add it" }).PressAsync("Enter");
        await Expect(page.Locator(".margin h1")).ToHaveTextAsync(name);
        await page.GetByText("Back to the whole town").PressAsync("Enter");
        await Expect(page.Locator(".margin h1")).ToHaveTextAsync("My town");
    }
}
