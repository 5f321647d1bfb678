using Duskwright.Light.Perception;

namespace Duskwright.Light.Tests.Perception;

public class BareLampTests
{
    // Common practice, no source: 15 to 25 mm from a frosted pane; a clear one shows the lamp from any distance.
    [Theory]
    [InlineData(0.90, 0.0149, true)]
    [InlineData(0.90, 0.0151, false)]
    [InlineData(0.02, 0.0300, true)]
    [InlineData(1.00, 0.0050, false)]
    public void A_lamp_close_behind_its_pane_shows_as_a_dot(double haze, double behindMetres, bool shows) =>
        Assert.Equal(shows, BareLamp.ShowsAsDot(haze, behindMetres, hotSpotRatio: 2));
}
