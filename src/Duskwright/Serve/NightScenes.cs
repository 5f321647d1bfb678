using System.Numerics;
using Duskwright.Book.Night;
using Duskwright.Towns;

namespace Duskwright.Serve;

/// <summary>The night scene and its light as the page's script reads them.</summary>
public static class NightScenes
{
    /// <summary>Maps the addresses.</summary>
    /// <param name="routes">Where they are mapped.</param>
    public static void MapNightScenes(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/night/scene.json", async (NightToday night) => await night.SceneAsync() is { } scene ? Results.Json(Written(scene)) : Results.NotFound());
        routes.MapGet("/night/light.json", async (string? off, NightToday night) => await night.SceneAsync() is { } scene
            ? Results.Json(NightLight.Of(scene, (off ?? "").Split(',', StringSplitOptions.RemoveEmptyEntries).ToHashSet(StringComparer.Ordinal)))
            : Results.NotFound());
    }

    private static object Written(NightScene scene) => new
    {
        Faces = scene.Faces.Select(f => new { Corners = Flat(f.Corners), Normal = Flat([f.Normal]), Albedo = Flat([f.Albedo]), f.Building, Inked = f.Stuff is not (NightStuff.Leaf or NightStuff.Water) }),
        Panes = scene.Panes.Select(p => new { p.Building, Corners = Flat(p.Corners), Normal = Flat([p.Normal]), Middle = Flat([p.Middle]), p.Area, Colour = Flat([p.Colour]), p.Flickers, p.Bars, p.Map }),
        Glows = scene.Glows.Select(g => new { g.Pane, Corners = Flat(g.Corners), Normal = Flat([g.Normal]), Albedo = Flat([g.Albedo]), g.Reach }),
        Eyes = scene.Eyes.Select(e => new { e.Name, At = Flat([e.At]), To = Flat([e.To]) }),
    };

    // A hundredth of a millimetre is enough for the eye.
    private static IEnumerable<float> Flat(IEnumerable<Vector3> points) => points.SelectMany(p => new[] { MathF.Round(p.X, 5), MathF.Round(p.Y, 5), MathF.Round(p.Z, 5) });
}
