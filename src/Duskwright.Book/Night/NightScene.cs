using System.Numerics;
using Duskwright.Plan;
using Duskwright.Study;

namespace Duskwright.Book.Night;

/// <summary>The town in space, as the night is painted from it on the screen and as a still: surfaces with what they throw back, panes, and where their light falls.</summary>
/// <remarks>Metres; x to the right, y up, z towards somebody before the front edge, from the middle of the board.</remarks>
/// <param name="Name">The town.</param>
/// <param name="Width">Of the board, m.</param>
/// <param name="Depth">Of the board, m.</param>
/// <param name="Faces">Every surface.</param>
/// <param name="Panes">Every pane with a lamp behind it.</param>
/// <param name="Glows">Surfaces on which a pane's light falls.</param>
/// <param name="Eyes">Where one may stand.</param>
/// <param name="Guessed">Keys of buildings whose windows are not described: they have usual ones.</param>
public sealed record NightScene(
    string Name, float Width, float Depth, ItemList<NightFace> Faces, ItemList<NightPane> Panes, ItemList<NightGlow> Glows, ItemList<NightEye> Eyes, ItemList<string> Guessed)
{
    /// <summary>The study whose panes the scene has: the town's own, with usual windows where none is described; all else is the same.</summary>
    public required TownStudy Study { get; init; }

    /// <summary>Builds the scene of a town with a board.</summary>
    /// <param name="study">The town's results.</param>
    /// <returns>The scene; none where the town has no board.</returns>
    public static NightScene? Of(TownStudy study)
    {
        if (study.Town.Board is not { } board)
        {
            return null;
        }

        var lit = study.After(NightTown.Of(study.Town));
        var ground = new NightGround(board);
        var houses = lit.Buildings.Where(b => b.Building.Place is not null).Select(b => new NightHouse(b, ground)).ToList();
        var panes = houses.SelectMany(h => h.Panes).ToItemList();
        var walls = houses.SelectMany(h => h.Faces).ToList();
        return new NightScene(
            study.Town.Name,
            ground.Width,
            ground.Depth,
            ground.Faces().Concat(walls).ToItemList(),
            panes,
            NightGlow.Of(panes, walls, ground).ToItemList(),
            NightEye.Of(study.Town, ground).ToItemList(),
            study.Buildings.Where(b => b.Building.Place is not null && !NightTown.Described(b.Building)).Select(b => b.Building.Key).ToItemList())
        { Study = lit };
    }
}

/// <summary>What a surface is, for what it throws back.</summary>
public enum NightStuff
{
    /// <summary>Plaster or stone.</summary>
    Wall,

    /// <summary>Slate.</summary>
    Slate,

    /// <summary>Thatch or shingle.</summary>
    Thatch,

    /// <summary>Tile.</summary>
    Tile,

    /// <summary>Ground of the board.</summary>
    Ground,

    /// <summary>Water.</summary>
    Water,

    /// <summary>Cliffs, quays and steps.</summary>
    Stone,

    /// <summary>Planks, posts, hulls.</summary>
    Wood,

    /// <summary>Trees and beds.</summary>
    Leaf,
}

/// <summary>A flat surface.</summary>
/// <param name="Corners">Its outline, three or more, in order.</param>
/// <param name="Normal">The side it shows, of length 1.</param>
/// <param name="Stuff">What it is.</param>
/// <param name="Building">The building it belongs to; none for the ground.</param>
public sealed record NightFace(ItemList<Vector3> Corners, Vector3 Normal, NightStuff Stuff, string? Building = null)
{
    /// <summary>What it throws back in red, green and blue (linear sRGB), 0 to 1. A choice of the drawing, about what such surfaces have.</summary>
    public Vector3 Albedo => Stuff switch
    {
        NightStuff.Wall => new(.62f, .56f, .47f),
        NightStuff.Slate => new(.13f, .14f, .17f),
        NightStuff.Thatch => new(.34f, .27f, .17f),
        NightStuff.Tile => new(.32f, .16f, .11f),
        NightStuff.Water => new(.02f, .03f, .05f),
        NightStuff.Stone => new(.30f, .29f, .27f),
        NightStuff.Wood => new(.22f, .17f, .12f),
        NightStuff.Leaf => new(.08f, .12f, .07f),
        _ => new(.28f, .27f, .23f),
    };

    internal static NightFace Of(NightStuff stuff, string? building, params Vector3[] corners) =>
        new(corners.ToItemList(), Vector3.Normalize(Vector3.Cross(corners[1] - corners[0], corners[2] - corners[0])), stuff, building);
}

/// <summary>A pane.</summary>
/// <param name="Building">Key of its building.</param>
/// <param name="Storey">Its storey, from 0.</param>
/// <param name="Room">Its room, from 0.</param>
/// <param name="Window">Its window, from 0.</param>
/// <param name="Corners">Seen from outside: lower left, lower right, upper right, upper left.</param>
/// <param name="Normal">Outwards.</param>
/// <param name="Colour">Linear sRGB of luminance 1.</param>
/// <param name="Flickers">Whether a lamp behind it flickers.</param>
/// <param name="Bars">Whether it has glazing bars.</param>
/// <param name="Map">Four by four parts' luminance over the mean, row by row from the lower left seen from outside.</param>
public sealed record NightPane(
    string Building, int Storey, int Room, int Window, ItemList<Vector3> Corners, Vector3 Normal, Vector3 Colour, bool Flickers, bool Bars, ItemList<float> Map)
{
    /// <summary>Rows and columns of <see cref="Map"/>.</summary>
    public const int MapSide = 4;

    /// <summary>Its middle.</summary>
    public Vector3 Middle => (Corners[0] + Corners[1] + Corners[2] + Corners[3]) / 4;

    /// <summary>Its area, m².</summary>
    public float Area => (Corners[1] - Corners[0]).Length() * (Corners[3] - Corners[0]).Length();
}
