using Duskwright.Light.Colour;

namespace Duskwright.Light.Tests.Colour;

public class ColourDifferenceTests
{
    private static readonly Chromaticity Daylight = new(0.3127, 0.3290);
    private static readonly Chromaticity Lamp = new(0.44757, 0.40745);

    // Source: by hand, CIE 15: x/y of the lamp over the daylight's 1.15573, z/y 0.32682; 500·(∛1.15573 − 1) and 200·(1 − ∛0.32682).
    [Fact]
    public void Lamplight_beside_daylight_lies_far_to_the_yellow_and_a_little_to_the_red()
    {
        var (a, b) = ColourDifference.Place(Lamp, Daylight);
        Assert.Equal(24.71, a, 0.01);
        Assert.Equal(62.25, b, 0.01);
    }

    [Fact]
    public void What_looks_white_has_no_colour_and_differs_from_itself_by_nothing()
    {
        Assert.Equal(0, ColourDifference.Between(ColourDifference.Lamplight, ColourDifference.Lamplight, ColourDifference.Lamplight));
        var (a, b) = ColourDifference.Place(Lamp, Lamp);
        Assert.Equal((0, 0), (Math.Round(a, 12), Math.Round(b, 12)));
    }

    // Source: perception-thresholds of colour-science/colour (JND_CIE1976 2.3; 3.5 to 5 seen by anyone).
    [Theory]
    [InlineData(2700, 2720, false)]
    [InlineData(2700, 3000, true)]
    public void A_bag_of_2700_K_beside_a_bag_of_3000_K_is_seen_and_twenty_kelvins_are_not(double one, double other, bool seen)
    {
        var apart = ColourDifference.Between(
            Spectrum.Glowing(one).Tristimulus().Chromaticity, Spectrum.Glowing(other).Tristimulus().Chromaticity, ColourDifference.Lamplight);
        Assert.Equal(seen, apart > ColourDifference.Plain);
        Assert.Equal(seen, apart > ColourDifference.Noticed);
    }
}
