using Duskwright.Light.Lamps;
using Duskwright.Light.Panes;

namespace Duskwright.Light.Tests.Panes;

public class PaneLightTests
{
    private static readonly PaneSheet Scattering = new(0.01, 0.01, 1, 1);

    // Source: Sumpner (1893), energy balance of a closed room: indirect mean E = Φρ/(A(1 − ρ)). For 0.06 × 0.04 × 0.05 m, 1 lm and ρ = 0.05 that is
    // 0.05 ÷ (0.0148 × 0.95) = 3.556188 lx; a pane that scatters all of it has L = E ÷ π.
    [Fact]
    public void A_pane_shows_the_even_light_of_a_closed_room()
    {
        var lamp = new LampInRoom(new LampLobe(1 / Math.PI, 2 * Math.PI / 3), 0.02, AtPane: false);
        var look = PaneLight.Of(new RoomBox(0.06, 0.04, 0.05, 0.05), [lamp], Scattering);
        Assert.Equal(3.556188 / Math.PI, look.MeanLuminance, 1e-5);
        Assert.Equal(1, look.HotSpotRatio, 1e-12);
    }

    [Fact]
    public void A_white_room_is_brighter_than_a_black_one()
    {
        var lamp = new LampInRoom(new LampLobe(0.3, 2), 0.02, AtPane: false);
        var black = PaneLight.Of(new RoomBox(0.05, 0.05, 0.04, 0.06), [lamp], Scattering);
        var white = PaneLight.Of(new RoomBox(0.05, 0.05, 0.04, 0.80), [lamp], Scattering);
        Assert.True(white.MeanLuminance > 10 * black.MeanLuminance);
    }

    [Theory]
    [InlineData(0.009, 0.02, true)]
    [InlineData(0.020, 1.0, false)]
    public void A_lamp_close_behind_clear_glass_shows_as_a_dot(double behindMetres, double haze, bool shows)
    {
        var lamp = new LampInRoom(new LampLobe(0.3, 2), behindMetres, AtPane: true);
        Assert.Equal(shows, PaneLight.Of(new RoomBox(0.05, 0.05, 0.04, 0.8), [lamp], new PaneSheet(0.012, 0.014, 0.9, haze)).DotShows);
    }
}
