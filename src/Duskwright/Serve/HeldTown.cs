using System.Net;
using Duskwright.Plan;
using Duskwright.Plan.Checks;
using Duskwright.Store.Opening;
using Duskwright.Towns;

namespace Duskwright.Serve;

/// <summary>A town that another process has open to change it: until the maker has chosen, one page tells who has it and what can be done.</summary>
/// <param name="path">The town's file, as it was asked for.</param>
/// <param name="file">The working file that is held.</param>
public sealed class HeldTown(string path, string file)
{
    private bool _held = true;

    /// <summary>Whether opening failed for no other reason than that another has the file.</summary>
    /// <param name="path">The town's file, as it was asked for.</param>
    /// <param name="problems">Why it could not be opened.</param>
    /// <returns>The town; none where there is another reason.</returns>
    public static HeldTown? Of(string? path, ItemList<Problem> problems) =>
        path is not null && problems is [{ Rule: "open-elsewhere", Place: var file }] ? new HeldTown(path, file) : null;

    /// <summary>Answers in place of every page until the maker has chosen.</summary>
    /// <param name="context">What is asked.</param>
    /// <param name="open">The town that is shown once they have.</param>
    /// <param name="next">What answers then.</param>
    /// <returns>When it is answered.</returns>
    internal async Task AnswerAsync(HttpContext context, OpenTown open, RequestDelegate next)
    {
        if (!_held)
        {
            await next(context);
            return;
        }

        var problems = HttpMethods.IsPost(context.Request.Method) ? Choose(context.Request.Path, open) : null;
        if (problems is { Count: 0 })
        {
            _held = false;
            context.Response.StatusCode = StatusCodes.Status303SeeOther;
            context.Response.Headers.Location = "/town";
            return;
        }

        context.Response.StatusCode = StatusCodes.Status409Conflict;
        context.Response.ContentType = "text/html; charset=utf-8";
        await context.Response.WriteAsync(Page(problems is [{ Rule: not "open-elsewhere" } other] ? $"{other.Message} {other.Remedy}" : problems is null ? "" : "It is still open there."), context.RequestAborted);
    }

    private ItemList<Problem>? Choose(PathString chosen, OpenTown open) => chosen.Value switch
    {
        "/held/again" => open.TurnTo(path),
        "/held/copy" => open.TurnToCopyOf(file),
        "/held/leave" => open.TurnTo(ExampleTown.All[0]),
        _ => null,
    };

    private string Page(string said)
    {
        var holder = Holder.Of(file);
        var name = Path.GetFileName(file);
        var who = holder is null ? "Who has it is not known." : $"It is process {holder.Process} on {holder.Machine}, at work on it since {holder.Since.LocalDateTime:yyyy-MM-dd HH:mm}.";
        return PlainPage.Of(
            $"{name} is open in another Duskwright",
            $"""
            <p>{WebUtility.HtmlEncode(who)} One at a time may change a town, or strokes would be lost. Nothing has been changed.</p>
            {(holder?.Link is { } link ? $"<p><b><a href=\"{WebUtility.HtmlEncode(link.ToString())}\">Go on there</a></b>: several tabs may show the same town and stay in step.</p>" : "<p>Go on where it is open, or close it there and try again.</p>")}
            <form method="post" action="/held/again"><button>It is closed there: try again</button></form>
            <form method="post" action="/held/copy"><button class="second">Look at it as it stands</button><span class="soft">What you change then goes into a file of its own.</span></form>
            <form method="post" action="/held/leave"><button class="second">Leave it, and look at the demo town</button></form>
            <p role="status">{WebUtility.HtmlEncode(said)}</p>
            """);
    }
}
