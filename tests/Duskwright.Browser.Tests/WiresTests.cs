using System.Text.RegularExpressions;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Duskwright.Browser.Tests;

[Collection("one town")]
public sealed class WiresTests(AppFixture app)
{
    [Fact]
    public async Task A_house_that_comes_later_is_tied_in_where_it_is_cheapest_and_taken_back()
    {
        var page = await app.OpenAsync("wires", phone: true);
        await Expect(page.Locator("#ways .decide section").First).ToBeVisibleAsync(new() { Timeout = 60_000 });
        var grow = page.Locator("#grow");
        await grow.GetByLabel("Its name").FillAsync("Toll gate");
        await grow.GetByLabel("Beside").SelectOptionAsync("chandlery");
        await grow.GetByRole(AriaRole.Button, new() { Name = "Find its place" }).ClickAsync();
        await Expect(grow.GetByText("Cheapest:")).ToContainTextAsync(new Regex("[0-9.]+ m of wire and [24] joints"), new() { Timeout = 60_000 });
        Assert.Empty((await page.RunAxe()).Violations.SelectMany(v => v.Nodes, (v, n) => $"{v.Id}: {n.Html[..Math.Min(160, n.Html.Length)]}"));
        await grow.Locator(".decide .do").ClickAsync();
        await Expect(grow.GetByRole(AriaRole.Status).First).ToContainTextAsync("Toll gate is in the town");
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true }).ClickAsync();
        await Expect(page.Locator("option[value='toll-gate']")).ToHaveCountAsync(0);
        await page.CloseAsync();
    }
}
