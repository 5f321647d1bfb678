using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Duskwright.Browser.Tests;

/// <summary>The maker's hands are not disturbed by what the program draws anew: neither where they type, nor what they type, nor where the keys go.</summary>
public sealed class SteadyTests(AppFixture app) : IClassFixture<AppFixture>
{
    // Below a pixel: the page scrolls in whole ones.
    private const double MostMoved = 0.9;

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task The_field_that_is_typed_in_stays_where_it_is_when_findings_come_and_go(bool phone)
    {
        var page = await app.OpenAsync("town?at=chandlery", phone: phone);
        await Expect(page.Locator(".margin .asof")).ToHaveCountAsync(0);
        var notes = page.Locator(".margin .note");
        var few = await notes.CountAsync();
        await page.GetByText("Change it").PressAsync("Enter");
        await page.GetByLabel("Resistor at each LED").FillAsync("none");
        await page.Keyboard.PressAsync("Tab");
        await WatchAsync(page);
        await Expect(notes).ToHaveCountAsync(few + 1);
        Assert.InRange(await MovedAsync(page), 0, MostMoved);

        await page.GetByLabel("Name", new() { Exact = true }).FocusAsync();
        await WatchAsync(page);
        await UndoElsewhereAsync();
        await Expect(notes).ToHaveCountAsync(few);
        Assert.InRange(await MovedAsync(page), 0, MostMoved);
    }

    [Fact]
    public async Task What_is_half_typed_is_not_lost_to_edits_from_another_tab_or_a_phone()
    {
        var page = await app.OpenAsync("town?at=lookout");
        var other = await app.OpenAsync("town?at=lookout");
        var phone = await app.OpenAsync("town?at=lookout", phone: true);
        foreach (var one in (IPage[])[page, other, phone])
        {
            await one.GetByText("Change it").PressAsync("Enter");
        }

        var half = page.GetByLabel("Resistor at each LED");
        var was = await half.InputValueAsync();
        await half.FillAsync("4k");
        await SayAsync(other, "Resistor at each LED", "330");
        await SayAsync(phone, "Name", "Storm lookout");
        await Expect(page.Locator(".margin h1")).ToHaveTextAsync("Storm lookout");
        await Expect(phone.GetByLabel("Resistor at each LED")).ToHaveValueAsync("330");
        await Expect(half).ToHaveValueAsync("4k");
        await Expect(half).ToBeFocusedAsync();
        await half.PressSequentiallyAsync("7");
        await page.Keyboard.PressAsync("Tab");
        await Expect(other.GetByLabel("Resistor at each LED")).ToHaveValueAsync("4700");
        await Expect(half).ToHaveValueAsync("4700");

        // Who changes nothing after all sees what came meanwhile.
        var name = other.GetByLabel("Name", new() { Exact = true });
        await name.PressAsync("End");
        await name.PressSequentiallyAsync("x");
        await SayAsync(phone, "Name", "Lookout");
        await Expect(other.Locator(".margin h1")).ToHaveTextAsync("Lookout");
        await name.PressAsync("Backspace");
        await Expect(name).ToHaveValueAsync("Storm lookout");
        await other.Keyboard.PressAsync("Tab");
        await Expect(name).ToHaveValueAsync("Lookout");

        var undo = page.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true });
        foreach (var label in (string[])["call it Lookout", "resistor 4k7", "call it Storm lookout", "resistor 330"])
        {
            await Expect(undo).ToHaveAttributeAsync("title", new Regex($": {label}$"));
            await undo.ClickAsync();
        }

        await Expect(half).ToHaveValueAsync(was);
    }

    [Fact]
    public async Task The_keys_go_on_from_what_was_drawn_copied_or_removed_and_never_from_the_page_as_a_whole()
    {
        var page = await app.OpenAsync("town");
        await page.GetByText("Add a house, or size the board").PressAsync("Enter");
        await page.GetByLabel("Called").FillAsync("Beacon");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Enter");
        await GoesOnAsync(page, "Beacon");
        await page.GetByText("Change it").PressAsync("Enter");
        await page.GetByRole(AriaRole.Button, new() { Name = "One more like it" }).PressAsync("Enter");
        await GoesOnAsync(page, "Beacon 2");
        await page.GetByText("Change it").PressAsync("Enter");
        await page.GetByRole(AriaRole.Button, new() { Name = "Remove it" }).PressAsync("Enter");
        await GoesOnAsync(page, "Saltmarrow");

        // Drawn by typed corners it goes on by arrow keys.
        await page.GetByRole(AriaRole.Button, new() { Name = "House", Exact = true }).PressAsync("Enter");
        await Expect(page.Locator(".drafting")).ToBeFocusedAsync();
        await page.GetByLabel("From the left edge").FocusAsync();
        foreach (var (left, front) in ((string, string)[])[("100", "20"), ("160", "20"), ("160", "60")])
        {
            await page.Keyboard.TypeAsync(left);
            await page.Keyboard.PressAsync("Tab");
            await page.Keyboard.TypeAsync(front);
            await page.Keyboard.PressAsync("Enter");
            await Expect(page.GetByLabel("From the left edge")).ToHaveValueAsync("");
            await Expect(page.GetByLabel("From the left edge")).ToBeFocusedAsync();
        }

        await page.GetByRole(AriaRole.Button, new() { Name = "It is done" }).PressAsync("Enter");
        await Expect(Thing(page, "house")).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("ArrowRight");
        var undo = page.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true });
        await Expect(undo).ToHaveAttributeAsync("title", "Move House");
        await page.Keyboard.PressAsync("Delete");
        await Expect(Thing(page, "house")).ToHaveCountAsync(0);
        await Expect(page.Locator(".board .pick:focus")).ToHaveCountAsync(1);

        await page.GetByRole(AriaRole.Button, new() { Name = "Measure" }).PressAsync("Enter");
        await page.GetByRole(AriaRole.Button, new() { Name = "Leave it" }).PressAsync("Enter");
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Measure" })).ToBeFocusedAsync();

        // The last step back takes the button itself away.
        while (await undo.GetAttributeAsync("title") is { } label)
        {
            await undo.PressAsync("Enter");
            if (label == "Add Beacon")
            {
                break;
            }

            await Expect(undo).Not.ToHaveAttributeAsync("title", label);
        }

        await Expect(undo).ToHaveCountAsync(0);
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Redo", Exact = true })).ToBeFocusedAsync();
    }

    // What is spoken of has the focus, in the margin or on the board.
    private static async Task GoesOnAsync(IPage page, string about)
    {
        await Expect(page.Locator(".margin h1")).ToHaveTextAsync(about);
        await Expect(page.Locator(".margin:focus, .margin :focus, .board .pick.picked:focus")).ToHaveCountAsync(1);
    }

    private static ILocator Thing(IPage page, string key) => page.Locator($".board .pick[data-key='{key}']");

    private static async Task SayAsync(IPage page, string label, string text)
    {
        await page.GetByLabel(label, new() { Exact = true }).FillAsync(text);
        await page.Keyboard.PressAsync("Tab");
    }

    private async Task UndoElsewhereAsync()
    {
        var other = await app.OpenAsync("questions");
        await other.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true }).ClickAsync();
        await other.CloseAsync();
    }

    // Seen before every picture the screen shows.
    private static async Task WatchAsync(IPage page) => await page.EvaluateAsync("() => { const field = document.activeElement; window.tops = []; const look = () => { if (document.activeElement === field) tops.push(field.getBoundingClientRect().top); requestAnimationFrame(look); }; look(); }");

    private static Task<double> MovedAsync(IPage page) => page.EvaluateAsync<double>("() => Math.max(...tops) - Math.min(...tops)");
}
