using System.Globalization;
using System.Text.RegularExpressions;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using SkiaSharp;
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
        await Expect(page.GetByLabel("Behind the pane", new() { Exact = true })).ToHaveValueAsync("22 mm");
        await lamp.PressAsync("Delete");
        await Expect(page.Locator(".margin h1")).ToHaveTextAsync("Chandlery");
        var undo = page.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true });
        foreach (var label in (string[])["a lamp less", "move a lamp", "one lamp more", "one window more", "change a room", "one storey more"])
        {
            await Expect(undo).ToHaveAttributeAsync("title", $"Chandlery: {label}");
            await undo.ClickAsync();
        }
    }

    [Fact]
    public async Task Two_houses_are_chosen_together_and_moved_in_one_step()
    {
        var page = await app.OpenAsync("town");
        var (one, other) = (page.Locator(".board .pick[data-key='chandlery']"), page.Locator(".board .pick[data-key='lookout']"));
        await one.ClickAsync();
        await other.ClickAsync(new() { Modifiers = [KeyboardModifier.Shift] });
        await Expect(page.Locator(".margin h1")).ToHaveTextAsync("2 houses together");
        await Expect(page.Locator(".margin .speaks")).ToContainTextAsync("mm apart");
        var was = (await other.BoundingBoxAsync())!;
        await one.PressAsync("ArrowUp");
        var undo = page.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true });
        await Expect(undo).ToHaveAttributeAsync("title", "Move 2 houses together");
        Assert.True((await other.BoundingBoxAsync())!.Y < was.Y);
        await undo.ClickAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Redo", Exact = true })).ToHaveAttributeAsync("title", "Move 2 houses together");
        await one.PressAsync("Delete");
        await Expect(one.Or(other)).ToHaveCountAsync(0);
        await Expect(undo).ToHaveAttributeAsync("title", "Remove 2 houses together");
        await undo.ClickAsync();
        await Expect(one.Or(other)).ToHaveCountAsync(2);
    }

    [Fact]
    public async Task The_board_comes_nearer_by_wheel_key_and_button_and_a_drag_still_follows_the_hand()
    {
        var page = await app.OpenAsync("town");
        var house = page.Locator(".board .pick[data-key='chandlery']");
        var whole = (await house.BoundingBoxAsync())!;
        await page.GetByRole(AriaRole.Button, new() { Name = "Nearer" }).ClickAsync();
        await house.FocusAsync();
        await page.Keyboard.PressAsync("+");
        await Expect(page.Locator("[data-near='2.25']")).ToHaveCountAsync(1);
        Assert.True((await house.BoundingBoxAsync())!.Width > whole.Width * 2);
        var near = (await house.BoundingBoxAsync())!;
        await DragAsync(page, house, 40, 0);
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true })).ToHaveAttributeAsync("title", "Move Chandlery");
        Assert.InRange((await house.BoundingBoxAsync())!.X - near.X, 30, 50);
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Whole board" }).ClickAsync();
        Assert.Equal(whole.Width, (await house.BoundingBoxAsync())!.Width, 1);
    }

    [Fact]
    public async Task Two_fingers_bring_the_board_nearer_on_a_phone_and_farther_again()
    {
        var page = await app.OpenAsync("town", phone: true);
        var board = (await page.Locator("svg.board").BoundingBoxAsync())!;
        var (x, y) = (180, board.Y + 160);
        var fingers = await page.Context.NewCDPSessionAsync(page);
        async Task TouchAsync(string what, params double[] apart) => await fingers.SendAsync("Input.dispatchTouchEvent", new() { ["type"] = what, ["touchPoints"] = apart.SelectMany((a, _) => new object[] { new { x = x - a, y, id = 1 }, new { x = x + a, y, id = 2 } }).ToArray() });
        await TouchAsync("touchStart", 30);
        await TouchAsync("touchMove", 60);
        await TouchAsync("touchMove", 90);
        await TouchAsync("touchEnd");
        await Expect(page.Locator("[data-near]")).ToHaveAttributeAsync("data-near", new Regex("^[23]"));
        await TouchAsync("touchStart", 90);
        await TouchAsync("touchMove", 20);
        await TouchAsync("touchEnd");
        await Expect(page.Locator("[data-near]")).ToHaveAttributeAsync("data-near", "1.00");
    }

    [Fact]
    public async Task A_frame_drawn_on_the_board_chooses_the_houses_within_it()
    {
        var page = await app.OpenAsync("town");
        var board = (await page.Locator("svg.board").BoundingBoxAsync())!;
        await page.Keyboard.DownAsync("Shift");
        await page.Mouse.MoveAsync(board.X + 6, board.Y + board.Height - 6);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(board.X + board.Width - 6, board.Y + 6, new() { Steps = 4 });
        await page.Mouse.UpAsync();
        await page.Keyboard.UpAsync("Shift");
        await Expect(page.Locator(".margin h1")).ToHaveTextAsync(new Regex("^[0-9]{2} houses together$"));
        await Expect(page.Locator(".margin .speaks").First).ToContainTextAsync("Chandlery");
        await page.GetByRole(AriaRole.Button, new() { Name = "Let them go" }).ClickAsync();
        await Expect(page.Locator(".margin h1")).ToHaveTextAsync("Saltmarrow");
    }

    [Fact]
    public async Task A_house_is_hung_on_another_pack_by_choice_and_by_drag_and_its_light_is_told()
    {
        var page = await app.OpenAsync("power?hour=4");
        var undo = page.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true });
        await page.GetByLabel("Switch of Chandlery").SelectOptionAsync("A");
        await Expect(page.Locator("p[role=status]")).ToContainTextAsync("Chandlery hangs on switch A, pack 1.");
        await Expect(page.Locator("p[role=status]")).ToContainTextAsync("of their fresh light");
        var house = page.Locator(".hang[aria-label='Switch A'] li", new() { HasText = "Chandlery" });
        await Expect(house.Locator(".soft")).ToContainTextAsync("LEDs at");
        await house.DragToAsync(page.Locator(".hang[aria-label='Switch C'] h3"));
        await Expect(page.Locator(".hang[aria-label='Switch C'] li", new() { HasText = "Chandlery" })).ToHaveCountAsync(1);
        foreach (var label in (string[])["Chandlery: hang it on switch C", "Chandlery: hang it on switch A"])
        {
            await Expect(undo).ToHaveAttributeAsync("title", label);
            await undo.ClickAsync();
        }

        await Expect(page.Locator(".hang[aria-label='Switch E'] li", new() { HasText = "Chandlery" })).ToHaveCountAsync(1);
        await AppFixture.ShotAsync(page, "power");
    }

    [Fact]
    public async Task A_wireway_and_a_free_area_are_drawn_on_the_board_moved_and_taken_away_and_a_hole_is_put_down_by_typing()
    {
        var page = await app.OpenAsync("town");
        await page.GetByRole(AriaRole.Button, new() { Name = "Wireway", Exact = true }).ClickAsync();
        await Expect(page.Locator("svg.board.placing")).ToBeVisibleAsync();
        var board = (await page.Locator("svg.board").BoundingBoxAsync())!;
        await page.Mouse.ClickAsync(board.X + (board.Width * .4f), board.Y + (board.Height * .6f));
        await Expect(page.Locator(".drafting [role=status]")).ToContainTextAsync("needed");
        await page.Mouse.ClickAsync(board.X + (board.Width * .5f), board.Y + (board.Height * .7f));
        await Expect(page.Locator(".drafting [role=status]")).ToContainTextAsync("2 points");
        await page.GetByRole(AriaRole.Button, new() { Name = "It is done" }).ClickAsync();
        var undo = page.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true });
        await Expect(undo).ToHaveAttributeAsync("title", "One wireway more");
        var way = page.Locator(".board .pick[data-key='way:w1']");
        await way.PressAsync("Enter");
        await page.Locator(".board .pick[data-key='corner:1:way:w1']").PressAsync("ArrowUp");
        await Expect(undo).ToHaveAttributeAsync("title", "Bend wireway w1");
        await way.PressAsync("Delete");
        await Expect(way).ToHaveCountAsync(0);

        var things = page.Locator(".board .pick[data-key^='thing:']");
        var lying = await things.CountAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Free area", Exact = true }).ClickAsync();
        await Expect(page.Locator("svg.board.placing")).ToBeVisibleAsync();
        foreach (var (x, y, points) in ((float, float, string)[])[(.3f, .3f, "needed"), (.5f, .3f, "2 points"), (.5f, .4f, "3 points")])
        {
            await page.Mouse.ClickAsync(board.X + (board.Width * x), board.Y + (board.Height * y));
            await Expect(page.Locator(".drafting [role=status]")).ToContainTextAsync(points);
        }

        await page.GetByRole(AriaRole.Button, new() { Name = "It is done" }).ClickAsync();
        await Expect(things).ToHaveCountAsync(lying + 1);
        var area = page.Locator($".board .pick[data-key='{await things.EvaluateAllAsync<string>("all => all.map(t => t.dataset.key).sort((a, b) => a.slice(6) - b.slice(6)).at(-1)")}']");
        await DragAsync(page, area, 20, -10);
        await Expect(undo).ToHaveAttributeAsync("title", "Move free area");
        await area.PressAsync("Delete");
        await Expect(things).ToHaveCountAsync(lying);

        await page.GetByRole(AriaRole.Button, new() { Name = "Hole", Exact = true }).ClickAsync();
        await page.GetByLabel("From the left edge").FillAsync("50 cm");
        await page.GetByLabel("From the front edge").FillAsync("200");
        await page.Keyboard.PressAsync("Tab");
        await page.GetByRole(AriaRole.Button, new() { Name = "Put a point there" }).ClickAsync();
        await Expect(page.Locator(".board .pick[data-key='hole:h1']")).ToHaveCountAsync(1);

        foreach (var label in (string[])["One hole more", "A free area less", "Move free area", "One free area more", "A wireway less: w1", "Bend wireway w1", "One wireway more"])
        {
            await Expect(undo).ToHaveAttributeAsync("title", label);
            await undo.ClickAsync();
        }
    }

    [Fact]
    public async Task A_house_is_drawn_round_its_corners_back_to_the_first_and_a_wrong_corner_is_taken_back()
    {
        var page = await app.OpenAsync("town");
        await page.GetByRole(AriaRole.Button, new() { Name = "House", Exact = true }).ClickAsync();
        await Expect(page.Locator("svg.board.placing")).ToBeVisibleAsync();

        // The page may have gone on a little since the last point.
        async Task PointAtAsync(double right, double down)
        {
            var board = (await page.Locator("svg.board").BoundingBoxAsync())!;
            await page.Mouse.ClickAsync((float)(board.X + (board.Width * right)), (float)(board.Y + (board.Height * down)));
        }

        var status = page.Locator(".drafting [role=status]");
        async Task PointAsync(double right, double down, string heard)
        {
            await PointAtAsync(right, down);
            await Expect(status).ToContainTextAsync(heard);
        }

        await PointAsync(.10, .62, "needed");
        await PointAsync(.16, .62, "2 points");
        await PointAsync(.30, .70, "3 points");
        await page.GetByRole(AriaRole.Button, new() { Name = "Take the last point back" }).ClickAsync();
        await Expect(status).ToContainTextAsync("2 points");
        await PointAsync(.16, .70, "3 points");
        await PointAsync(.10, .70, "4 points");
        await PointAtAsync(.10, .62);
        await Expect(page.Locator(".margin h1")).ToHaveTextAsync("House");
        await Expect(page.Locator(".board .pick[data-key^='corner:']")).ToHaveCountAsync(4);

        var house = page.Locator(".board .pick[data-key='house']");
        await page.Keyboard.PressAsync("Control+z");
        await Expect(house).ToHaveCountAsync(0);
        await page.Keyboard.PressAsync("Control+y");
        await Expect(house).ToHaveCountAsync(1);
        await page.Keyboard.PressAsync("Control+z");
        await Expect(house).ToHaveCountAsync(0);

        // By keys alone: a side of 30 and 40 mm.
        await page.GetByRole(AriaRole.Button, new() { Name = "Measure" }).PressAsync("Enter");
        var left = page.GetByLabel("From the left edge");
        await left.PressAsync("Enter");
        await Expect(page.Locator(".drafting [role=alert]")).ToContainTextAsync("needs both lengths");
        await left.PressSequentiallyAsync("10 cm");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.TypeAsync("100");
        await page.Keyboard.PressAsync("Enter");
        await Expect(left).ToHaveValueAsync("");
        await Expect(left).ToBeFocusedAsync();
        await page.Keyboard.TypeAsync("130");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.TypeAsync("140");
        await page.Keyboard.PressAsync("Enter");
        await Expect(status).ToContainTextAsync("50 mm along");
    }

    [Fact]
    public async Task A_photograph_lies_under_the_board_is_scaled_by_two_typed_points_and_hidden()
    {
        List<string> errors = [];
        var page = await app.OpenAsync("town", onError: errors.Add);
        await page.GetByText("A photograph under the board").PressAsync("Enter");
        var choose = page.GetByLabel("Choose a picture");
        await choose.SetInputFilesAsync(new FilePayload { Name = "board.png", MimeType = "image/png", Buffer = "<svg/>"u8.ToArray() });
        await Expect(page.Locator(".margin [role=alert]")).ToContainTextAsync("neither a PNG nor a JPEG");
        await choose.SetInputFilesAsync(new FilePayload { Name = "board.png", MimeType = "image/png", Buffer = Picture() });
        var photograph = page.Locator("svg.board image");
        await Expect(photograph).ToHaveCountAsync(1);
        await page.WaitForFunctionAsync("async () => (await fetch(document.querySelector('svg.board image').getAttribute('href'))).headers.get('content-type') === 'image/png'");
        var wide = double.Parse((await photograph.GetAttributeAsync("width"))!, CultureInfo.InvariantCulture);

        await page.GetByRole(AriaRole.Button, new() { Name = "Set its scale by two points" }).PressAsync("Enter");
        foreach (var left in (string[])["100", "50 cm"])
        {
            // Once a point is put its fields are emptied for the next.
            await Expect(page.GetByLabel("From the left edge", new() { Exact = true })).ToHaveValueAsync("");
            await page.GetByLabel("From the left edge", new() { Exact = true }).FillAsync(left);
            await page.GetByLabel("From the front edge", new() { Exact = true }).FillAsync("200");
            await page.Keyboard.PressAsync("Tab");
            await page.GetByRole(AriaRole.Button, new() { Name = "Put a point there" }).ClickAsync();
        }

        await page.GetByLabel("Apart on the board").FillAsync("200");
        await page.Keyboard.PressAsync("Tab");
        await page.GetByRole(AriaRole.Button, new() { Name = "That is its scale" }).ClickAsync();
        await Expect(photograph).ToHaveAttributeAsync("width", (wide / 2).ToString("0.##", CultureInfo.InvariantCulture));
        Assert.Empty((await page.RunAxe()).Violations.Select(v => $"{v.Id} {v.Nodes[0].Html}"));
        await AppFixture.ShotAsync(page, "photograph");
        await page.GetByRole(AriaRole.Button, new() { Name = "Hide it" }).PressAsync("Enter");
        await Expect(photograph).ToHaveCountAsync(0);
        var undo = page.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true });
        foreach (var label in (string[])["Hide it", "Scale the photograph: 200 mm between two points", "Lay a photograph under the board"])
        {
            await Expect(undo).ToHaveAttributeAsync("title", label);
            await undo.ClickAsync();
        }

        Assert.Empty(errors);
    }

    [Theory]
    [InlineData(false, false)]
    [InlineData(true, true)]
    public async Task The_ground_uncovered_and_a_house_on_the_drawing_board_are_open_to_everybody(bool dark, bool phone)
    {
        var page = await app.OpenAsync("town", dark, phone);
        var screen = $"{(phone ? "phone" : "desktop")}-{(dark ? "dark" : "light")}";
        await page.GetByRole(AriaRole.Button, new() { Name = "Holes, wireways and the bank" }).ClickAsync();
        await page.Locator(".board .pick[data-key='bank']").PressAsync("Enter");
        await Expect(page.GetByLabel("Pocket, width")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Measure" }).ClickAsync();
        await IsOpenAsync(page, $"ground-{screen}");
        await page.GetByRole(AriaRole.Button, new() { Name = "Leave it" }).ClickAsync();
        await page.Locator(".board .pick[data-key='chandlery']").PressAsync("Enter");
        await page.GetByText("Draw its walls and rooms").ClickAsync();
        await page.Locator(".walls .pick[data-key^='window:']").First.PressAsync("Enter");
        await Expect(page.GetByLabel("Sill above the floor")).ToBeVisibleAsync();
        await page.GetByText("Its lamps as a list").ClickAsync();
        await Expect(page.GetByLabel("Above the floor, L1")).ToHaveValueAsync("16 mm");
        await IsOpenAsync(page, $"house-{screen}");
    }

    private static async Task IsOpenAsync(IPage page, string shot)
    {
        Assert.Empty((await page.RunAxe()).Violations.Select(v => $"{shot}: {v.Id} {v.Nodes[0].Html}"));
        Assert.Equal(0, await page.EvaluateAsync<int>("Math.max(0, document.documentElement.scrollWidth - innerWidth)"));
        await AppFixture.ShotAsync(page, shot);
    }

    [Fact]
    public async Task A_house_gets_corners_of_its_own_and_one_is_dragged_nudged_added_and_taken_away()
    {
        var page = await app.OpenAsync("town?at=chandlery");
        var corners = page.Locator(".board .pick[data-key^='corner:']");
        await Expect(corners).ToHaveCountAsync(0);
        await page.GetByText("Change it").PressAsync("Enter");
        await page.GetByLabel("Its ground is").SelectOptionAsync("own");
        await Expect(corners).ToHaveCountAsync(4);
        var undo = page.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true });
        var first = page.Locator(".board .pick[data-key='corner:0:chandlery']");
        await DragAsync(page, first, -8, 6);
        await Expect(undo).ToHaveAttributeAsync("title", "Chandlery: move a corner");
        await page.GetByRole(AriaRole.Button, new() { Name = "One corner more" }).ClickAsync();
        await Expect(corners).ToHaveCountAsync(5);
        await first.PressAsync("ArrowLeft");
        await Expect(undo).ToHaveAttributeAsync("title", "Chandlery: move a corner");
        await page.Locator(".board .pick[data-key='corner:4:chandlery']").PressAsync("Delete");
        await Expect(corners).ToHaveCountAsync(4);
        await AppFixture.ShotAsync(page, "corners");
        foreach (var label in (string[])["a corner less", "move a corner", "one corner more", "move a corner", "give it corners of its own"])
        {
            await Expect(undo).ToHaveAttributeAsync("title", $"Chandlery: {label}");
            await undo.ClickAsync();
        }
    }

    private static byte[] Picture()
    {
        using var bitmap = new SKBitmap(600, 400);
        bitmap.Erase(SKColors.SaddleBrown);
        using var data = bitmap.Encode(SKEncodedImageFormat.Png, 90);
        return data.ToArray();
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
