using System.Globalization;
using Duskwright.Book.Drawings;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Study.Results;
using SkiaSharp;

namespace Duskwright.Book.Plans;

/// <summary>A building from above: roof, cast shadow, and its panes as strokes on their walls, as bright as they are.</summary>
internal sealed class HouseOnPlan
{
    private const double UsualSide = 60;

    // Only for the drawing: a pane that no longer reads as lit must look plainly duller than one that does, yet not gone.
    private const double InkOfUnreadPane = 0.35;

    private readonly BuildingResult _result;
    private readonly double _width;
    private readonly double _depth;
    private readonly double _lit;

    internal HouseOnPlan(BuildingResult result, IReadOnlyCollection<LampAtMoment> now, double boardDepth)
    {
        _result = result;
        var place = result.Building.Place!;
        _width = place.Outline.Count > 2 ? 2 * place.Outline.Max(p => Math.Abs(p.X.Millimetres)) : place.Width?.Millimetres ?? UsualSide;
        _depth = place.Outline.Count > 2 ? 2 * place.Outline.Max(p => Math.Abs(p.Y.Millimetres)) : place.Round ? _width : place.Depth?.Millimetres ?? UsualSide;
        X = place.At.X.Millimetres;
        Y = boardDepth - place.At.Y.Millimetres;
        _lit = now.Count == 0 ? 0 : now.Average(l => (l.Lightness / 100) * (l.ReadsAsLit == false ? InkOfUnreadPane : 1));
        Panes = result.Building.Kind == BuildingKind.House ? [.. Strokes()] : [];
    }

    internal double X { get; }

    internal double Y { get; }

    private Building Building => _result.Building;

    private double Turn => -Building.Place!.Rotation.Degrees;

    private IReadOnlyList<(double X, double Y, bool Across, double Size)> Panes { get; }

    private double Hip => Math.Max(0, (_width - _depth) / 2);

    /// <summary>Light on the ground about the house.</summary>
    internal IEnumerable<Mark> Halos()
    {
        if (_lit <= 0.02)
        {
            yield break;
        }

        var (sin, cos) = Math.SinCos(Turn * Math.PI / 180);
        foreach (var (x, y) in Panes.Count == 0 ? [(0, 0)] : Panes.Select(p => (p.X, p.Y)))
        {
            yield return new Halo(X + (x * cos) - (y * sin), Y + (x * sin) + (y * cos), 26 + (16 * _lit), _lit);
        }
    }

    internal Part Drawn(BoardView view)
    {
        var marks = new List<Mark>();
        var chosen = Building.Key == view.Chosen || view.Together.Contains(Building.Key);
        if (chosen)
        {
            marks.Add(new Stroke(Trace.Ellipse(X, Y, (_width / 2) + 18, (_depth / 2) + 18), Inks.Ring));
        }

        marks.Add(new Placed(X, Y, Turn, Body().ToItemList()));
        return new Part(marks.ToItemList()) { Key = Building.Key, Words = Spoken(), Chosen = chosen };
    }

    /// <summary>What stands beside the house, its lines from the top; none for lamps and boats.</summary>
    internal IReadOnlyList<Label> Lines(BoardView view)
    {
        if (Building.Kind != BuildingKind.House)
        {
            return [];
        }

        var name = new Label(Building.Name, Inks.Name);
        return view.WithLengths && _result.Lamps.Count > 0
            ? [name, new Label(string.Create(CultureInfo.InvariantCulture, $"{_result.Code} {_result.PairLength.Value:0.00} m"), Inks.Small)]
            : [name];
    }

    /// <summary>The box about the turned footprint.</summary>
    internal SKRect Box()
    {
        var (across, down) = (Reach(_depth, _width), Reach(_width, _depth));
        return new SKRect((float)(X - across), (float)(Y - down), (float)(X + across), (float)(Y + down));
    }

    private string Spoken() => $"{Building.Name}, {_result.Lamps.Count} {(_result.Lamps.Count == 1 ? "LED" : "LEDs")}{(_result.Circuit > 0 ? $", pack {_result.Circuit}" : ", not yet on a pack")}";

    // How far the turned footprint reaches along the side named second.
    private double Reach(double other, double along)
    {
        var (sin, cos) = Math.SinCos(Turn * Math.PI / 180);
        return Building.Place!.Round ? along / 2 : ((Math.Abs(sin) * other) + (Math.Abs(cos) * along)) / 2;
    }

    private IEnumerable<Mark> Body()
    {
        var lantern = Inks.Pane;
        switch (Building.Kind)
        {
            case BuildingKind.StreetLamp:
                yield return new Stroke(Trace.Circle(0, 0, 17), Inks.Touch);
                yield return new Stroke(Trace.Circle(0, 0, 5), lantern) { Lit = _lit };
                yield return new Stroke(new Trace().To(-3.5, -3.5).Line(3.5, 3.5).To(3.5, -3.5).Line(-3.5, 3.5).Open(), Inks.Fine);
                break;
            case BuildingKind.Boat:
                yield return new Placed(3, 4, 0, [new Stroke(Hull(), Inks.Shade)]);
                yield return new Stroke(Hull(), Inks.Tile);
                yield return new Stroke(new Trace().To(-_width * .22, -_depth * .4).Line(-_width * .22, _depth * .4).To(_width * .12, -_depth * .44).Line(_width * .12, _depth * .44).Open(), Inks.Fine);
                yield return new Stroke(Trace.Circle(0, 0, 3.5), lantern) { Lit = _lit };
                break;
            default:
                foreach (var mark in Building.Place!.Outline.Count > 2 ? OwnRoof() : Building.Place.Round ? RoundRoof() : SquareRoof())
                {
                    yield return mark;
                }

                foreach (var pane in Panes)
                {
                    yield return new Stroke(pane.Across ? Trace.Rectangle(pane.X - (pane.Size / 2), pane.Y - 2.4, pane.Size, 4.8) : Trace.Rectangle(pane.X - 2.4, pane.Y - (pane.Size / 2), 4.8, pane.Size), Inks.Pane) { Lit = _lit };
                }

                break;
        }
    }

    // Of any shape: hips run from its corners to its middle.
    private IEnumerable<Mark> OwnRoof()
    {
        var corners = Building.Place!.Outline.Select(p => (p.X.Millimetres, -p.Y.Millimetres)).ToList();
        yield return new Stroke(Trace.Chain(corners.Select(c => (c.Item1 + 6, c.Item2 + 7)), closed: true), Inks.Shade);
        yield return new Stroke(Trace.Chain(corners, closed: true), Covering());
        var (x, y) = (corners.Average(c => c.Item1), corners.Average(c => c.Item2));
        var hips = new Trace();
        foreach (var corner in corners)
        {
            hips.To(corner.Item1, corner.Item2).Line(x, y);
        }

        yield return new Stroke(hips.Open(), Inks.Fine);
    }

    private IEnumerable<Mark> RoundRoof()
    {
        yield return new Stroke(Trace.Circle(5, 6, _width / 2), Inks.Shade);
        yield return new Stroke(Trace.Circle(0, 0, _width / 2), Covering());
        var ribs = new Trace();
        for (var i = 0; i < 12; i++)
        {
            ribs.To(0, 0).Line(_width / 2 * Math.Cos(i * Math.PI / 6), _width / 2 * Math.Sin(i * Math.PI / 6));
        }

        yield return new Stroke(ribs.Open(), Inks.Fine);
    }

    private IEnumerable<Mark> SquareRoof()
    {
        var (w, d) = (_width / 2, _depth / 2);
        yield return new Stroke(Trace.Rectangle(6 - w, 7 - d, _width, _depth), Inks.Shade);
        yield return new Stroke(Trace.Rectangle(-w, -d, _width, _depth), Covering());
        var roof = Building.Roof?.Shape ?? RoofShape.Gable;
        if (roof != RoofShape.Flat)
        {
            var hatch = new Trace();
            for (var i = 1; i < (int)(_width / 7); i++)
            {
                var (x, from) = (-w + (i * 7), _depth * (0.08 + (0.05 * (i * 7 % 3))));
                hatch.To(x, from).Line(x, from + (_depth * (0.2 + (0.06 * (i * 5 % 3)))));
            }

            yield return new Stroke(hatch.Open(), Inks.Fine);
        }

        yield return new Stroke(
            roof switch
            {
                RoofShape.Hip => new Trace().To(-w, -d).Line(-Hip, 0).Line(Hip, 0).Line(w, -d).To(-w, d).Line(-Hip, 0).To(w, d).Line(Hip, 0).Open(),
                RoofShape.Point => new Trace().To(-w, -d).Line(w, d).To(-w, d).Line(w, -d).Open(),
                RoofShape.Flat => Trace.Rectangle(4 - w, 4 - d, _width - 8, _depth - 8),
                _ => Trace.Segment(-w, 0, w, 0),
            },
            Inks.Edge);
    }

    private Ink Covering() => (Building.Roof?.Covering ?? RoofCovering.Slate) switch { RoofCovering.Slate => Inks.Slate, RoofCovering.Thatch => Inks.Thatch, _ => Inks.Tile };

    private string Hull() => new Trace().To(-_width / 2, -_depth * .35).Curve(_width * .1, -_depth * .7, _width / 2, 0).Curve(_width * .1, _depth * .7, -_width / 2, _depth * .35).Closed();

    private IEnumerable<(double X, double Y, bool Across, double Size)> Strokes()
    {
        foreach (var window in Building.Storeys.SelectMany(s => s.Rooms).SelectMany(r => r.Windows))
        {
            var size = Math.Max(8, window.Width.Millimetres);
            var along = window.Wall is WallSide.Front or WallSide.Back ? _width : _depth;
            var at = Math.Clamp((window.FromLeft?.Millimetres ?? (along - size) / 2) + (size / 2), size / 2, Math.Max(size / 2, along - (size / 2))) - (along / 2);
            yield return window.Wall switch
            {
                WallSide.Front => (at, (_depth / 2) + 2, true, size),
                WallSide.Back => (-at, (-_depth / 2) - 2, true, size),
                WallSide.Right => ((_width / 2) + 2, -at, false, size),
                _ => ((-_width / 2) - 2, at, false, size),
            };
        }
    }
}
