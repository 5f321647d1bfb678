using Duskwright.Light.Perception;

namespace Duskwright.Light.Tests.Perception;

public class LightnessTests
{
    // Source: CIE 15, L* = 116·∛Y − 16: half of the white by hand, 116 × 0.793701 − 16 = 76.069; a third 116 × 0.693361 − 16 = 64.430.
    [Theory]
    [InlineData(1, 100)]
    [InlineData(0.5, 76.069)]
    [InlineData(1.0 / 3.0, 64.430)]
    [InlineData(0, 0)]
    public void Half_the_light_looks_three_quarters_as_light(double share, double lightness) =>
        Assert.Equal(lightness, Lightness.OfShare(share), 0.001);

    // Source: CIE 15: below (6/29)³ the curve is straight with slope 903.3 (29³/27 = 903.296).
    [Fact]
    public void Near_black_lightness_is_straight() => Assert.Equal(0.903296, Lightness.OfShare(0.001), 0.000001);

    [Fact]
    public void The_share_of_a_lightness_has_that_lightness() =>
        Gen.Double[0, 4].Sample(share => Math.Abs(Lightness.ShareOf(Lightness.OfShare(share)) - share) < 1e-12);
}
