namespace Duskwright.Light.Rooms;

/// <summary>Light that falls on a face straight from a lamp: E = I(θ)·cos β / r² (inverse square and cosine laws).</summary>
internal static class DirectLight
{
    private const int MostHalvings = 7;

    // Share of the lamp's lumens by which the halves of a patch may differ from the whole: a thousandth of the room's 0.1 % balance.
    private const double Tolerance = 1e-6;

    // Nodes and weights of Gauss and Legendre's rule of four points on −1 to 1.
    private static readonly double[] Nodes = [-0.8611363115940526, -0.3399810435848563, 0.3399810435848563, 0.8611363115940526];
    private static readonly double[] Weights = [0.3478548451374538, 0.6521451548625461, 0.6521451548625461, 0.3478548451374538];

    /// <summary>Lumens on a rectangle of a face.</summary>
    internal static double Lumens(RoomBox box, BoxFace face, Rectangle part, RoomLamp lamp)
    {
        var beam = new Beam(lamp, face.IsFar() ? box.Size(face.Normal()) - lamp.At[face.Normal()] : lamp.At[face.Normal()]);
        return Halved(box, face, part, beam, Gauss(box, face, part, beam), Tolerance * lamp.Lobe.Lumens, MostHalvings);
    }

    private static double Halved(RoomBox box, BoxFace face, Rectangle part, Beam beam, double whole, double tolerance, int halvings)
    {
        var (across, along) = ((part.FromAcross + part.ToAcross) / 2, (part.FromAlong + part.ToAlong) / 2);
        ReadOnlySpan<Rectangle> quarters =
        [
            part with { ToAcross = across, ToAlong = along }, part with { FromAcross = across, ToAlong = along },
            part with { ToAcross = across, FromAlong = along }, part with { FromAcross = across, FromAlong = along },
        ];
        Span<double> sums = stackalloc double[4];
        var total = 0.0;
        for (var q = 0; q < 4; q++)
        {
            sums[q] = Gauss(box, face, quarters[q], beam);
            total += sums[q];
        }

        if (Math.Abs(total - whole) <= tolerance || halvings == 0)
        {
            return total;
        }

        total = 0;
        for (var q = 0; q < 4; q++)
        {
            total += Halved(box, face, quarters[q], beam, sums[q], tolerance / 2, halvings - 1);
        }

        return total;
    }

    private static double Gauss(RoomBox box, BoxFace face, Rectangle part, Beam beam)
    {
        var (midAcross, midAlong) = ((part.FromAcross + part.ToAcross) / 2, (part.FromAlong + part.ToAlong) / 2);
        var (halfAcross, halfAlong) = ((part.ToAcross - part.FromAcross) / 2, (part.ToAlong - part.FromAlong) / 2);
        var sum = 0.0;
        for (var i = 0; i < Nodes.Length; i++)
        {
            for (var j = 0; j < Nodes.Length; j++)
            {
                var at = RoomPoint.Of(face, box, midAcross + (Nodes[i] * halfAcross), midAlong + (Nodes[j] * halfAlong));
                sum += Weights[i] * Weights[j] * beam.LuxAt(at);
            }
        }

        return sum * halfAcross * halfAlong;
    }

    /// <summary>A lamp's lobe with what every point of a face needs worked out once.</summary>
    private readonly struct Beam(RoomLamp lamp, double fromFaceMetres)
    {
        private readonly RoomPoint _at = lamp.At;
        private readonly RoomPoint _axis = 1 / lamp.Axis.Length * lamp.Axis;
        private readonly bool _allRound = lamp.Lobe.ShinesAllRound;
        private readonly double _candelas = lamp.Lobe.AxisCandelas;
        private readonly double _exponent = lamp.Lobe.Exponent;

        internal double LuxAt(RoomPoint point)
        {
            var ray = point - _at;
            var square = ray.Dot(ray);
            var distance = Math.Sqrt(square);
            var cosine = ray.Dot(_axis) / distance;
            if (!_allRound && cosine <= 0)
            {
                return 0;
            }

            return (_allRound ? 1 : Math.Pow(cosine, _exponent)) * _candelas * fromFaceMetres / (square * distance);
        }
    }
}
