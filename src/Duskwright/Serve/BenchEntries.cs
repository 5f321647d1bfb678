using Duskwright.Towns;

namespace Duskwright.Serve;

/// <summary>Where the bench sends what was done, seen and read.</summary>
public static class BenchEntries
{
    private const int LongestKey = 64;

    /// <summary>Maps the address.</summary>
    /// <param name="routes">Where it is mapped.</param>
    /// <remarks>A form sent by the page's script carries <c>key</c>, its own mark, and may come several times: it is entered once.</remarks>
    public static void MapBenchEntries(this IEndpointRouteBuilder routes) =>
        routes.MapPost("/bench/entries", async (HttpRequest request, OpenTown open, TimeProvider clock) =>
        {
            var form = await request.ReadFormAsync(request.HttpContext.RequestAborted);
            var fields = form.Where(f => f.Value.Count > 0).ToDictionary(f => f.Key, f => f.Value[0] ?? "", StringComparer.Ordinal);
            var why = Enter(fields, open, clock);
            return fields.ContainsKey("key")
                ? why is null ? Results.Ok() : Results.Text(why, statusCode: StatusCodes.Status422UnprocessableEntity)
                : why is null ? Results.LocalRedirect(fields.TryGetValue("building", out var house) && open.Study.Work(house) is not null ? $"/bench/house/{Uri.EscapeDataString(house)}" : "/bench") : Results.Text($"{why} Go back and say it anew.", statusCode: StatusCodes.Status422UnprocessableEntity);
        });

    private static string? Enter(Dictionary<string, string> fields, OpenTown open, TimeProvider clock)
    {
        var key = fields.GetValueOrDefault("key") is { Length: > 0 and <= LongestKey } sent ? sent : Guid.NewGuid().ToString("N");
        return open.Enter(key, study => BenchForm.Read(fields, study, clock.GetLocalNow().DateTime)) is [var problem, ..] ? $"{problem.Message} {problem.Remedy}".Trim() : null;
    }
}
