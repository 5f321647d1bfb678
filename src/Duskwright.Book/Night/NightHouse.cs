using System.Globalization;
using System.Numerics;
using Duskwright.Book.Houses;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Study.Results;

namespace Duskwright.Book.Night;

/// <summary>A building in space: walls, roof, and the panes with a lamp behind them. Street lamps and boats carry a lantern.</summary>
internal sealed class NightHouse
{
    private const float Eave = 4;
    private const float Lantern = (float)NightTown.Lantern;
    private const float PostHeight = 52;
    private const float MastHeight = 20;
    private const float ProudOfWall = 0.3f;
    private const int RoundSides = 16;

    private readonly BuildingResult _result;
    private readonly HousePlan _plan;
    private readonly Vector3 _foot;
    private readonly float _sin;
    private readonly float _cos;
    private readonly float _w;
    private readonly float _d;
    private readonly float _base;

    internal NightHouse(BuildingResult result, NightGround ground)
    {
        (_result, _plan) = (result, new HousePlan(result));
        var place = result.Building.Place!;
        _foot = ground.At(place.At, ground.HeightOf(place.Level));
        (_sin, _cos) = ((float)Math.Sin(place.Rotation.Radians), (float)Math.Cos(place.Rotation.Radians));
        (_w, _d) = IsLantern ? (Lantern, Lantern) : ((float)_plan.Width, (float)_plan.Depth);
        _base = result.Building.Kind switch { BuildingKind.StreetLamp => PostHeight, BuildingKind.Boat => MastHeight, _ => 0 };
        Faces = [.. (IsLantern ? OnPost() : Body())];
        Panes = [.. Lit()];
        Level = place.Level;
    }

    internal string? Level { get; }

    internal IReadOnlyList<NightFace> Faces { get; }

    internal IReadOnlyList<NightPane> Panes { get; }

    private Building Building => _result.Building;

    private float Top => _base + (float)_plan.WallHeight;

    private bool Round => Building.Place!.Round;

    private bool IsLantern => Building.Kind is BuildingKind.StreetLamp or BuildingKind.Boat;

    private NightStuff Covering => (Building.Roof?.Covering ?? RoofCovering.Slate) switch { RoofCovering.Thatch => NightStuff.Thatch, RoofCovering.Tile => NightStuff.Tile, _ => NightStuff.Slate };

    // From millimetres about the house's middle, its front towards lesser y, to metres of the scene.
    private Vector3 At(float x, float y, float z) => _foot + (new Vector3((_cos * x) - (_sin * y), z, -((_sin * x) + (_cos * y))) / 1000);

    private NightFace Face(NightStuff stuff, params Vector3[] corners) => NightFace.Of(stuff, Building.Key, corners);

    private IEnumerable<NightFace> Body()
    {
        if (Round)
        {
            return Tower();
        }

        var (w, d) = (_w / 2, _d / 2);
        return Walls(w, d, 0, Top, NightStuff.Wall).Concat(Roof(w, d));
    }

    private IEnumerable<NightFace> Walls(float w, float d, float from, float to, NightStuff stuff)
    {
        (float X, float Y)[] corners = [(-w, -d), (w, -d), (w, d), (-w, d)];
        for (var i = 0; i < 4; i++)
        {
            var ((ax, ay), (bx, by)) = (corners[i], corners[(i + 1) % 4]);
            yield return Face(stuff, At(ax, ay, from), At(bx, by, from), At(bx, by, to), At(ax, ay, to));
        }
    }

    private IEnumerable<NightFace> Roof(float w, float d)
    {
        var rise = (float)_plan.Rise;
        var (x, y, eaves, ridge) = (w + Eave, d + Eave, Top - (Eave * rise / d * 0.5f), Top + rise);
        switch (Building.Roof?.Shape ?? RoofShape.Gable)
        {
            case RoofShape.Flat:
                yield return Face(Covering, At(-w, -d, Top), At(w, -d, Top), At(w, d, Top), At(-w, d, Top));
                break;
            case RoofShape.Point:
                foreach (var slope in Slopes(x, y, eaves, ridge, 0))
                {
                    yield return slope;
                }

                break;
            case RoofShape.Hip:
                foreach (var slope in Slopes(x, y, eaves, ridge, Math.Max(0, w - d)))
                {
                    yield return slope;
                }

                break;
            default:
                yield return Face(Covering, At(-x, -y, eaves), At(x, -y, eaves), At(x, 0, ridge), At(-x, 0, ridge));
                yield return Face(Covering, At(x, y, eaves), At(-x, y, eaves), At(-x, 0, ridge), At(x, 0, ridge));
                yield return Face(NightStuff.Wall, At(w, -d, Top), At(w, d, Top), At(w, 0, ridge));
                yield return Face(NightStuff.Wall, At(-w, d, Top), At(-w, -d, Top), At(-w, 0, ridge));
                break;
        }
    }

    private IEnumerable<NightFace> Slopes(float x, float y, float eaves, float ridge, float half)
    {
        var (left, right) = (At(-half, 0, ridge), At(half, 0, ridge));
        yield return half > 0 ? Face(Covering, At(-x, -y, eaves), At(x, -y, eaves), right, left) : Face(Covering, At(-x, -y, eaves), At(x, -y, eaves), left);
        yield return half > 0 ? Face(Covering, At(x, y, eaves), At(-x, y, eaves), left, right) : Face(Covering, At(x, y, eaves), At(-x, y, eaves), left);
        yield return Face(Covering, At(x, -y, eaves), At(x, y, eaves), right);
        yield return Face(Covering, At(-x, y, eaves), At(-x, -y, eaves), left);
    }

    private IEnumerable<NightFace> Tower()
    {
        var radius = _w / 2;
        var tip = At(0, 0, Top + (float)_plan.Rise);
        (float X, float Y) Rim(int i, float r) => (r * MathF.Sin(i * MathF.Tau / RoundSides), -r * MathF.Cos(i * MathF.Tau / RoundSides));
        for (var i = 0; i < RoundSides; i++)
        {
            var ((ax, ay), (bx, by)) = (Rim(i, radius), Rim(i + 1, radius));
            yield return Face(NightStuff.Wall, At(ax, ay, 0), At(bx, by, 0), At(bx, by, Top), At(ax, ay, Top));
            ((ax, ay), (bx, by)) = (Rim(i, radius + Eave), Rim(i + 1, radius + Eave));
            yield return Face(Covering, At(ax, ay, Top - 1), At(bx, by, Top - 1), tip);
        }
    }

    private IEnumerable<NightFace> OnPost()
    {
        if (Building.Kind == BuildingKind.Boat)
        {
            foreach (var face in Hull())
            {
                yield return face;
            }
        }

        foreach (var face in Walls(0.8f, 0.8f, 0, _base, NightStuff.Wood))
        {
            yield return face;
        }

        var (half, tip) = ((Lantern / 2) + 1, At(0, 0, Top + 5));
        (float X, float Y)[] corners = [(-half, -half), (half, -half), (half, half), (-half, half)];
        for (var i = 0; i < 4; i++)
        {
            var ((ax, ay), (bx, by)) = (corners[i], corners[(i + 1) % 4]);
            yield return Face(NightStuff.Slate, At(ax, ay, Top), At(bx, by, Top), tip);
        }
    }

    private IEnumerable<NightFace> Hull()
    {
        const float Board = 9;
        var (w, d) = ((float)_plan.Width / 2, (float)_plan.Depth / 2);
        (float X, float Y)[] deck = [(-w, -0.7f * d), (0.2f * w, -d), (w, 0), (0.2f * w, d), (-w, 0.7f * d)];
        for (var i = 0; i < deck.Length; i++)
        {
            var ((ax, ay), (bx, by)) = (deck[i], deck[(i + 1) % deck.Length]);
            yield return Face(NightStuff.Wood, At(0.8f * ax, 0.7f * ay, 0), At(0.8f * bx, 0.7f * by, 0), At(bx, by, Board), At(ax, ay, Board));
        }

        yield return Face(NightStuff.Wood, [.. deck.Select(c => At(c.X, c.Y, Board * 0.7f))]);
    }

    private IEnumerable<NightPane> Lit()
    {
        var results = _result.Panes.ToDictionary(p => (p.Storey, p.Room, p.Window));
        foreach (var wall in Enum.GetValues<WallSide>())
        {
            foreach (var plan in _plan.Windows(wall))
            {
                if (results.TryGetValue((plan.Storey, plan.Room, plan.Index), out var pane))
                {
                    var left = IsLantern ? (Lantern - plan.Window.Width.Millimetres) / 2 : plan.Left;
                    yield return Pane(wall, plan, (float)left, pane);
                }
            }
        }
    }

    private NightPane Pane(WallSide wall, WindowPlan plan, float left, PaneResult pane)
    {
        var (width, height) = ((float)plan.Window.Width.Millimetres, (float)plan.Window.Height.Millimetres);
        var (low, high) = (_base + (float)plan.Sill, _base + (float)plan.Sill + height);
        Vector3 Corner(float along, float up) => Round ? OnTower(wall, left + (width / 2), along - left - (width / 2), up) : OnWall(wall, along, up);
        ItemList<Vector3> corners = [Corner(left, low), Corner(left + width, low), Corner(left + width, high), Corner(left, high)];
        var lamps = pane.Lamps.Select(l => l.Lamp).ToHashSet(StringComparer.Ordinal);
        return new NightPane(
            Building.Key,
            pane.Storey,
            pane.Room,
            pane.Window,
            corners,
            Vector3.Normalize(Vector3.Cross(corners[1] - corners[0], corners[3] - corners[0])),
            Linear(pane.Colour),
            _result.Lamps.Any(l => lamps.Contains(l.Name) && l.Part.Kind == LampKind.Flickering),
            plan.Window.Pane?.Bars ?? false,
            Map(pane, wall));
    }

    private Vector3 OnWall(WallSide wall, float along, float up)
    {
        var (w, d, proud) = (_w / 2, _d / 2, ProudOfWall);
        return wall switch
        {
            WallSide.Front => At(along - w, -d - proud, up),
            WallSide.Right => At(w + proud, along - d, up),
            WallSide.Back => At(w - along, d + proud, up),
            _ => At(-w - proud, d - along, up),
        };
    }

    // On a round tower a window stands flat on the tangent where its middle would be.
    private Vector3 OnTower(WallSide wall, float middle, float aside, float up)
    {
        var facing = wall switch { WallSide.Front => 0, WallSide.Right => 0.25f, WallSide.Back => 0.5f, _ => 0.75f } * MathF.Tau;
        var turn = facing + ((middle - (_w / 2)) / (_w / 2));
        var radius = (_w / 2) + ProudOfWall;
        var (x, y) = (MathF.Sin(turn), -MathF.Cos(turn));
        return At((radius * x) - (aside * y), (radius * y) + (aside * x), up);
    }

    // The room's own grid runs with its coordinates; seen from outside, back and left walls run the other way.
    private static ItemList<float> Map(PaneResult pane, WallSide wall)
    {
        var rows = pane.Map.Count / pane.MapColumns;
        float Part(int column, int row) => (float)pane.Map[(row * pane.MapColumns) + (wall is WallSide.Back or WallSide.Left ? pane.MapColumns - 1 - column : column)];
        return Enumerable.Range(0, NightPane.MapSide * NightPane.MapSide)
            .Select(i => Part(i % NightPane.MapSide * pane.MapColumns / NightPane.MapSide, i / NightPane.MapSide * rows / NightPane.MapSide))
            .ToItemList();
    }

    private static Vector3 Linear(string? hex)
    {
        if (hex is null)
        {
            return Vector3.One;
        }

        float Part(int at)
        {
            var value = int.Parse(hex.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255f;
            return value <= 0.04045f ? value / 12.92f : MathF.Pow((value + 0.055f) / 1.055f, 2.4f);
        }

        var colour = new Vector3(Part(1), Part(3), Part(5));
        return colour / Vector3.Dot(colour, NightEyes.Luminance);
    }
}
