namespace Duskwright.Faults.Testing;

/// <summary>The standard normal distribution.</summary>
internal static class Normal
{
    /// <summary>The share below a value: Abramowitz and Stegun, Handbook of Mathematical Functions, formula 26.2.17, within 7.5e-8.</summary>
    internal static double ShareBelow(double value)
    {
        var t = 1 / (1 + (0.2316419 * Math.Abs(value)));
        var density = Math.Exp(-0.5 * value * value) / Math.Sqrt(2 * Math.PI);
        var above = density * t * (0.319381530 + (t * (-0.356563782 + (t * (1.781477937 + (t * (-1.821255978 + (t * 1.330274429))))))));
        return value >= 0 ? 1 - above : above;
    }
}
