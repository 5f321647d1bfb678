using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Format;
using Duskwright.Plan.Quantities;
using Duskwright.Proposals.Wiring;
using Duskwright.Study;
using Duskwright.Study.Results;

namespace Duskwright.Proposals.Tests.Wiring;

/// <summary>Houses of one switch that have a plus wire each and share their return.</summary>
public class CommonReturnTests
{
    // Kirchhoff, by hand: with houses 1 m apart on one return, each plus wire carries i over its own k metres, the return carries 4i, 3i, 2i and i over a metre each.
    // The farthest loses i·r·4 in its plus and i·r·(4 + 3 + 2 + 1) in the return. Common practice, no source.
    [Fact]
    public void A_shared_return_carries_the_sum_of_the_houses_beyond()
    {
        var study = TownStudy.Of(Row());
        var (ohmsPerMetre, joint) = (0.5488, 0.01);
        var plus = Enumerable.Range(1, 4).Select(k => new FeedPair(0, k, k, "cu-0.20")).ToItemList();
        var houses = Enumerable.Range(1, 4).Select(k => new FeedHouse($"h{k}", k)).ToItemList();
        var fed = study.FedBy([new SwitchFeed("A", plus, houses) { Return = new SharedReturn(Enumerable.Range(1, 4).Select(k => new FeedPair(k - 1, k, 1, "cu-0.20")).ToItemList(), houses) }]);
        var amps = study.Buildings.Average(b => b.Current!.Value);

        // Joints: each plus has two, the return one in each house and one at the beginning of each metre, with the current it carries.
        var expected = amps * ((ohmsPerMetre * (4 + 10)) + (joint * (2 + 1 + 10)));
        Assert.Equal(expected, fed[3].DropVolts, expected * 0.02);
        Assert.Equal(fed.Select(f => f.DropVolts).Order(), fed.Select(f => f.DropVolts));
    }

    // Where every house has a minus wire of its own as well, a shared return changes nothing.
    [Fact]
    public void A_return_that_is_not_shared_is_a_pair()
    {
        var study = TownStudy.Of(Row());
        var pairs = Enumerable.Range(1, 4).Select(k => new FeedPair(0, k, k, "cu-0.20")).ToItemList();
        var houses = Enumerable.Range(1, 4).Select(k => new FeedHouse($"h{k}", k)).ToItemList();
        var own = study.FedBy([new SwitchFeed("A", pairs, houses)]);
        var returned = study.FedBy([new SwitchFeed("A", pairs, houses) { Return = new SharedReturn(pairs, houses) }]);
        Assert.All(own.Zip(returned), x => Assert.Equal(x.First.DropVolts, x.Second.DropVolts, 9));
    }

    [Fact]
    public void A_common_return_lies_between_own_pairs_and_a_trunk()
    {
        var study = TownStudy.Of(TownJson.Read(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "examples", "saltmarrow.json"))).Town!);
        var ways = WiringWays.Of(study, TestContext.Current.CancellationToken).Ways!;
        var returns = CommonReturn.Of(study, ways);
        Assert.NotEmpty(returns);
        Assert.All(returns, r =>
        {
            var (own, trunk) = (ways.OwnPairs.Groups.Single(g => g.SwitchGroup == r.SwitchGroup), ways.Trunks.Groups.Single(g => g.SwitchGroup == r.SwitchGroup));
            Assert.Equal((own.WireMetres + trunk.WireMetres) / 2, r.WireMetres, 9);
            Assert.Equal((own.Joints + trunk.Joints) / 2, r.Joints);
            Assert.Equal((own.OutOfReach + trunk.OutOfReach) / 2, r.OutOfReach);
            Assert.Equal(trunk.Darkened, r.Darkened);
            Assert.Contains("m of wire instead of", r.Words(5), StringComparison.Ordinal);
        });
    }

    private static Town Row() => new()
    {
        Name = "Row",
        Supplies = [new Supply { Id = "1", Part = "LR6", Series = 3 }],
        SwitchGroups = [new SwitchGroup { Id = "A", Supply = "1" }],
        Buildings = Enumerable.Range(1, 4).Select(k => new Building
        {
            Name = $"House {k}",
            Id = $"h{k}",
            Leds = 1,
            SwitchGroup = "A",
            Resistor = ResistorChoice.Of(Resistance.FromOhms(1000)),
            PairLength = Length.FromMetres(k),
        }).ToItemList(),
    };
}
