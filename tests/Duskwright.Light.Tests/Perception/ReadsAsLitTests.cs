using Duskwright.Light.Perception;

namespace Duskwright.Light.Tests.Perception;

public class ReadsAsLitTests
{
    // Source: Bonato and Gilchrist, Perception 23 (1994) 991: 1.7 times white. By hand: white in 300 lx has 0.8 × 300 ÷ π = 76.39 cd/m², times 1.7 = 129.87.
    [Fact]
    public void In_a_lit_kitchen_a_pane_needs_a_hundred_and_thirty_candelas_a_square_metre()
    {
        Assert.False(ReadsAsLit.Of(129.8, 300));
        Assert.True(ReadsAsLit.Of(129.9, 300));
    }

    [Fact]
    public void Twice_the_pane_stands_twice_the_room_light() =>
        Gen.Double[0.01, 1000].Sample(pane => Math.Abs(ReadsAsLit.RoomLuxLimit(2 * pane) - (2 * ReadsAsLit.RoomLuxLimit(pane))) < 1e-9 * pane);
}
