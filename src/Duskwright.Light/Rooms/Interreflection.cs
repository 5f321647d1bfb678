using System.Numerics;

namespace Duskwright.Light.Rooms;

/// <summary>Light thrown to and fro between the patches of a closed room: E = E₀ + F·(M₀ + ρ·E) (radiosity).</summary>
/// <remarks>
/// Source: Goral, Torrance, Greenberg and Battaile, Computer Graphics 18 (1984) 213. With u = √(A·ρ)·E the equations are
/// symmetric and positive definite for ρ below 1, and are solved by conjugate gradients (Hestenes and Stiefel 1952).
/// </remarks>
public static class Interreflection
{
    private const int MostSteps = 500;
    private const double WantedResidual = 1e-9;

    /// <summary>Solves a closed room.</summary>
    /// <param name="exchange">Exchange areas A·F row by row, symmetric, m².</param>
    /// <param name="areas">Area of each patch, m².</param>
    /// <param name="reflectances">Reflectance of each patch, 0 to less than 1.</param>
    /// <param name="directLux">Illuminance of each patch straight from lamps, lx.</param>
    /// <param name="emitted">Light each patch gives off of itself, lm/m².</param>
    /// <returns>The illuminance of each patch with how the run ended.</returns>
    public static InterreflectionResult Solve(double[] exchange, double[] areas, double[] reflectances, double[] directLux, double[] emitted)
    {
        ArgumentNullException.ThrowIfNull(exchange);
        ArgumentNullException.ThrowIfNull(areas);
        ArgumentNullException.ThrowIfNull(reflectances);
        var n = areas.Length;
        var scale = new double[n];
        for (var i = 0; i < n; i++)
        {
            scale[i] = Math.Sqrt(reflectances[i] / areas[i]);
        }

        var first = Received(exchange, areas, directLux, emitted);
        var right = new double[n];
        for (var i = 0; i < n; i++)
        {
            right[i] = scale[i] * areas[i] * first[i];
        }

        var (solution, steps, residual) = ConjugateGradients(exchange, scale, right);
        var thrown = new double[n];
        for (var i = 0; i < n; i++)
        {
            // ρ·E = √(ρ/A)·u.
            thrown[i] = scale[i] * solution[i];
        }

        return new InterreflectionResult(Received(exchange, areas, first, thrown), residual <= WantedResidual, steps, residual);
    }

    private static (double[] Solution, int Steps, double Residual) ConjugateGradients(double[] exchange, double[] scale, double[] right)
    {
        var n = right.Length;
        var solution = new double[n];
        var rest = (double[])right.Clone();
        var direction = (double[])right.Clone();
        var (scaled, image) = (new double[n], new double[n]);
        var wanted = Dot(right, right) * WantedResidual * WantedResidual;
        var square = Dot(rest, rest);
        var steps = 0;
        while (square > wanted && steps < MostSteps)
        {
            for (var i = 0; i < n; i++)
            {
                scaled[i] = scale[i] * direction[i];
            }

            for (var i = 0; i < n; i++)
            {
                image[i] = direction[i] - (scale[i] == 0 ? 0 : scale[i] * Dot(exchange.AsSpan(i * n, n), scaled));
            }

            var step = square / Dot(direction, image);
            for (var i = 0; i < n; i++)
            {
                solution[i] += step * direction[i];
                rest[i] -= step * image[i];
            }

            var next = Dot(rest, rest);
            for (var i = 0; i < n; i++)
            {
                direction[i] = rest[i] + (next / square * direction[i]);
            }

            square = next;
            steps++;
        }

        var size = Dot(right, right);
        return (solution, steps, size == 0 ? 0 : Math.Sqrt(square / size));
    }

    private static double[] Received(double[] exchange, double[] areas, double[] before, double[] exitance)
    {
        var n = areas.Length;
        var lux = new double[n];
        for (var i = 0; i < n; i++)
        {
            lux[i] = before[i] + (Dot(exchange.AsSpan(i * n, n), exitance) / areas[i]);
        }

        return lux;
    }

    private static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        var sums = Vector<double>.Zero;
        var i = 0;
        for (; i <= a.Length - Vector<double>.Count; i += Vector<double>.Count)
        {
            sums += new Vector<double>(a[i..]) * new Vector<double>(b[i..]);
        }

        var sum = Vector.Sum(sums);
        for (; i < a.Length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum;
    }
}

/// <summary>How the light between patches came out.</summary>
/// <param name="Lux">Illuminance of each patch, lx.</param>
/// <param name="Converged">Whether the wanted residual was reached.</param>
/// <param name="Steps">Steps taken.</param>
/// <param name="Residual">Residual over the right side.</param>
public sealed record InterreflectionResult(IReadOnlyList<double> Lux, bool Converged, int Steps, double Residual);
