using System.Numerics;

namespace Duskwright.Circuits.Tolerance;

/// <summary>The value of the standard normal distribution below which a share lies.</summary>
internal static class NormalQuantile
{
    // Acklam's rational approximation (2003, from memory), relative error 1.2e-9: coefficients of the middle and of the tails.
    private static readonly double[] A = [-3.969683028665376e+01, 2.209460984245205e+02, -2.759285104469687e+02, 1.383577518672690e+02, -3.066479806614716e+01, 2.506628277459239e+00];
    private static readonly double[] B = [-5.447609879822406e+01, 1.615858368580409e+02, -1.556989798598866e+02, 6.680131188771972e+01, -1.328068155288572e+01];
    private static readonly double[] C = [-7.784894002430293e-03, -3.223964580411365e-01, -2.400758277161838e+00, -2.549732539343734e+00, 4.374664141464968e+00, 2.938163982698783e+00];
    private static readonly double[] D = [7.784695709041462e-03, 3.224671290700398e-01, 2.445134137142996e+00, 3.754408661907416e+00];

    private const double Tail = 0.02425;

    /// <param name="share">Above 0 and below 1.</param>
    internal static double Of(double share)
    {
        if (share < Tail)
        {
            return OfTail(Math.Sqrt(-2 * Math.Log(share)));
        }

        if (share > 1 - Tail)
        {
            return -OfTail(Math.Sqrt(-2 * Math.Log(1 - share)));
        }

        var q = share - 0.5;
        var r = q * q;
        return ((((((((((A[0] * r) + A[1]) * r) + A[2]) * r) + A[3]) * r) + A[4]) * r) + A[5]) * q
            / ((((((((((B[0] * r) + B[1]) * r) + B[2]) * r) + B[3]) * r) + B[4]) * r) + 1);
    }

    /// <summary>As many at a time as the vector unit holds.</summary>
    internal static Vector<double> Of(Vector<double> share)
    {
        var q = share - new Vector<double>(0.5);
        var r = q * q;
        var middle = (((((((((((A[0] * r) + All(A[1])) * r) + All(A[2])) * r) + All(A[3])) * r) + All(A[4])) * r) + All(A[5])) * q)
            / (((((((((((B[0] * r) + All(B[1])) * r) + All(B[2])) * r) + All(B[3])) * r) + All(B[4])) * r) + Vector<double>.One));
        var end = Vector.Min(share, Vector<double>.One - share);
        if (Vector.GreaterThanOrEqualAll(end, All(Tail)))
        {
            return middle;
        }

        var t = Vector.SquareRoot(-2 * Vector.Log(end));
        var tail = (((((((((((C[0] * t) + All(C[1])) * t) + All(C[2])) * t) + All(C[3])) * t) + All(C[4])) * t) + All(C[5])))
            / (((((((((D[0] * t) + All(D[1])) * t) + All(D[2])) * t) + All(D[3])) * t) + Vector<double>.One));
        tail = Vector.ConditionalSelect(Vector.LessThan(q, Vector<double>.Zero), tail, -tail);
        return Vector.ConditionalSelect(Vector.LessThan(end, All(Tail)), tail, middle);
    }

    /// <summary>The share below a value: the logistic stand-in 1/(1 + e^(−1.5976x − 0.07056x³)), within 0.00014 (Page, Applied Statistics 26 (1977) 75, from memory).</summary>
    internal static double ShareBelow(double value) => 1 / (1 + Math.Exp((-1.5976 * value) - (0.07056 * value * value * value)));

    private static Vector<double> All(double value) => new(value);

    private static double OfTail(double q) =>
        ((((((((((C[0] * q) + C[1]) * q) + C[2]) * q) + C[3]) * q) + C[4]) * q) + C[5])
        / ((((((((D[0] * q) + D[1]) * q) + D[2]) * q) + D[3]) * q) + 1);
}
