using System.Net;

namespace Duskwright.Serve;

/// <summary>Stands before every page that a phone asks for: who has not brought the code gets the question for it and nothing else.</summary>
internal static class DoorKeeper
{
    private const string Entrance = "/in";

    // Plain, because nothing of the program is handed out before the code is right.
    private static string Page(string said, string place) => PlainPage.Of(
        "The town is at the desk",
        $"""
        <p role="status">{WebUtility.HtmlEncode(said)}</p>
        <form method="get" action="{Entrance}"><input type="hidden" name="to" value="{WebUtility.HtmlEncode(place)}"><label>The eight figures beside the code at the desk<input name="code" inputmode="numeric" autocomplete="off" required autofocus></label><button>Come in</button></form>
        """);

    private static string Said(string asked, PhoneDoor door) => (asked, door) switch
    {
        ("", _) => "Scan the code at the desk, or type its figures.",
        (_, { IsGuessedAt: true }) => $"{PhoneDoor.MostGuesses} wrong codes were typed, so the code at the desk is worth nothing any more. At the desk, press “A code for another device” and type the new one here.",
        (_, { Code: null }) => "The last code has let a device in and is used up. At the desk, press “A code for another device” and type the new one here.",
        _ => "That is not the code. Look at the desk and type it once more.",
    };

    // Who came by the code on a printed label wants that house; who came by the code at the desk begins at the bench. No address but one of this town is gone on to.
    private static string Place(HttpRequest request)
    {
        var wished = request.Path == Entrance ? request.Query["to"].ToString() : request.Path.ToUriComponent();
        return wished.StartsWith("/bench/house/", StringComparison.Ordinal) && Uri.IsWellFormedUriString(wished, UriKind.Relative) ? wished : "/bench";
    }

    internal static void UseDoorKeeper(this WebApplication app, PhoneDoor door) => app.Use(async (context, next) =>
    {
        var place = Place(context.Request);

        // A browser keeps one cookie of a name for all ports of a machine (RFC 6265, section 8.5), and each open town has a door at a port of its own.
        var cookie = $"duskwright-device-{context.Connection.LocalPort}";
        if (door.Knows(context.Request.Cookies[cookie]))
        {
            // Who is in already and reads the next code with its camera is led on and leaves that code to another device.
            if (context.Request.Path == Entrance)
            {
                context.Response.Redirect(place);
                return;
            }

            await next(context);
            return;
        }

        var asked = context.Request.Path == Entrance && HttpMethods.IsGet(context.Request.Method) ? context.Request.Query["code"].ToString() : "";
        if (asked.Length > 0 && door.Admit(asked.Replace(" ", "", StringComparison.Ordinal)) is { } token)
        {
            // Lax, so that a device that is in stays in when its camera opens the address on a printed label: what changes the town is posted, never just opened.
            context.Response.Cookies.Append(cookie, token, new CookieOptions { HttpOnly = true, SameSite = SameSiteMode.Lax, Path = "/" });

            // A page of ours sends the device on, so that its address no longer has the code in it.
            context.Response.ContentType = "text/html; charset=utf-8";
            await context.Response.WriteAsync(PlainPage.Of("You are in", $"""<p><a href="{WebUtility.HtmlEncode(place)}">Go on</a></p>""", $"""<meta http-equiv="refresh" content="0;url={WebUtility.HtmlEncode(place)}">"""), context.RequestAborted);
            return;
        }

        context.Response.StatusCode = StatusCodes.Status403Forbidden;
        context.Response.ContentType = "text/html; charset=utf-8";
        await context.Response.WriteAsync(Page(Said(asked, door), place), context.RequestAborted);
    });
}
