using System.Globalization;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Duskwright.Browser.Tests;

/// <summary>The bench on a phone; no meter is at hand.</summary>
[Collection("one town")]
public sealed class BenchTests(AppFixture app)
{
    [Fact]
    public async Task A_house_is_taken_from_first_solder_to_sealed_with_one_failing_test_on_the_way()
    {
        var page = await app.OpenHandheldAsync("bench/house/menders");
        await AppFixture.TickUntilAsync(page, "Test and tag");
        await Expect(page.Locator(".gate")).ToContainTextAsync("one test more");
        await page.GetByRole(AriaRole.Button, new() { Name = "Both light" }).ClickAsync();
        await Expect(page.Locator("form.tick button.big")).ToBeVisibleAsync();
        await AppFixture.TickUntilAsync(page, "Test, look in the dark");
        await Expect(page.Locator(".test h2").First).ToContainTextAsync("lamps in, roof off");
        await page.GetByText("Not all").ClickAsync();
        await page.Locator("fieldset.lamp").Nth(1).GetByRole(AriaRole.Radio, new() { Name = "dark" }).CheckAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "This is what I see" }).ClickAsync();
        await Expect(page.Locator(".stop")).ToContainTextAsync("Stop here. L2 is dark.");
        await Expect(page.Locator(".stop li").First).ToContainTextAsync("a joint of lamp L2 in Mender's is open");
        var axe = await page.RunAxe();
        Assert.Empty(axe.Violations);

        await page.GetByRole(AriaRole.Button, new() { Name = "Both light" }).ClickAsync();
        await Expect(page.Locator(".gate")).ToContainTextAsync("2 tests more");
        await page.GetByRole(AriaRole.Button, new() { Name = "Nothing lights" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Only the windows glow" }).ClickAsync();
        await Expect(page.Locator("form.tick button.big")).ToBeVisibleAsync();
        await AppFixture.TickUntilAsync(page, "Join the pair at the bank");
        await page.GetByRole(AriaRole.Button, new() { Name = "Both light" }).ClickAsync();
        await Expect(page.Locator("form.tick button.big")).ToBeVisibleAsync();
        await AppFixture.TickUntilAsync(page, "Test once more, glue it in");
        await page.GetByRole(AriaRole.Button, new() { Name = "Both light" }).ClickAsync();
        await page.Locator("form.tick button.big").ClickAsync();
        await Expect(page.Locator("h1")).ToContainTextAsync("Let it dry until");
        await page.GetByText("All 16 steps").ClickAsync();
        await Expect(page.Locator(".all li.done", new() { HasText = "glue it in" })).ToHaveCountAsync(1);
    }

    [Fact]
    public async Task A_seal_that_was_not_tested_is_made_with_its_reason_or_not_at_all()
    {
        var page = await app.OpenHandheldAsync("bench/house/gull-cottage");
        await page.EvaluateAsync("fetch('/bench/entries', { method: 'POST', body: new URLSearchParams({ key: 'forced', what: 'tick', building: 'gull-cottage', step: 'close' }) }).then(a => document.title = String(a.status))");
        await Expect(page).ToHaveTitleAsync("422");
        await AppFixture.TickUntilAsync(page, "Test, look in the dark");
        await page.GetByText("Go on all the same").First.ClickAsync();
        await page.GetByLabel("Why? It is kept in the log.").First.FillAsync("the roof is only held by tape");
        await page.GetByRole(AriaRole.Button, new() { Name = "Seal it untested" }).First.ClickAsync();
        await page.GetByText("Write a note").ClickAsync();
        await Expect(page.Locator(".plain li", new() { HasText = "although untested, because: the roof is only held by tape" })).ToHaveCountAsync(1);
    }

    [Fact]
    public async Task An_entry_made_while_the_connection_is_away_is_kept_and_sent_once_when_it_is_back()
    {
        var page = await app.OpenHandheldAsync("bench/house/tally-shed");
        await page.GetByText("Write a note").ClickAsync();
        await page.Context.SetOfflineAsync(true);
        await page.GetByLabel("Note").FillAsync("the pair is 40 cm long");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep the note" }).ClickAsync();
        await Expect(page.Locator("#outbox")).ToContainTextAsync("One entry is kept on this phone");
        await page.Context.SetOfflineAsync(false);
        var note = page.Locator(".plain li", new() { HasText = "the pair is 40 cm long" });
        await Expect(note).ToHaveCountAsync(1);
        await Expect(page.Locator("#outbox")).ToBeHiddenAsync();

        // The answer to the first sending was lost: the phone sends it again.
        await page.EvaluateAsync("localStorage.setItem('duskwright-outbox', JSON.stringify([1, 2].map(() => ({ key: 'again', what: 'note', building: 'tally-shed', note: 'sent twice', at: '2026-03-01T19:00:00' }))))");
        await page.ReloadAsync();
        await Expect(page.Locator(".plain li", new() { HasText = "sent twice" })).ToHaveCountAsync(1);
    }

    [Fact]
    public async Task An_entry_made_while_the_desk_has_shut_its_door_is_kept_until_the_phone_is_in_again()
    {
        var page = await app.OpenHandheldAsync("bench/house/tally-shed");

        // A door that knows the phone no more answers as the one in the house does.
        await page.RouteAsync("**/bench/entries", r => r.FulfillAsync(new() { Status = 403 }));
        await page.GetByText("Write a note").ClickAsync();
        await page.GetByLabel("Note").FillAsync("said at a shut door");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep the note" }).ClickAsync();
        await Expect(page.Locator("#outbox")).ToContainTextAsync("type a code from the desk");
        await Expect(page.Locator("#refused")).ToBeHiddenAsync();
        await page.UnrouteAllAsync();
        await Expect(page.Locator(".plain li", new() { HasText = "said at a shut door" })).ToHaveCountAsync(1);
        await page.CloseAsync();
    }

    [Fact]
    public async Task A_photograph_taken_at_a_step_while_the_connection_is_away_is_kept_made_smaller_and_shown_in_the_log()
    {
        var page = await app.OpenHandheldAsync("bench/house/rope-store");
        var large = Convert.FromBase64String(await page.EvaluateAsync<string>("(() => { const c = document.createElement('canvas'); c.width = 2400; c.height = 1800; c.getContext('2d').fillRect(40, 40, 900, 900); return c.toDataURL('image/png').split(',')[1]; })()"));
        await page.Context.SetOfflineAsync(true);
        await page.Locator("input[type=file]").SetInputFilesAsync(new FilePayload { Name = "shot.png", MimeType = "image/png", Buffer = large });
        await Expect(page.Locator("#outbox")).ToContainTextAsync("One entry is kept on this phone");
        await page.Context.SetOfflineAsync(false);
        await Expect(page.Locator("#outbox")).ToBeHiddenAsync();
        await page.GetByText("Write a note").ClickAsync();
        var photograph = page.Locator(".log img");
        await Expect(photograph).ToHaveCountAsync(1);
        await photograph.ScrollIntoViewIfNeededAsync();
        await Expect(photograph).ToHaveJSPropertyAsync("naturalWidth", 1600);
    }

    [Fact]
    public async Task A_step_of_the_makers_own_is_added_on_the_phone_and_comes_when_its_time_has_come()
    {
        var page = await app.OpenHandheldAsync("bench/house/ferry-cottage/steps");
        await page.GetByText("Add a step").ClickAsync();
        var add = page.Locator("form", new() { HasText = "Add it" });
        await add.GetByLabel("What is done").FillAsync("sand the walls");
        await add.GetByLabel("It waits for").SelectOptionAsync("cut");
        await add.GetByLabel("What waits for it").SelectOptionAsync("black");
        var axe = await page.RunAxe();
        Assert.Empty(axe.Violations);
        Assert.Equal(0, await page.EvaluateAsync<int>("document.documentElement.scrollWidth - innerWidth"));
        await page.GetByRole(AriaRole.Button, new() { Name = "Add it" }).ClickAsync();
        await Expect(page.Locator(".own li", new() { HasText = "sand the walls" })).ToContainTextAsync("your own");
        await page.GotoAsync($"{app.Address}/bench/house/ferry-cottage");
        await AppFixture.TickUntilAsync(page, "Sand the walls");
    }

    [Fact]
    public async Task Without_its_script_the_page_ticks_a_step_all_the_same()
    {
        using var client = new HttpClient();
        using var answer = await client.PostAsync(
            new Uri($"{app.Address}/bench/entries"),
            new FormUrlEncodedContent(new Dictionary<string, string> { ["what"] = "tick", ["building"] = "pump-house", ["step"] = "plan" }),
            TestContext.Current.CancellationToken);
        Assert.Contains("Cut and join the walls", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task The_house_in_the_hand_is_open_to_everybody_with_targets_for_a_thumb(bool dark)
    {
        var page = await app.OpenHandheldAsync("bench/house/harbour-office", dark);
        await AppFixture.TickUntilAsync(page, "Test, look in the dark");
        await page.GetByText("Not all").ClickAsync();
        var axe = await page.RunAxe();
        Assert.Empty(axe.Violations);
        Assert.Equal(0, await page.EvaluateAsync<int>("document.documentElement.scrollWidth - innerWidth"));
        foreach (var target in await page.Locator(".hand button:visible, .hand .face:visible, .hand summary:visible").AllAsync())
        {
            var box = (await target.BoundingBoxAsync())!;
            var words = await target.InnerTextAsync();
            Assert.True(box.Height >= 63.5, string.Create(CultureInfo.InvariantCulture, $"{words} is {box.Height} px high."));
        }

        await AppFixture.ShotAsync(page, $"house-in-hand-{(dark ? "dark" : "light")}");
    }
}
