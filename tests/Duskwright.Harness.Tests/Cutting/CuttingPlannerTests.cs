using System.Collections.Immutable;
using Duskwright.Harness.Cutting;

namespace Duskwright.Harness.Tests.Cutting;

public class CuttingPlannerTests
{
    // By hand: 7 + 3, 6 + 4 and 5 + 5 metres fill three reels of 10 m to the end; 30 m do not come from two.
    [Fact]
    public void Leads_that_fill_three_reels_to_the_end_take_three()
    {
        var plan = Plan(new CuttingProblem([7000, 6000, 5000, 5000, 4000, 3000], [], 10_000));
        Assert.Equal((3, 3, true), (plan.NewReels, plan.NewAtLeast, plan.Proven));
        Assert.All(plan.Reels, r => Assert.Equal(0, r.LeftMillimetres));
    }

    // By hand: 18 m would come from two reels of 10 m, but no two leads of 6 m come from one.
    [Fact]
    public void A_lead_is_never_pieced_together_so_three_of_six_metres_take_three_reels_of_ten() =>
        Assert.Equal(3, Plan(new CuttingProblem([6000, 6000, 6000], [], 10_000)).NewAtLeast);

    // By hand: 4 m and 3 m come from the reels of 4 m and 3 m to the end; the 20 m reel stays whole and nothing is bought.
    [Fact]
    public void The_short_reels_on_hand_are_used_up_before_a_long_one_is_begun()
    {
        var plan = Plan(new CuttingProblem([4000, 3000], [20_000, 3000, 4000], 25_000));
        Assert.Equal((0, 7000L, 7000L), (plan.NewReels, plan.BegunMillimetres, plan.BegunAtLeast));
        Assert.Equal([1, 2], plan.Reels.Select(r => r.OnHand!.Value).Order());
    }

    [Fact]
    public void A_lead_longer_than_any_reel_is_named_and_cut_from_none()
    {
        var plan = Plan(new CuttingProblem([12_000, 11_000, 10_000], [11_500], 10_000));
        Assert.Equal([0], plan.TooLong);
        Assert.Equal([1, 2], plan.Reels.SelectMany(r => r.Leads).Order());
    }

    // Exact by trying every reel for every lead.
    [Fact]
    public void No_way_to_cut_small_jobs_takes_fewer_reels_or_begins_less()
    {
        var random = new Random(5);
        for (var turn = 0; turn < 25; turn++)
        {
            var problem = new CuttingProblem(
                [.. Enumerable.Range(0, 6).Select(_ => random.Next(2, 9) * 500)], [.. Enumerable.Range(0, turn % 3).Select(_ => random.Next(3, 11) * 500)], 5000);
            var exact = TryEverything(problem);
            var plan = Plan(problem);
            Assert.Equal(exact, (plan.NewReels, plan.BegunMillimetres));
            Assert.True(plan.Proven);
        }
    }

    // Laws of cutting: every lead once, nothing from beyond a reel's end, never fewer reels than the sum of the leads needs, and the bound never above the plan.
    [Fact]
    public void What_is_cut_and_what_is_left_are_what_the_reels_held() =>
        Gen.Select(Gen.Int[1, 2500].Array[1, 40], Gen.Int[500, 6000].Array[0, 4]).Sample((leads, onHand) =>
        {
            var plan = Plan(new CuttingProblem([.. leads], [.. onHand], 10_000));
            Assert.Equal(Enumerable.Range(0, leads.Length), plan.Reels.SelectMany(r => r.Leads).Order());
            Assert.All(plan.Reels, r =>
            {
                Assert.True(r.LeftMillimetres >= 0);
                Assert.Equal(r.OnHand is { } which ? onHand[which] : 10_000, r.Millimetres);
                Assert.Equal(r.Millimetres, r.LeftMillimetres + r.Leads.Sum(l => leads[l]));
            });
            Assert.Equal(plan.Reels.Count(r => r.OnHand is not null), plan.Reels.Where(r => r.OnHand is not null).Select(r => r.OnHand).Distinct().Count());
            Assert.InRange(plan.NewAtLeast, Math.Max(0, Math.Ceiling((leads.Sum() - onHand.Sum()) / 10_000.0)), plan.NewReels);
            Assert.True(plan.BegunAtLeast <= plan.BegunMillimetres);
        }, iter: 8, threads: 1);

    // Lengths to the millimetre, more kinds of lead than are weighed millimetre by millimetre: 25 m reels for 240 pairs.
    [Fact]
    public void A_great_town_takes_as_few_reels_as_its_metres_need()
    {
        var random = new Random(3);
        ImmutableArray<int> leads = [.. Enumerable.Range(0, 240).SelectMany(_ => Enumerable.Repeat(random.Next(400, 2600), 2))];
        var plan = Plan(new CuttingProblem(leads, [], 25_000));
        Assert.Equal((int)Math.Ceiling(leads.Sum() / 25_000.0), plan.NewReels);
        Assert.True(plan.Proven);
    }

    private static CuttingPlan Plan(CuttingProblem problem) => CuttingPlanner.Plan(problem, TestContext.Current.CancellationToken);

    private static (int New, long Begun) TryEverything(CuttingProblem problem)
    {
        var (leads, onHand) = (problem.LeadsMillimetres, problem.OnHandMillimetres);
        var reels = onHand.Concat(Enumerable.Repeat(problem.NewMillimetres, leads.Length)).ToArray();
        var best = (New: int.MaxValue, Begun: long.MaxValue);
        Try(0, [.. reels], 0);
        return best;

        void Try(int lead, int[] left, int begunNew)
        {
            if (lead == leads.Length)
            {
                var begun = Enumerable.Range(0, onHand.Length).Where(r => left[r] < onHand[r]).Sum(r => (long)onHand[r]);
                best = (begunNew, begun).CompareTo(best) < 0 ? (begunNew, begun) : best;
                return;
            }

            // New reels are alike: they are begun one after another.
            for (var r = 0; r < Math.Min(left.Length, onHand.Length + begunNew + 1); r++)
            {
                if (left[r] >= leads[lead])
                {
                    left[r] -= leads[lead];
                    Try(lead + 1, left, Math.Max(begunNew, r - onHand.Length + 1));
                    left[r] += leads[lead];
                }
            }
        }
    }
}
