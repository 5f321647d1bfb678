using Duskwright.Light.Lamps;
using Duskwright.Light.Perception;

namespace Duskwright.Light.Tests.Lamps;

public class WorkedExamplesTests
{
    // Source: half-intensity definition of the viewing angle, m = ln 0.5 ÷ ln cos(half angle), closed form to seven digits.
    [Theory]
    [InlineData(60, 4.818842)]
    [InlineData(140, 0.6460588)]
    public void The_exponent_of_a_lobe_follows_from_its_viewing_angle(double degrees, double exponent) =>
        Assert.Equal(exponent, new LampLobe(1, degrees * Math.PI / 180).Exponent, exponent * 1e-6);

    // Source: definition of the candela: a lamp of 1 cd all round sends out 4π lm.
    [Fact]
    public void A_lamp_that_shines_all_round_sends_out_four_pi_lumens_a_candela() =>
        Assert.Equal(12.56637, new LampLobe(1, 2 * Math.PI).Lumens, 1e-5);

    // Source: Bonato and Gilchrist, Perception 23 (1994) 991: a surface looks luminous from 1.7 times white; exactly there it still does.
    [Fact]
    public void A_pane_reads_as_lit_up_to_its_room_light_and_not_above()
    {
        var limit = ReadsAsLit.RoomLuxLimit(10);
        Assert.True(ReadsAsLit.Of(10, limit * 0.999));
        Assert.True(ReadsAsLit.Of(10, limit));
        Assert.False(ReadsAsLit.Of(10, limit * 1.001));
    }
}
