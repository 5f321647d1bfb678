using System.Globalization;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Duskwright.Browser.Tests;

/// <summary>What a maker with other eyes or hands can rely on at every place: keys alone, a finger, a screen reader, a narrow or enlarged page.</summary>
public sealed class ReachTests(AppFixture app) : IClassFixture<AppFixture>
{
    private static readonly string[] Places = ["questions/resistor", "town?at=chandlery", "house?at=chandlery", "power", "night", "bench", "book", "start", "file", "wires"];

    // Source: W3C, Web Content Accessibility Guidelines 2.2; 1.4.10 (320 CSS px), 2.4.11 (focus not hidden), 2.5.8 (24 by 24 CSS px; a link in a sentence, or what can be hit elsewhere too, is let off).
    // What is drawn can be hit in the lists beside the drawings too.
    private const string Barred = """
        () => {
          const found = [], shown = e => e.checkVisibility() && e.getBoundingClientRect().width > 0;
          if (document.documentElement.scrollWidth > innerWidth) found.push(`${document.documentElement.scrollWidth - innerWidth} px too wide`);
          if (document.getAnimations().length > 0) found.push('something moves by itself');
          for (const e of [...document.querySelectorAll('a[href], button, input:not([type=hidden]), select, textarea, summary')].filter(shown)) {
            const name = `${e.tagName} ${(e.getAttribute('aria-label') ?? e.textContent).trim().slice(0, 40)}`;
            const after = getComputedStyle(e, '::after'), reach = after.position === 'absolute' ? [after.left, after.top].map(n => -2 * (parseFloat(n) || 0)) : [0, 0];
            const boxes = [e, e.closest('label') ?? e].map(b => b.getBoundingClientRect()), [wide, high] = [Math.max(...boxes.map(b => b.width)) + reach[0], Math.max(...boxes.map(b => b.height)) + reach[1]], inSentence = e.tagName === 'A' && getComputedStyle(e).display === 'inline' && e.parentElement.textContent.trim() !== e.textContent.trim();
            if (!inSentence && !e.classList.contains('skip') && (wide < 24 || high < 24)) found.push(`${name}: ${wide.toFixed(0)} × ${high.toFixed(0)}`);
            if (!e.closest('.dials, .places, .firstsaid')) {
              e.focus();
              const now = e.getBoundingClientRect(), over = document.elementFromPoint(now.x + now.width / 2, Math.min(now.y + now.height / 2, now.y + 40))?.closest('.dials, .places, .firstsaid');
              if (document.activeElement === e && over) found.push(`${name}: focused beneath ${over.className}`);
            }
          }
          return found;
        }
        """;

    // Source: W3C, Web Content Accessibility Guidelines 2.2; 1.4.12: line height 1.5, 2 em after paragraphs, 0.12 em between letters, 0.16 em between words.
    private const string Spaced = "* { line-height: 1.5 !important; letter-spacing: .12em !important; word-spacing: .16em !important; } p { margin-bottom: 2em !important; }";

    private const string CutOff = """
        () => [...document.querySelectorAll('button, a, p, h1, h2, h3, summary, label, th')]
          .filter(e => e.checkVisibility() && !e.closest('.unseen, svg') && ['hidden', 'clip'].includes(getComputedStyle(e).overflowX) && e.scrollWidth > e.clientWidth + 1).map(e => `spaced out, cut off: ${e.textContent.trim().slice(0, 40)}`)
          .concat(document.documentElement.scrollWidth > innerWidth ? ['spaced out, too wide'] : [])
        """;

    [Fact]
    public async Task Every_place_fits_its_width_even_spaced_out_and_nothing_to_hit_is_too_small_or_hidden_when_it_is_focused()
    {
        var found = new List<string>();
        var page = await app.OpenAsync("questions");
        foreach (var place in Places)
        {
            await page.GotoAsync($"{app.Address}/{place}");
            await page.Locator(".app[data-live=yes]").WaitForAsync();
            await page.EvaluateAsync("document.querySelectorAll('details').forEach((d, i) => d.open = i < 6)");

            // A phone, a page read at twice its size, and a desk.
            foreach (var (width, height) in ((int, int)[])[(320, 640), (700, 450), (1400, 900)])
            {
                await page.SetViewportSizeAsync(width, height);
                found.AddRange((await page.EvaluateAsync<string[]>(Barred)).Select(f => string.Create(CultureInfo.InvariantCulture, $"{place} at {width}: {f}")));
            }

            await page.AddStyleTagAsync(new() { Content = Spaced });
            found.AddRange((await page.EvaluateAsync<string[]>(CutOff)).Select(f => $"{place}: {f}"));
        }

        Assert.Empty(found);
    }

    [Fact]
    public async Task By_keys_alone_a_house_is_moved_and_spoken_of_shaped_and_a_wrong_length_is_tied_to_its_field()
    {
        var page = await app.OpenAsync("town");
        var told = page.Locator("#told");
        var house = page.Locator(".board .pick[data-key='weighhouse']");
        await house.PressAsync("Enter");
        await Expect(page.Locator("#margin")).ToHaveAttributeAsync("aria-label", "Weighhouse");
        await page.Keyboard.PressAsync("ArrowLeft");
        await Expect(told).ToContainTextAsync("Move Weighhouse. It stands");
        await page.Keyboard.PressAsync("Control+z");
        await Expect(told).ToContainTextAsync("Taken back: Move Weighhouse.");
        await page.Keyboard.PressAsync("Escape");
        await Expect(page.Locator("#margin")).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("Escape");
        await Expect(house).ToBeFocusedAsync();

        await page.GetByRole(AriaRole.Link, new() { Name = "Draw its walls and rooms" }).PressAsync("Enter");
        await page.GetByLabel("Begin from").SelectOptionAsync("Cottage");
        await page.GetByRole(AriaRole.Button, new() { Name = "Take this shape" }).PressAsync("Enter");
        await Expect(told).ToContainTextAsync("Weighhouse: begin from the shape cottage.");
        await Expect(page.Locator("#margin:focus, #margin :focus")).ToHaveCountAsync(1);
        var window = page.Locator(".walls .pick[data-key='window:0/0/0']");
        await window.PressAsync("Enter");
        await window.PressAsync("ArrowUp");
        await Expect(told).ToContainTextAsync("Weighhouse: move a window.");

        var sill = page.GetByLabel("Sill above the floor");
        await sill.FillAsync("high");
        await sill.PressAsync("Tab");
        await Expect(sill).ToHaveAttributeAsync("aria-invalid", "true");
        var reason = await sill.GetAttributeAsync("aria-describedby");
        await Expect(page.Locator($"#{reason}")).ToContainTextAsync("“high” will not do");

        var undo = page.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true });
        foreach (var label in (string[])["Weighhouse: move a window", "Weighhouse: begin from the shape cottage"])
        {
            await Expect(undo).ToHaveAttributeAsync("title", label);
            await undo.ClickAsync();
        }
    }

    [Fact]
    public async Task A_finger_moves_only_what_it_has_chosen_and_is_led_to_what_is_said_of_it()
    {
        var page = await app.OpenAsync("house?at=chandlery", phone: true);
        var fingers = await page.Context.NewCDPSessionAsync(page);
        var lamp = page.Locator(".walls .pick[data-key='lamp:0/0/0']");
        var name = await lamp.GetAttributeAsync("aria-label");
        await lamp.ScrollIntoViewIfNeededAsync();
        await DragAsync();
        await lamp.TapAsync();
        await Expect(page.Locator(".firstsaid")).ToContainTextAsync("Lamp L1");
        await Expect(lamp).ToHaveAttributeAsync("aria-label", name!);
        await DragAsync();
        var undo = page.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true });
        await Expect(undo).ToHaveAttributeAsync("title", "Chandlery: move a lamp");
        await Expect(lamp).Not.ToHaveAttributeAsync("aria-label", name!);
        await undo.ClickAsync();
        await Expect(lamp).ToHaveAttributeAsync("aria-label", name!);

        async Task DragAsync()
        {
            var box = (await lamp.BoundingBoxAsync())!;
            var (x, y) = (box.X + (box.Width / 2), box.Y + (box.Height / 2));
            await TouchAsync("touchStart", x, y);
            for (var i = 1; i <= 5; i++)
            {
                await TouchAsync("touchMove", x, y - (6 * i));
            }

            await fingers.SendAsync("Input.dispatchTouchEvent", new() { ["type"] = "touchEnd", ["touchPoints"] = Array.Empty<object>() });
        }

        Task TouchAsync(string what, double x, double y) => fingers.SendAsync("Input.dispatchTouchEvent", new() { ["type"] = what, ["touchPoints"] = new object[] { new { x, y } } });
    }
}
