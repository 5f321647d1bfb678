using Duskwright.Towns;

namespace Duskwright.Serve;

/// <summary>Where the page of a house's steps sends what its maker does otherwise.</summary>
public static class BenchSteps
{
    /// <summary>Maps the address.</summary>
    /// <param name="routes">Where it is mapped.</param>
    public static void MapBenchSteps(this IEndpointRouteBuilder routes) =>
        routes.MapPost("/bench/steps", async (HttpRequest request, OpenTown open) =>
        {
            var form = await request.ReadFormAsync(request.HttpContext.RequestAborted);
            var fields = form.Where(f => f.Value.Count > 0).ToDictionary(f => f.Key, f => f.Value[0] ?? "", StringComparer.Ordinal);
            var (edit, why) = BenchWay.Read(fields, open.Town);
            if (edit is not null && open.Apply(edit) is [var problem, ..])
            {
                why = $"{problem.Message} {problem.Remedy}";
            }

            return why is null
                ? Results.LocalRedirect($"/bench/house/{Uri.EscapeDataString(fields["building"])}/steps")
                : Results.Text($"{why} Go back and say it anew.", statusCode: StatusCodes.Status422UnprocessableEntity);
        });
}
