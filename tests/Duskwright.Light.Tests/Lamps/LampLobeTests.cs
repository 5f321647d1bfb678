using Duskwright.Light.Lamps;

namespace Duskwright.Light.Tests.Lamps;

public class LampLobeTests
{
    // Source: integral of I·cosᵐ over the half space (closed form); at 120° the lobe is Lambert's and Φ = π·I.
    [Theory]
    [InlineData(1, 30, 0.2992887)]
    [InlineData(1, 60, 1.0798)]
    [InlineData(1, 90, 2.094395)]
    [InlineData(1, 120, 3.141593)]
    [InlineData(0.032, 60, 0.0345536)]
    public void A_lamp_sends_out_the_integral_of_its_lobe(double candelas, double degrees, double lumens) =>
        Assert.Equal(lumens, new LampLobe(candelas, degrees * Math.PI / 180).Lumens, lumens * 1e-5);

    [Fact]
    public void Half_the_viewing_angle_has_half_the_intensity() =>
        Gen.Double[0.1, 3].Sample(angle => Math.Abs(Math.Pow(Math.Cos(angle / 2), new LampLobe(1, angle).Exponent) - 0.5) < 1e-9);
}
