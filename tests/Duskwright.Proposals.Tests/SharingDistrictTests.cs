using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;

namespace Duskwright.Proposals.Tests;

public class SharingDistrictTests
{
    [Fact]
    public void A_sharing_with_more_to_spare_takes_no_fewer_packs_and_says_so_with_proof()
    {
        var town = Rows();
        var (tight, spare) = (SharingProposal.Of(town, Usual, 0, TestContext.Current.CancellationToken), SharingProposal.Of(town, Usual, 1, TestContext.Current.CancellationToken));
        Assert.True(tight.Proven && spare.Proven);
        Assert.True(spare.PacksUsed > tight.PacksUsed, $"{spare.PacksUsed} and {tight.PacksUsed}");
    }

    [Fact]
    public void Two_rows_a_metre_apart_have_at_most_one_pack_in_common()
    {
        var town = Rows();
        var shared = SharingProposal.Of(town, Usual, cancel: TestContext.Current.CancellationToken).Edit!.Apply(town);
        var supply = shared.SwitchGroups.ToDictionary(g => g.Id, g => g.Supply);

        // By hand: each row fills whole packs, and what is left of both can need one between them.
        Assert.InRange(shared.Buildings.GroupBy(b => supply[b.SwitchGroup!]).Count(pack => pack.Select(b => b.Place!.At.Y).Distinct().Count() > 1), 0, 1);
    }

    private static Supply Usual => new() { Id = "1", Part = "LR6", Series = 3 };

    // Two rows of sixty houses of three lamps, one behind the other.
    private static Town Rows() => new()
    {
        Name = "Rows",
        Board = new Board { Width = Length.FromMillimetres(3000), Depth = Length.FromMillimetres(1500), Bank = new Bank { At = Point.At(10, 10) } },
        Buildings = Enumerable.Range(0, 120).Select(i => new Building { Name = $"H{i}", Leds = 3, Place = new Placement { At = Point.At(20 * (i % 60), i < 60 ? 100 : 1400) } }).ToItemList(),
    };
}
