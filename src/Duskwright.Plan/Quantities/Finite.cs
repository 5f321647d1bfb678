using System.Runtime.CompilerServices;

namespace Duskwright.Plan.Quantities;

/// <summary>The one range check that every quantity shares: a value is a finite number.</summary>
internal static class Finite
{
    internal static double Checked(double value, string unit, [CallerArgumentExpression(nameof(value))] string name = "") =>
        double.IsFinite(value)
            ? value
            : throw new ArgumentOutOfRangeException(name, value, $"A value in {unit} must be a finite number.");
}
