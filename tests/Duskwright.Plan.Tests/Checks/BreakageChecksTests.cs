using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;

namespace Duskwright.Plan.Tests.Checks;

/// <summary>What the maker says of how often things break.</summary>
public class BreakageChecksTests
{
    [Fact]
    public void How_often_a_thing_breaks_is_said_once()
    {
        var joint = new Breakage { What = Breaks.LampJoint, How = HowOften.Often };
        Assert.Empty(TownChecks.Of(new Town { Name = "Nowhere", Breakages = [joint, joint with { What = Breaks.PairJoint }] }));
        Assert.Equal("breakages[1].what", Assert.Single(TownChecks.Of(new Town { Name = "Nowhere", Breakages = [joint, joint with { How = HowOften.Seldom }] })).Path);
    }
}
