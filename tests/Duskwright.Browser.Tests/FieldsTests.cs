using System.Text.RegularExpressions;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Duskwright.Browser.Tests;

/// <summary>Journeys of a maker who would rather type than draw: packs, tables, and what is usual in the town.</summary>
public sealed class FieldsTests(AppFixture app) : IClassFixture<AppFixture>
{
    [Fact]
    public async Task A_pack_a_switch_and_a_scene_are_set_out_by_hand_and_a_lamp_is_measured()
    {
        var page = await app.OpenAsync("power");
        await page.Locator("summary", new() { HasText = "Set out packs, switches and scenes by hand" }).ClickAsync();
        var undo = page.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true });
        foreach (var thing in (string[])["One pack more", "One switch more", "One scene more"])
        {
            await page.GetByRole(AriaRole.Button, new() { Name = thing }).ClickAsync();
            await Expect(undo).ToHaveAttributeAsync("title", new Regex($"^{thing}"));
        }

        await page.GetByRole(AriaRole.Button, new() { Name = "Take it away: switch A" }).ClickAsync();
        await Expect(page.Locator(".wide-edit [role=alert]").First).ToContainTextAsync("on switch A. Hang them on another switch first.");
        await page.Locator("summary", new() { HasText = "A lamp of your own, measured" }).ClickAsync();
        await page.Locator(".wide-edit", new() { HasText = "Keep it among the lamps" }).GetByLabel("Called").FillAsync("drawer 3");
        await page.GetByLabel("Reading 1, mA").FillAsync("1,9");
        await page.GetByLabel("Reading 1, V").FillAsync("2.79 V");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep it among the lamps" }).ClickAsync();
        await Expect(page.Locator(".wide-edit [role=status]")).ToContainTextAsync("drawer 3 is kept: 2.7");
        Assert.Empty((await page.RunAxe()).Violations.Select(v => $"{v.Id} {v.Nodes[0].Html}"));
        foreach (var label in (string[])["A lamp of your own: drawer 3", "One scene more", "One switch more", "One pack more"])
        {
            await Expect(undo).ToHaveAttributeAsync("title", new Regex($"^{label}"));
            await undo.ClickAsync();
        }
    }

    [Fact]
    public async Task Forty_rows_pasted_into_a_cell_are_one_step_and_a_bad_row_stays_with_its_sentence()
    {
        var page = await app.OpenAsync("town");
        await page.GetByText("The same as a list, to type in").ClickAsync();
        var rows = page.Locator(".sheetlike tbody tr");
        await Expect(rows.First).ToBeVisibleAsync();
        var before = await rows.CountAsync();
        var text = "House\tLEDs\tDistance cm\n" + string.Join('\n', Enumerable.Range(1, 40).Select(i => $"Cot {i}\t{1 + (i % 3)}\t{20 + i}")) + "\nBarn\tmany\t20";
        await page.GetByLabel("Name of Chandlery").EvaluateAsync("(cell, text) => { const t = new DataTransfer(); t.setData('text/plain', text); cell.dispatchEvent(new ClipboardEvent('paste', { clipboardData: t, bubbles: true, cancelable: true })); }", text);
        await Expect(rows).ToHaveCountAsync(before + 40);
        await Expect(page.Locator(".aslist [role=alert]")).ToContainTextAsync("Row 42, “Barn”: ");
        await Expect(page.GetByLabel("Rows to take in")).ToBeFocusedAsync();
        await Expect(page.GetByLabel("Rows to take in")).ToHaveValueAsync("House\tLEDs\tDistance cm\nBarn\tmany\t20");

        var leds = page.GetByLabel("LEDs of Cot 1", new() { Exact = true });
        await leds.FillAsync("4");
        await leds.PressAsync("Enter");
        await Expect(page.GetByLabel("LEDs of Cot 2", new() { Exact = true })).ToBeFocusedAsync();
        Assert.Empty((await page.RunAxe()).Violations.Select(v => $"{v.Id} {v.Nodes[0].Html}"));
        await AppFixture.ShotAsync(page, "table");
        var undo = page.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true });
        foreach (var label in (string[])["Cot 1: 4 LEDs", "Take in 40 rows"])
        {
            await Expect(undo).ToHaveAttributeAsync("title", label);
            await undo.ClickAsync();
        }

        await Expect(rows).ToHaveCountAsync(before);
    }

    [Fact]
    public async Task The_towns_name_its_show_and_what_is_usual_are_said_and_undo_shows_in_the_fields()
    {
        var page = await app.OpenAsync("town");
        await page.GetByText("Its name, its show and what is usual in it").PressAsync("Enter");
        var undo = page.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true });
        async Task SayAsync(string label, string text, string edit)
        {
            await page.GetByLabel(label, new() { Exact = true }).FillAsync(text);
            await page.Keyboard.PressAsync("Tab");
            await Expect(undo).ToHaveAttributeAsync("title", edit);
        }

        await SayAsync("Name of the town", "Saltmarrow by night", "Call the town Saltmarrow by night");
        await Expect(page.Locator(".margin h1")).ToHaveTextAsync("Saltmarrow by night");
        await SayAsync("Show a day, h", "6,5 h", "Hours of show a day: 6.5");
        await Expect(page.Locator(".margin .speaks").First).ToContainTextAsync("for a show of 6.5 h");
        await page.GetByLabel("Days on one set of cells").FillAsync("0");
        await page.Keyboard.PressAsync("Tab");
        await Expect(page.Locator(".margin [role=alert]")).ToContainTextAsync("a whole number from 1 to 366 is allowed. It is still");
        Assert.Empty((await page.RunAxe()).Violations.Select(v => $"{v.Id} {v.Nodes[0].Html}"));
        await undo.ClickAsync();
        await Expect(page.GetByLabel("Show a day, h")).ToHaveValueAsync("8");
        await undo.ClickAsync();
        await Expect(page.Locator(".margin h1")).ToHaveTextAsync("Saltmarrow");
    }
}
