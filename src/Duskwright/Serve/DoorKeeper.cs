using System.Net;

namespace Duskwright.Serve;

/// <summary>Stands before every page that a phone asks for: who has not brought the code gets the question for it and nothing else.</summary>
internal static class DoorKeeper
{
    // Plain, because nothing of the program is handed out before the code is right.
    private static string Page(string said) => PlainPage.Of(
        "The town is at the desk",
        $"""
        <p role="status">{WebUtility.HtmlEncode(said)}</p>
        <form method="get" action="/in"><label>The eight figures beside the code at the desk<input name="code" inputmode="numeric" autocomplete="off" required autofocus></label><button>Come in</button></form>
        """);

    internal static void UseDoorKeeper(this WebApplication app, PhoneDoor door) => app.Use(async (context, next) =>
    {
        // A browser keeps one cookie of a name for all ports of a machine (RFC 6265, section 8.5), and each open town has a door at a port of its own.
        var cookie = $"duskwright-device-{context.Connection.LocalPort}";
        if (door.Knows(context.Request.Cookies[cookie]))
        {
            await next(context);
            return;
        }

        var asked = context.Request.Path == "/in" && HttpMethods.IsGet(context.Request.Method) ? context.Request.Query["code"].ToString() : "";
        if (asked.Length > 0 && door.Admit(asked.Replace(" ", "", StringComparison.Ordinal)) is { } token)
        {
            // Lax, so that a device that is in stays in when its camera opens the address on a printed label: what changes the town is posted, never just opened.
            context.Response.Cookies.Append(cookie, token, new CookieOptions { HttpOnly = true, SameSite = SameSiteMode.Lax, Path = "/" });

            // A page of ours sends the device on, so that its address no longer has the code in it.
            context.Response.ContentType = "text/html; charset=utf-8";
            await context.Response.WriteAsync(PlainPage.Of("You are in", """<p><a href="/bench">Go on to the bench</a></p>""", """<meta http-equiv="refresh" content="0;url=/bench">"""), context.RequestAborted);
            return;
        }

        context.Response.StatusCode = StatusCodes.Status403Forbidden;
        context.Response.ContentType = "text/html; charset=utf-8";
        await context.Response.WriteAsync(Page(asked.Length == 0 ? "Scan the code at the desk, or type its figures." : door.Code is null ? "That code is used or void. Ask for another at the desk." : "That is not the code."), context.RequestAborted);
    });
}
