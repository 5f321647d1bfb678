using System.Numerics;
using Duskwright.Circuits.Tolerance;

namespace Duskwright.Circuits.Tests.Tolerance;

public sealed class NormalQuantileTests
{
    // The table of the standard normal distribution, four decimals, from memory.
    [Theory]
    [InlineData(0.5, 0)]
    [InlineData(0.8413, 1)]
    [InlineData(0.95, 1.6449)]
    [InlineData(0.975, 1.9600)]
    [InlineData(0.99, 2.3263)]
    [InlineData(0.999, 3.0902)]
    public void The_normal_table_is_met_on_both_sides(double share, double value)
    {
        Assert.Equal(value, NormalQuantile.Of(share), 2e-4);
        Assert.Equal(-value, NormalQuantile.Of(1 - share), 2e-4);
    }

    [Fact]
    public void Values_side_by_side_are_those_one_by_one() =>
        Gen.Double[1e-6, 1 - 1e-6].Array[Vector<double>.Count].Sample(shares =>
        {
            var values = NormalQuantile.Of(new Vector<double>(shares));
            return shares.Select((s, lane) => Math.Abs(values[lane] - NormalQuantile.Of(s))).All(off => off < 1e-12);
        });

    [Fact]
    public void A_block_of_draws_hits_every_strip_of_every_dimension_once()
    {
        const int Draws = 50;
        var draws = new StratifiedDraws(Draws, 9, 3);
        for (var dimension = 0; dimension < 9; dimension++)
        {
            var strips = Enumerable.Range(0, Draws).Select(d => draws.Normal(d, dimension)).Order().ToList();
            Assert.All(Enumerable.Range(1, Draws - 1), strip => Assert.InRange(NormalQuantile.Of(strip / (double)Draws), strips[strip - 1], strips[strip]));
        }

        // Two dimensions in orders of their own: 50 pairs of no correlation scatter by 1/√49 about it (five deviations).
        var product = Enumerable.Range(0, Draws).Average(d => draws.Normal(d, 0) * draws.Normal(d, 1));
        Assert.InRange(product, -5 / Math.Sqrt(Draws - 1), 5 / Math.Sqrt(Draws - 1));
    }

    [Fact]
    public void A_share_of_many_values_is_found_as_by_sorting_them() =>
        Gen.Double[-1, 1].Array[1, 300].Sample(values =>
        {
            var sorted = values.Order().ToArray();
            double At(double share) => sorted[Math.Min(sorted.Length - 1, (int)(share * sorted.Length))];
            var found = Quantiles.Of(values);
            return found.Low == At(0.05) && found.Likely == At(0.5) && found.High == At(0.95);
        });
}
