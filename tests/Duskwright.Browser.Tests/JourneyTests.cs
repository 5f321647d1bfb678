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
    public async Task Fifty_steps_of_the_keyboard_in_a_whole_town_are_taken_back_one_by_one()
    {
        const int Steps = 50;
        var page = await app.OpenAsync("start");
        await page.GetByRole(AriaRole.Button, new() { Name = "Open Saltmarrow" }).PressAsync("Enter");
        await Expect(page.Locator(".margin h1")).ToHaveTextAsync("Saltmarrow");
        var house = page.Locator(".board .pick[data-key='lookout']");
        await house.PressAsync("Enter");
        await page.Locator("summary", new() { HasText = "Change it" }).PressAsync("Enter");
        var left = page.GetByLabel("From the left edge");
        var begun = int.Parse((await left.InputValueAsync()).Split(' ')[0], CultureInfo.InvariantCulture);
        await house.FocusAsync();
        for (var step = 0; step < Steps; step++)
        {
            await page.Keyboard.PressAsync("Shift+ArrowRight");
        }

        await Expect(left).ToHaveValueAsync($"{begun + Steps} mm");
        var undo = page.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true });
        await undo.PressAsync("Enter");
        await Expect(left).ToHaveValueAsync($"{begun + Steps - 1} mm");
        for (var step = 1; step < Steps; step++)
        {
            await undo.PressAsync("Enter");
        }

        await Expect(left).ToHaveValueAsync($"{begun} mm");
        await Expect(undo).ToHaveCountAsync(0);
        Assert.Empty((await page.RunAxe()).Violations.Select(v => $"{v.Id} {v.Nodes[0].Html}"));
    }

    [Fact]
    public async Task An_inherited_town_half_of_it_glued_gets_ranges_and_is_told_what_to_measure_first()
    {
        var page = await app.OpenAsync("start");
        await page.GetByLabel("Your houses, one a line").FillAsync("house,LEDs,distance,colour,resistor,state\nMinster,4,don't know,don't know,don't know,fixed\nMill,2,40 cm,warm white,820,fitted");
        await page.GetByRole(AriaRole.Button, new() { Name = "Make it my town" }).ClickAsync();
        var notes = page.Locator(".margin .note");
        await Expect(notes.Filter(new() { HasText = "Of all that nobody knows, Minster matters most" })).ToContainTextAsync("Read its current at the bank");
        await Expect(notes.Filter(new() { HasText = "How far Minster is from the bank is not known" })).ToContainTextAsync("thread");
        await Expect(notes.Filter(new() { HasText = "Not all of Minster is known" }).Locator(".chip")).ToHaveCountAsync(2);
        await Expect(notes.Filter(new() { HasText = "Not all of Mill is known" })).ToHaveCountAsync(0);

        // What was taken for known is not after all.
        await page.GotoAsync($"{app.Address}/town?at=mill");
        await page.Locator(".app[data-live=yes]").WaitForAsync();
        await page.Locator("summary", new() { HasText = "Change it" }).ClickAsync();
        await page.GetByLabel("Wire of its pair").SelectOptionAsync("don't know");
        await Expect(notes.Filter(new() { HasText = "Not all of Mill is known" }).Locator(".chip")).ToHaveCountAsync(2);
        await page.GetByLabel("Resistor at each LED").FillAsync("don't know");
        await page.Keyboard.PressAsync("Tab");
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true })).ToHaveAttributeAsync("title", "Mill: resistor don't know");
    }

    [Fact]
    public async Task A_moment_is_named_compared_with_today_in_words_and_gone_back_to()
    {
        var page = await EmptyBoardAsync();
        await page.GotoAsync($"{app.Address}/file");
        await page.Locator(".app[data-live=yes]").WaitForAsync();
        await page.GetByLabel("Name this moment").FillAsync("before the mill");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep its name" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Go back to it: before the mill" })).ToBeVisibleAsync();
        await page.GotoAsync($"{app.Address}/town");
        await page.Locator(".app[data-live=yes]").WaitForAsync();
        await AddAsync(page, "Cottage", "Mill");
        await page.GotoAsync($"{app.Address}/file");
        await page.Locator(".app[data-live=yes]").WaitForAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "What changed since before the mill" }).ClickAsync();
        await Expect(page.Locator(".changes li").First).ToHaveTextAsync("Mill is new, with 1 LED.");
        await Expect(page.Locator(".changes").Last).ToContainTextAsync("In all: wire to cut");
        Assert.Empty((await page.RunAxe()).Violations.Select(v => $"{v.Id} {v.Nodes[0].Html}"));
        await page.GetByRole(AriaRole.Button, new() { Name = "Go back to it: before the mill" }).ClickAsync();
        await Expect(page.Locator("p[role=status]")).ToContainTextAsync("The town is as it was at before the mill.");
    }

    [Fact]
    public async Task By_keys_alone_a_new_maker_types_houses_and_comes_to_the_printed_labels()
    {
        var page = await app.OpenAsync("start");
        await TabToAsync(page, "Your houses, one a line");
        await page.Keyboard.PressAsync("Control+a");
        await page.Keyboard.InsertTextAsync("Eel house, 4, 47 cm\nLookout, 1, don't know");
        await Expect(page.Locator(".labels li")).ToHaveCountAsync(2);
        await TabToAsync(page, "Print labels and cut list");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator(".book h1")).ToBeVisibleAsync();
        await Expect(page.Locator(".labels li")).ToHaveCountAsync(2);
        await TabToAsync(page, "Print the whole book (PDF)");
        await page.Keyboard.PressAsync("Enter");
        await page.GetByText("Take the book").WaitForAsync(new() { Timeout = 60_000 });
    }

    private static async Task TabToAsync(IPage page, string name)
    {
        const int Most = 80;
        for (var i = 0; i < Most; i++)
        {
            await page.Keyboard.PressAsync("Tab");
            if (await page.EvaluateAsync<string>("() => document.activeElement.ariaLabel ?? document.activeElement.innerText ?? ''") == name)
            {
                return;
            }
        }

        Assert.Fail($"No Tab leads to “{name}”.");
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
