using System.Security.Cryptography;
using Duskwright.Towns;

namespace Duskwright.Serve;

/// <summary>Where the bench sends what was done, seen and read.</summary>
public static class BenchEntries
{
    private const int LongestKey = 64;

    // The page makes photographs smaller first; without its script a phone sends what its camera gives.
    private const int MostPhotographBytes = 16 * 1024 * 1024;

    /// <summary>Maps the address.</summary>
    /// <param name="routes">Where it is mapped.</param>
    /// <remarks>A form sent by the page's script carries <c>key</c>, its own mark, and may come several times: it is entered once.</remarks>
    public static void MapBenchEntries(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/bench/pictures/{id}", (string id, OpenTown open, HttpResponse response) =>
        {
            if (open.Picture(id) is not { } picture)
            {
                return Results.NotFound();
            }

            // Its name is its content: it never changes.
            response.Headers.CacheControl = "private, max-age=31536000, immutable";
            return Results.File(picture.Bytes, picture.MediaType);
        });
        routes.MapPost("/bench/entries", async (HttpRequest request, OpenTown open, TimeProvider clock) =>
        {
            var form = await request.ReadFormAsync(request.HttpContext.RequestAborted);
            var fields = form.Where(f => f.Value.Count > 0).ToDictionary(f => f.Key, f => f.Value[0] ?? "", StringComparer.Ordinal);
            fields.Remove("photograph");
            var photo = form.Files["photo"] is { Length: > 0 } file ? file : null;
            var why = photo?.Length > MostPhotographBytes
                ? $"The photograph has {photo.Length / 1048576} MB; at most {MostPhotographBytes / 1048576} MB is kept. Make it smaller first."
                : Enter(fields, photo is null ? null : await BytesAsync(photo, request.HttpContext.RequestAborted), open, clock);
            return fields.ContainsKey("key")
                ? why is null ? Results.Ok() : Results.Text(why, statusCode: StatusCodes.Status422UnprocessableEntity)
                : why is null ? Results.LocalRedirect(fields.TryGetValue("building", out var house) && open.Study.Work(house) is not null ? $"/bench/house/{Uri.EscapeDataString(house)}" : "/bench") : Results.Text($"{why} Go back and say it anew.", statusCode: StatusCodes.Status422UnprocessableEntity);
        });
    }

    private static async Task<byte[]> BytesAsync(IFormFile file, CancellationToken cancel)
    {
        using var bytes = new MemoryStream();
        await file.CopyToAsync(bytes, cancel);
        return bytes.ToArray();
    }

    private static string? Enter(Dictionary<string, string> fields, byte[]? photograph, OpenTown open, TimeProvider clock)
    {
        if (photograph is not null)
        {
            fields["photograph"] = Convert.ToHexStringLower(SHA256.HashData(photograph));
        }

        var key = fields.GetValueOrDefault("key") is { Length: > 0 and <= LongestKey } sent ? sent : Guid.NewGuid().ToString("N");
        return open.Enter(key, study => BenchForm.Read(fields, study, clock.GetLocalNow().DateTime), photograph) is [var problem, ..] ? $"{problem.Message} {problem.Remedy}".Trim() : null;
    }
}
