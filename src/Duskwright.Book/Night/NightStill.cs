using System.Numerics;
using Duskwright.Plan;
using SkiaSharp;

namespace Duskwright.Book.Night;

/// <summary>A still of the night scene, painted from the same record as the view on the screen.</summary>
public sealed class NightStill
{
    // Samples along a pixel's side.
    private const int Fine = 2;
    private const float Near = 0.02f;

    // A pane's middle is in sight where nothing lies nearer by more than this.
    private const float InSight = 0.002f;

    private readonly NightScene _scene;
    private readonly NightEye _eye;
    private readonly int _width;
    private readonly int _height;
    private readonly float _scale;
    private readonly Vector3 _right;
    private readonly Vector3 _up;
    private readonly Vector3 _ahead;
    private readonly Vector3[] _light;
    private readonly float[] _far;

    private NightStill(NightScene scene, NightEye eye, int width, int height)
    {
        (_scene, _eye, _width, _height) = (scene, eye, width * Fine, height * Fine);
        _ahead = Vector3.Normalize(eye.To - eye.At);
        _right = Vector3.Normalize(Vector3.Cross(_ahead, Vector3.UnitY));
        _up = Vector3.Cross(_right, _ahead);
        _scale = _height / 2f / MathF.Tan(NightEye.FieldDegrees / 2 * MathF.PI / 180);
        _light = new Vector3[_width * _height];
        _far = new float[_width * _height];
        Array.Fill(_far, float.PositiveInfinity);
    }

    /// <summary>Paints a still as PNG.</summary>
    /// <param name="scene">The scene.</param>
    /// <param name="light">Luminance of its panes.</param>
    /// <param name="eye">Where one stands.</param>
    /// <param name="hour">Hours burnt.</param>
    /// <param name="roomLux">Light in the room, lx, more than 0.</param>
    /// <param name="width">Pixels, more than 0.</param>
    /// <param name="height">Pixels, more than 0.</param>
    /// <param name="stream">Where to write.</param>
    public static void Write(NightScene scene, NightLight light, NightEye eye, double hour, double roomLux, int width, int height, Stream stream)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(width);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(height);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(roomLux);
        using var bitmap = new NightStill(scene, eye, width, height).Painted(Enumerable.Range(0, scene.Panes.Count).Select(p => light.At(p, hour)).ToArray(), roomLux);
        using var data = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        data.SaveTo(stream);
    }

    private SKBitmap Painted(float[] luminance, double roomLux)
    {
        // Around the board is a room with bluish walls.
        Array.Fill(_light, NightEyes.Thrown(roomLux, Vector3.UnitX, new Vector3(.07f, .075f, .11f)));
        foreach (var face in _scene.Faces)
        {
            var thrown = NightEyes.Thrown(roomLux, face.Normal, face.Albedo);
            Fill(face.Corners, face.Normal, (at, _, distance) => (_light[at], _far[at]) = (thrown, distance));
        }

        for (var p = 0; p < _scene.Panes.Count; p++)
        {
            var pane = _scene.Panes[p];
            var (origin, across, upwards) = (pane.Corners[0], pane.Corners[1] - pane.Corners[0], pane.Corners[3] - pane.Corners[0]);
            var mean = luminance[p];
            var glass = NightEyes.Thrown(roomLux, pane.Normal, new Vector3(.05f));
            Fill(pane.Corners, pane.Normal, (at, point, distance) =>
            {
                var (u, v) = (Vector3.Dot(point - origin, across) / across.LengthSquared(), Vector3.Dot(point - origin, upwards) / upwards.LengthSquared());
                (_light[at], _far[at]) = (glass + (pane.Bars && Barred(u, v) ? Vector3.Zero : mean * Part(pane, u, v) * pane.Colour), distance);
            });
        }

        foreach (var glow in _scene.Glows.Where(g => luminance[g.Pane] > 0))
        {
            var pane = _scene.Panes[glow.Pane];
            var (middle, area, mean) = (pane.Middle, pane.Area, luminance[glow.Pane]);
            Fill(glow.Corners, glow.Normal, (at, point, _) => _light[at] += Falling(point, glow.Normal, middle, pane.Normal, area) * Ending(point, middle, glow.Reach) * mean * glow.Albedo * pane.Colour / MathF.PI);
        }

        for (var p = 0; p < _scene.Panes.Count; p++)
        {
            Veil(_scene.Panes[p], luminance[p]);
        }

        return Shown(NightEyes.In(roomLux, luminance));
    }

    /// <summary>Illuminance on a small surface from a small Lambertian one, lx for 1 cd/m²: A·cos·cos/d².</summary>
    internal static float Falling(Vector3 point, Vector3 normal, Vector3 pane, Vector3 outwards, float area)
    {
        var ray = pane - point;
        var square = Math.Max(ray.LengthSquared(), area);
        return area * Math.Max(0, Vector3.Dot(ray, normal)) * Math.Max(0, -Vector3.Dot(ray, outwards)) / (square * square);
    }

    /// <summary>Light is followed so far and ends softly there.</summary>
    internal static float Ending(Vector3 point, Vector3 pane, float reach)
    {
        var left = Math.Max(0, 1 - ((point - pane).LengthSquared() / (reach * reach)));
        return left * left;
    }

    private static bool Barred(float u, float v) => Math.Abs(u - 0.5f) < 0.035f || Math.Abs(v - 0.5f) < 0.03f;

    private static float Part(NightPane pane, float u, float v)
    {
        const int Last = NightPane.MapSide - 1;
        var (x, y) = (Math.Clamp((u * NightPane.MapSide) - 0.5f, 0, Last), Math.Clamp((v * NightPane.MapSide) - 0.5f, 0, Last));
        var (i, j) = (Math.Min((int)x, Last - 1), Math.Min((int)y, Last - 1));
        float At(int column, int row) => pane.Map[(row * NightPane.MapSide) + column];
        float Between(float a, float b, float share) => a + ((b - a) * share);
        return Between(Between(At(i, j), At(i + 1, j), x - i), Between(At(i, j + 1), At(i + 1, j + 1), x - i), y - j);
    }

    // Every sample of a flat outline in sight: where it is met and how far along the sight.
    private void Fill(ItemList<Vector3> corners, Vector3 normal, Action<int, Vector3, float> paint)
    {
        if (Vector3.Dot(normal, _eye.At - corners[0]) <= 0)
        {
            return;
        }

        var outline = InFront(corners).Select(Seen).ToList();
        if (outline.Count < 3)
        {
            return;
        }

        var reach = Vector3.Dot(normal, corners[0] - _eye.At);
        var (top, bottom) = (Math.Max(0, (int)MathF.Floor(outline.Min(p => p.Y))), Math.Min(_height - 1, (int)MathF.Ceiling(outline.Max(p => p.Y))));
        var crossings = new List<float>();
        for (var y = top; y <= bottom; y++)
        {
            crossings.Clear();
            var line = y + 0.5f;
            for (var i = 0; i < outline.Count; i++)
            {
                var (a, b) = (outline[i], outline[(i + 1) % outline.Count]);
                if ((a.Y > line) != (b.Y > line))
                {
                    crossings.Add(a.X + ((line - a.Y) / (b.Y - a.Y) * (b.X - a.X)));
                }
            }

            crossings.Sort();
            for (var c = 0; c + 1 < crossings.Count; c += 2)
            {
                var last = Math.Min(_width - 1, (int)MathF.Ceiling(crossings[c + 1] - 0.5f) - 1);
                for (var x = Math.Max(0, (int)MathF.Ceiling(crossings[c] - 0.5f)); x <= last; x++)
                {
                    var sight = _ahead + (((x + 0.5f - (_width / 2f)) / _scale) * _right) + ((((_height / 2f) - y - 0.5f) / _scale) * _up);
                    var distance = reach / Vector3.Dot(normal, sight);
                    var at = (y * _width) + x;
                    if (distance < _far[at])
                    {
                        paint(at, _eye.At + (distance * sight), distance);
                    }
                }
            }
        }
    }

    // Light of a pane scattered within the eye.
    private void Veil(NightPane pane, float luminance)
    {
        var towards = _eye.At - pane.Middle;
        var facing = Vector3.Dot(towards, pane.Normal) / towards.Length();
        if (luminance <= 0 || facing <= 0 || Vector3.Dot(-towards, _ahead) < Near)
        {
            return;
        }

        var (middle, away) = (Seen(pane.Middle), Vector3.Dot(-towards, _ahead));
        if (middle.X < 0 || middle.X >= _width || middle.Y < 0 || middle.Y >= _height || _far[((int)middle.Y * _width) + (int)middle.X] < away - InSight)
        {
            return;
        }

        var lux = luminance * pane.Area * facing / towards.LengthSquared();
        var degree = _scale * MathF.PI / 180;
        var radius = (int)(NightEyes.VeilDegrees * degree);
        for (var y = Math.Max(0, (int)middle.Y - radius); y < Math.Min(_height, (int)middle.Y + radius); y++)
        {
            for (var x = Math.Max(0, (int)middle.X - radius); x < Math.Min(_width, (int)middle.X + radius); x++)
            {
                _light[(y * _width) + x] += NightEyes.Veil(lux, Vector2.Distance(middle, new Vector2(x + 0.5f, y + 0.5f)) / degree) * pane.Colour;
            }
        }
    }

    private IEnumerable<Vector3> InFront(ItemList<Vector3> corners)
    {
        float Ahead(Vector3 p) => Vector3.Dot(p - _eye.At, _ahead) - Near;
        for (var i = 0; i < corners.Count; i++)
        {
            var (a, b) = (corners[i], corners[(i + 1) % corners.Count]);
            var (aheadA, aheadB) = (Ahead(a), Ahead(b));
            if (aheadA >= 0)
            {
                yield return a;
            }

            if ((aheadA >= 0) != (aheadB >= 0))
            {
                yield return Vector3.Lerp(a, b, aheadA / (aheadA - aheadB));
            }
        }
    }

    private Vector2 Seen(Vector3 point)
    {
        var from = point - _eye.At;
        var away = Vector3.Dot(from, _ahead);
        return new Vector2((_width / 2f) + (_scale * Vector3.Dot(from, _right) / away), (_height / 2f) - (_scale * Vector3.Dot(from, _up) / away));
    }

    private SKBitmap Shown(NightEyes eyes)
    {
        var bitmap = new SKBitmap(_width / Fine, _height / Fine, SKColorType.Rgba8888, SKAlphaType.Opaque);
        var pixels = bitmap.GetPixelSpan();
        for (var y = 0; y < bitmap.Height; y++)
        {
            for (var x = 0; x < bitmap.Width; x++)
            {
                var sum = Vector3.Zero;
                for (var s = 0; s < Fine * Fine; s++)
                {
                    sum += eyes.Shown(_light[(((y * Fine) + (s / Fine)) * _width) + (x * Fine) + (s % Fine)]);
                }

                sum /= Fine * Fine;
                var at = ((y * bitmap.Width) + x) * 4;
                (pixels[at], pixels[at + 1], pixels[at + 2], pixels[at + 3]) = (Coded(sum.X), Coded(sum.Y), Coded(sum.Z), 255);
            }
        }

        return bitmap;
    }

    // IEC 61966-2-1.
    private static byte Coded(float linear)
    {
        var value = Math.Clamp(linear, 0, 1);
        return (byte)MathF.Round(255 * (value <= 0.0031308f ? 12.92f * value : (1.055f * MathF.Pow(value, 1 / 2.4f)) - 0.055f));
    }
}
