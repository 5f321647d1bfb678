using Duskwright.Harness.Sharing;

namespace Duskwright.Harness.Tests.Sharing;

public class BinPackingTests
{
    // By hand: loads of 6, 6, 6 on packs of 10 need three packs, though 18 ÷ 20 would fit two: no two of them share one.
    [Fact]
    public void Loads_above_half_a_pack_each_need_one_of_their_own()
    {
        var answer = Solve([6, 6, 6], 10, 4);
        Assert.Equal((3, true), (answer.PacksUsed, answer.Proven));
    }

    // A law of packing: no pack above its capacity, and never fewer packs than the sum of the loads needs.
    [Fact]
    public void No_pack_is_overloaded_and_no_more_are_used_than_said() =>
        Gen.Int[1, 60].Array[1, 12].Sample(sizes =>
        {
            var answer = Solve(sizes, 100, sizes.Length);
            var perPack = answer.PackOf.Select((p, i) => (Pack: p, Load: sizes[i])).GroupBy(x => x.Pack).ToList();
            return perPack.Count == answer.PacksUsed
                && perPack.All(g => g.Sum(x => x.Load) <= 100)
                && answer.PacksLowerBound <= answer.PacksUsed
                && answer.PacksUsed >= Math.Ceiling(sizes.Sum() / 100.0);
        }, iter: 20);

    [Fact]
    public void A_pinned_house_draws_its_neighbours_only_to_packs_in_use()
    {
        var loads = new[] { 0.0, 0.1, 0.9, 1.0 }.Select((x, i) => new SharedLoad($"{i}", 5, x, 0, PinnedPack: i == 0 ? 0 : null));
        var answer = SharingSolver.Solve(
            new SharingProblem([.. loads], [new("1", 10), new("2", 15), new("3", 15)]), new SharingSettings(), TestContext.Current.CancellationToken);
        Assert.Equal(0, answer.PackOf[0]);
        Assert.Equal(answer.PackOf[0], answer.PackOf[1]);
        Assert.Equal(answer.PackOf[2], answer.PackOf[3]);
        Assert.Equal(2, answer.PacksUsed);
    }

    private static SharingAnswer Solve(int[] sizes, int capacity, int packs) => SharingSolver.Solve(
        new SharingProblem(
            [.. sizes.Select((size, i) => new SharedLoad($"{i}", size, i, 0))],
            [.. Enumerable.Range(0, packs).Select(i => new PackSlot($"{i}", capacity))]),
        new SharingSettings(), TestContext.Current.CancellationToken);
}
