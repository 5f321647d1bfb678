using System.Security.Cryptography;
using System.Text;

namespace Duskwright.Serve;

/// <summary>What keeps pages from elsewhere out of the town, and the town's own words from running as script.</summary>
public static class Guard
{
    /// <summary>The import map of the page, the only script that stands within it.</summary>
    public const string ImportMap = """{ "imports": { "three": "./lib/three/three.module.js", "three/addons/": "./lib/three/addons/" } }""";

    // Styles may stand in attributes: drawings carry their pen there.
    private static readonly string Policy =
        $"default-src 'self'; script-src 'self' 'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(ImportMap)))}'; "
        + "style-src 'self' 'unsafe-inline'; img-src 'self' data: blob:; object-src 'none'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'";

    /// <summary>Refuses requests that a page of another origin makes, and says with every answer what a page of ours may do.</summary>
    /// <param name="app">The app.</param>
    public static void UseGuard(this WebApplication app) => app.Use(async (context, next) =>
    {
        context.Response.Headers.XContentTypeOptions = "nosniff";
        context.Response.Headers["Referrer-Policy"] = "same-origin";
        context.Response.Headers.ContentSecurityPolicy = Policy;
        if (context.Request.Headers.Origin is { Count: > 0 } origin && !Same(origin.ToString(), context.Request))
        {
            context.Response.StatusCode = StatusCodes.Status403Forbidden;
            await context.Response.WriteAsync("This town answers only its own pages.", context.RequestAborted);
            return;
        }

        await next(context);
    });

    private static bool Same(string origin, HttpRequest request) =>
        Uri.TryCreate(origin, UriKind.Absolute, out var from) && from.Scheme == request.Scheme && from.Authority == request.Host.Value;
}
