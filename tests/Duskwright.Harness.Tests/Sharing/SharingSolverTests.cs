using Duskwright.Harness.Sharing;

namespace Duskwright.Harness.Tests.Sharing;

public class SharingSolverTests
{
    // By hand: 6 + 4 and 5 + 5 fill two packs of 10 exactly; one pack of 10 cannot hold 20.
    [Fact]
    public void Four_houses_fill_two_packs_exactly_and_that_is_proved()
    {
        var answer = SharingSolver.Solve(Of(10, 6, 6, 5, 5, 4), new SharingSettings(), TestContext.Current.CancellationToken);
        Assert.Equal((2, 2, true), (answer.PacksUsed, answer.PacksLowerBound, answer.Proven));
        Assert.True(Loads(answer, [6, 5, 5, 4]).All(load => load == 10));
    }

    [Fact]
    public void Neighbours_share_a_pack()
    {
        var loads = new[] { 0.0, 0.1, 0.9, 1.0 }.Select((x, i) => new SharedLoad($"{i}", 5, x, 0)).ToArray();
        var answer = SharingSolver.Solve(new SharingProblem([.. loads], [new("1", 10), new("2", 10)]), new SharingSettings(), TestContext.Current.CancellationToken);
        Assert.Equal(answer.PackOf[0], answer.PackOf[1]);
        Assert.Equal(answer.PackOf[2], answer.PackOf[3]);
    }

    [Fact]
    public void A_house_that_is_fixed_to_a_pack_stays_there()
    {
        var loads = new[] { new SharedLoad("a", 5, 0, 0, PinnedPack: 1), new SharedLoad("b", 5, 0, 0) };
        Assert.Equal(1, SharingSolver.Solve(new SharingProblem([.. loads], [new("1", 10), new("2", 10)]), new SharingSettings(), TestContext.Current.CancellationToken).PackOf[0]);
    }

    [Fact]
    public void A_house_that_is_more_than_any_pack_gives_is_named() =>
        Assert.Equal("1 takes 12 mA, more than any pack may give", SharingSolver.Solve(new SharingProblem([new("1", 12_000, 0, 0)], [new("1", 10_000)]), new SharingSettings(), TestContext.Current.CancellationToken).Infeasible);

    [Fact]
    public void Too_few_packs_are_said_with_the_sums() =>
        Assert.Equal("The loads take 18 mA and cannot be shared over 1 packs of 10 mA in all", SharingSolver.Solve(Of(10_000, 1, 9_000, 9_000), new SharingSettings(), TestContext.Current.CancellationToken).Infeasible);

    // By hand: three rows of four houses, a pack to each row, whatever pack a house of a row is pinned to.
    [Theory]
    [InlineData(0, 1)]
    [InlineData(2, 0)]
    [InlineData(1, 2)]
    public void Each_row_of_houses_has_a_pack_and_pins_decide_which(int packOfBack, int packOfFront)
    {
        var loads = Enumerable.Range(0, 12).Select(i => new SharedLoad($"{i}", 5, 0.1 * (i % 4), i / 4, i == 0 ? packOfFront : i == 11 ? packOfBack : null));
        var answer = SharingSolver.Solve(new SharingProblem([.. loads], [new("1", 20), new("2", 20), new("3", 20)]), new SharingSettings(), TestContext.Current.CancellationToken);
        Assert.All(answer.PackOf[..4], p => Assert.Equal(packOfFront, p));
        Assert.All(answer.PackOf[8..], p => Assert.Equal(packOfBack, p));
        Assert.Single(answer.PackOf[4..8].Distinct());
        Assert.Equal((3, true), (answer.PacksUsed, answer.Proven));
    }

    [Fact]
    public void A_pinned_house_leaves_less_of_its_pack_and_no_pack_gives_more_than_it_may()
    {
        for (var seed = 0; seed < 3; seed++)
        {
            var random = new Random(seed);
            var loads = Enumerable.Range(0, 30).Select(i => new SharedLoad($"{i}", random.Next(5_000, 30_000), random.NextDouble(), random.NextDouble(), i < 4 ? i % 2 : null)).ToList();
            var packs = Enumerable.Range(0, 12).Select(i => new PackSlot($"{i}", i % 3 == 0 ? 90_000 : 70_000)).ToList();
            var answer = SharingSolver.Solve(new SharingProblem([.. loads], [.. packs]), new SharingSettings(), TestContext.Current.CancellationToken);
            Assert.All(answer.PackOf.Zip(loads).GroupBy(x => x.First), g => Assert.True(g.Sum(x => x.Second.Microamperes) <= packs[g.Key].CapacityMicroamperes));
            Assert.All(loads.Zip(answer.PackOf).Where(x => x.First.PinnedPack is not null), x => Assert.Equal(x.First.PinnedPack, x.Second));
            Assert.Equal(answer.PacksUsed, answer.PackOf.Distinct().Count());
            Assert.InRange(answer.PacksLowerBound, 1, answer.PacksUsed);
        }
    }

    [Fact]
    public void The_same_question_has_the_same_answer()
    {
        var problem = Of(100, 8, [.. Enumerable.Range(0, 20).Select(i => 11 + (i * 7 % 23))]);
        Assert.Equal(SharingSolver.Solve(problem, new SharingSettings(), TestContext.Current.CancellationToken).PackOf, SharingSolver.Solve(problem, new SharingSettings(), TestContext.Current.CancellationToken).PackOf);
    }

    private static SharingProblem Of(int capacity, int packs, params int[] loads) => new(
        [.. loads.Select((l, i) => new SharedLoad($"{i}", l, i * 0.1, 0))],
        [.. Enumerable.Range(1, packs).Select(p => new PackSlot($"{p}", capacity))]);

    private static IEnumerable<int> Loads(SharingAnswer answer, int[] loads) =>
        loads.Select((load, i) => (load, Pack: answer.PackOf[i])).GroupBy(x => x.Pack).Select(g => g.Sum(x => x.load));
}
