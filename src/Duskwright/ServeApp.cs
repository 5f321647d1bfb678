namespace Duskwright;

/// <summary>The local web app.</summary>
public static class ServeApp
{
    /// <summary>Builds the app, bound to this machine alone.</summary>
    /// <param name="args">Arguments of the host.</param>
    /// <param name="townPath">The town to open; the demo town where none is named.</param>
    /// <param name="port">The port; a free one where none is named.</param>
    /// <returns>The app, not started.</returns>
    public static WebApplication Build(string[] args, string? townPath, int? port)
    {
        var builder = WebApplication.CreateBuilder(args);
        builder.WebHost.UseUrls($"http://127.0.0.1:{port ?? 0}");
        var app = builder.Build();
        app.MapGet("/", () => townPath ?? "demo");
        return app;
    }
}
