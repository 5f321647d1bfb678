using System.Globalization;
using Duskwright.Plan.Document;
using Duskwright.Study.Results;

namespace Duskwright.Pictures;

/// <summary>A pane as a stroke on its wall, about the house's middle before turning, y towards the front.</summary>
/// <param name="X">Across, mm.</param>
/// <param name="Y">Towards the front, mm.</param>
/// <param name="Across">Whether its wall runs across.</param>
/// <param name="Size">Length of the stroke, mm.</param>
public sealed record PaneStroke(double X, double Y, bool Across, double Size);

/// <summary>A building as the plan draws it: millimetres of the board, y from the back edge down.</summary>
public sealed record HouseOnPlan
{
    private const double UsualSideMillimetres = 60;

    // Only for the drawing: a pane that no longer reads as lit must look plainly duller than one that does, yet not gone.
    private const double InkOfUnreadPane = 0.35;

    public required string Key { get; init; }

    public required string Name { get; init; }

    public required string Kind { get; init; }

    public required string Covering { get; init; }

    public required string Spoken { get; init; }

    public required double X { get; init; }

    public required double Y { get; init; }

    public required double Turn { get; init; }

    public required double Width { get; init; }

    public required double Depth { get; init; }

    public required bool IsRound { get; init; }

    public required bool IsSelected { get; init; }

    /// <summary>How bright its panes look, 0 dark to 1 as fresh.</summary>
    public required double Lit { get; init; }

    public required IReadOnlyList<PaneStroke> Panes { get; init; }

    public required RoofShape Roof { get; init; }

    /// <summary>Where light comes out, on the board.</summary>
    public IEnumerable<(double X, double Y)> Spots => Panes.Count == 0 ? [(X, Y)] : Panes.Select(p =>
    {
        var (sin, cos) = Math.SinCos(-Turn * Math.PI / 180);
        return (X + (p.X * cos) - (p.Y * sin), Y + (p.X * sin) + (p.Y * cos));
    });

    /// <summary>The line of the roof's ridge and hips.</summary>
    public string Ridge => Roof switch
    {
        RoofShape.Hip => $"M{F(-Width / 2)} {F(-Depth / 2)}L{F(-Hip)} 0H{F(Hip)}L{F(Width / 2)} {F(-Depth / 2)}M{F(-Width / 2)} {F(Depth / 2)}L{F(-Hip)} 0M{F(Width / 2)} {F(Depth / 2)}L{F(Hip)} 0",
        RoofShape.Point => $"M{F(-Width / 2)} {F(-Depth / 2)}L{F(Width / 2)} {F(Depth / 2)}M{F(-Width / 2)} {F(Depth / 2)}L{F(Width / 2)} {F(-Depth / 2)}",
        RoofShape.Flat => $"M{F((-Width / 2) + 4)} {F((-Depth / 2) + 4)}H{F((Width / 2) - 4)}V{F((Depth / 2) - 4)}H{F((-Width / 2) + 4)}z",
        _ => $"M{F(-Width / 2)} 0H{F(Width / 2)}",
    };

    /// <summary>Short strokes down the front slope.</summary>
    public string Hatch => Roof == RoofShape.Flat ? "" : string.Concat(Enumerable.Range(1, Math.Max(1, (int)(Width / 7) - 1))
        .Select(i => $"M{F((-Width / 2) + (i * 7))} {F(Depth * (0.08 + (0.05 * (i * 7 % 3))))}v{F(Depth * (0.2 + (0.06 * (i * 5 % 3))))}"));

    /// <summary>A boat's outline.</summary>
    public string Hull => $"M{F(-Width / 2)} {F(-Depth * .35)}Q{F(Width * .1)} {F(-Depth * .7)} {F(Width / 2)} 0Q{F(Width * .1)} {F(Depth * .7)} {F(-Width / 2)} {F(Depth * .35)}z";

    private double Hip => Math.Max(0, (Width - Depth) / 2);

    /// <summary>Places a building on the plan.</summary>
    /// <param name="result">The building; it must have a place.</param>
    /// <param name="moment">The hour.</param>
    /// <param name="boardDepth">The board's depth, mm.</param>
    /// <param name="isSelected">Whether it is selected.</param>
    /// <returns>What is drawn.</returns>
    public static HouseOnPlan Of(BuildingResult result, Moment moment, double boardDepth, bool isSelected)
    {
        var building = result.Building;
        var place = building.Place!;
        var (width, depth) = (place.Width?.Millimetres ?? UsualSideMillimetres, place.Round ? place.Width?.Millimetres ?? UsualSideMillimetres : place.Depth?.Millimetres ?? UsualSideMillimetres);
        var now = moment.Lamps.Where(l => l.Building == building.Key).ToList();
        var kind = building.Kind switch { BuildingKind.StreetLamp => "street-lamp", BuildingKind.Boat => "boat", _ => "house" };
        return new HouseOnPlan
        {
            Key = building.Key,
            Name = building.Name,
            Kind = kind,
            Covering = (building.Roof?.Covering ?? RoofCovering.Slate) switch { RoofCovering.Slate => "a", RoofCovering.Thatch => "b", _ => "c" },
            Spoken = $"{building.Name}, {result.Lamps.Count} {(result.Lamps.Count == 1 ? "LED" : "LEDs")}{(result.Circuit > 0 ? $", pack {result.Circuit}" : ", not yet on a pack")}",
            X = place.At.X.Millimetres,
            Y = boardDepth - place.At.Y.Millimetres,
            Turn = place.Rotation.Degrees,
            Width = width,
            Depth = depth,
            IsRound = place.Round,
            IsSelected = isSelected,
            Lit = now.Count == 0 ? 0 : now.Average(l => (l.Lightness / 100) * (l.ReadsAsLit == false ? InkOfUnreadPane : 1)),
            Panes = kind == "house" ? [.. Strokes(building, width, depth)] : [],
            Roof = building.Roof?.Shape ?? RoofShape.Gable,
        };
    }

    private static IEnumerable<PaneStroke> Strokes(Building building, double width, double depth)
    {
        foreach (var window in building.Storeys.SelectMany(s => s.Rooms).SelectMany(r => r.Windows))
        {
            var size = Math.Max(8, window.Width.Millimetres);
            var along = window.Wall is WallSide.Front or WallSide.Back ? width : depth;
            var at = Math.Clamp((window.FromLeft?.Millimetres ?? (along - size) / 2) + (size / 2), size / 2, Math.Max(size / 2, along - (size / 2))) - (along / 2);
            yield return window.Wall switch
            {
                WallSide.Front => new PaneStroke(at, (depth / 2) + 2, true, size),
                WallSide.Back => new PaneStroke(-at, (-depth / 2) - 2, true, size),
                WallSide.Right => new PaneStroke((width / 2) + 2, -at, false, size),
                _ => new PaneStroke((-width / 2) - 2, at, false, size),
            };
        }
    }

    private static string F(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
