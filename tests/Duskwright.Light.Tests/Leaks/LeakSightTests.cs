using Duskwright.Light.Leaks;

namespace Duskwright.Light.Tests.Leaks;

public class LeakSightTests
{
    // Source: closed form (optical density D = −lg T): 0.6 passes 10^−0.6 = 0.2511886 of the light, two coats 0.0630957.
    [Theory]
    [InlineData(0, 0.02)]
    [InlineData(1, 0.00502377)]
    [InlineData(2, 0.00126191)]
    public void Each_coat_of_black_adds_its_density(int coats, double passes) => Assert.Equal(passes, Covering.Card.After(coats), 1e-8);

    // Source: by hand. In 30 lx a wall of 0.20 hides 0.02 × 0.20 × 30 = 0.12 lm/m². Card passes 0.02, so 6 lx inside stay hidden unpainted,
    // 6 × 10^0.6 = 23.89 lx under one coat, 6 × 10^1.2 = 95.09 lx under two.
    [Theory]
    [InlineData(5.99, 0)]
    [InlineData(6.01, 1)]
    [InlineData(23.8, 1)]
    [InlineData(24.0, 2)]
    [InlineData(95.0, 2)]
    [InlineData(95.2, 3)]
    public void A_brighter_room_needs_more_coats(double insideLux, int coats) => Assert.Equal(coats, LeakSight.CoatsUntilUnseen(Covering.Card, insideLux, 30));

    [Fact]
    public void A_darker_hall_needs_more_coats_and_paper_more_than_balsa_and_balsa_more_than_card() =>
        Gen.Select(Gen.Double[1, 5000], Gen.Double[1, 300]).Sample((inside, room) =>
        {
            var card = LeakSight.CoatsUntilUnseen(Covering.Card, inside, room);
            return LeakSight.CoatsUntilUnseen(Covering.Card, inside, room / 2) >= card
                && LeakSight.CoatsUntilUnseen(Covering.Balsa, inside, room) >= card
                && LeakSight.CoatsUntilUnseen(Covering.Paper, inside, room) >= LeakSight.CoatsUntilUnseen(Covering.Balsa, inside, room);
        });

    // Source: by hand. A minute of arc at 0.6 m is 0.1745 mm; 30 lx on 0.20 is 1.9099 cd/m², of which a fiftieth is 0.038197: at 38.197 cd/m² inside a thousandth of that width.
    [Fact]
    public void A_seam_before_a_bright_room_must_be_closed_to_a_hair() =>
        Assert.Equal(0.17453e-6, LeakSight.WidestUnseenSeam(38.197, 30, 0.6), 1e-11);
}
