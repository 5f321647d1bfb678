using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Findings;

namespace Duskwright.Study.Tests.Findings;

public class WireInSightTests
{
    // By hand: a house 60 mm wide about (100, 100) and its hole at (200, 100): 30 mm lie under it, 70 in sight. A shed from 140 to 195 mm, 10 mm behind the way, hides most of that.
    [Fact]
    public void A_pair_in_sight_is_told_with_its_length_and_the_house_it_could_be_led_under()
    {
        var plain = Assert.Single(Told(200));
        Assert.Equal(0.07, plain.Figures[0].Value, 1e-9);
        Assert.Equal(Subject.Building("inn"), plain.Subject);
        var beside = Assert.Single(Told(200, House("Shed", 167.5, 140, 55)));
        Assert.Equal(0.07, beside.Figures[0].Value, 1e-9);
        Assert.Contains("led under Shed it shows for", beside.Text, StringComparison.Ordinal);
        Assert.InRange(beside.Figures[1].Value, 0.01, 0.035);
        Assert.DoesNotContain("led under", Assert.Single(Told(200, House("Shed", 167.5, 140, 55) with { State = BuildingState.Fixed })).Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(145, false)]
    [InlineData(149, false)]
    [InlineData(151, true)]
    public void Two_centimetres_in_sight_are_told_and_less_is_not(double hole, bool told) => Assert.Equal(told, Told(hole).Count == 1);

    private static List<Finding> Told(double hole, params Building[] others) => [.. TownStudy.Of(new Town
    {
        Name = "Sight",
        Board = new Board
        {
            Width = Length.FromMillimetres(400),
            Depth = Length.FromMillimetres(300),
            FeedHoles = [new FeedHole { Id = "h", At = Point.At(hole, 100) }],
            Bank = new Bank { At = Point.At(0, 0) },
        },
        Buildings = [House("Inn", 100, 100, 60) with { Leds = 1, FeedHole = "h" }, .. others],
    }).Findings.Where(f => f.Rule == "wire-in-sight")];

    private static Building House(string name, double x, double y, double size) => new()
    {
        Name = name,
        Place = new Placement { At = Point.At(x, y), Width = Length.FromMillimetres(size), Depth = Length.FromMillimetres(60) },
    };
}
