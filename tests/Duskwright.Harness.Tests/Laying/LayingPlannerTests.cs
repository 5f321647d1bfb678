using System.Collections.Immutable;
using Duskwright.Harness.Laying;
using Duskwright.Harness.Routes;

namespace Duskwright.Harness.Tests.Laying;

public class LayingPlannerTests
{
    [Fact]
    public void A_pair_that_runs_where_a_neighbour_will_stand_is_pulled_before_that_neighbour_is_set_down()
    {
        // B stands over the hole of C, A over that of B.
        var order = LayingPlanner.Order(new LayingProblem([House("A", 0, 1), House("B", 1, 2), House("C", 2, 9)]));
        Assert.Equal(["A", "B", "C"], Set(LayingPlanner.Order(new LayingProblem([House("A", 0), House("B", 1), House("C", 2)]))));
        Assert.Equal(["A", "B", "C"], Set(order));
        Assert.Equal(["C", "B", "A"], Set(LayingPlanner.Order(new LayingProblem([House("A", 0), House("B", 1, 0), House("C", 2, 1)]))));
        Assert.Equal(["B"], order.Steps[0].Because);
        Assert.Empty(order.Knots);
    }

    [Fact]
    public void A_neighbour_that_stands_loose_comes_out_once_for_all_pairs_under_it_and_goes_back()
    {
        var order = LayingPlanner.Order(new LayingProblem([House("Inn", 0) with { Stands = Stands.Loose }, House("A", 1, 0), House("B", 2), House("C", 3, 0)]));
        Assert.Equal(
            [(LayingAct.TakeOut, "Inn"), (LayingAct.SetDown, "A"), (LayingAct.SetDown, "C"), (LayingAct.PutBack, "Inn"), (LayingAct.SetDown, "B")],
            order.Steps.Select(s => (s.Act, s.House)));
    }

    [Fact]
    public void Two_houses_over_each_others_holes_are_undone_by_pulling_one_pair_first()
    {
        var order = LayingPlanner.Order(new LayingProblem([House("A", 0, 1), House("B", 1, 0)]));
        var knot = Assert.Single(order.Knots);
        Assert.Equal(["A", "B"], knot.Houses);
        Assert.Equal(["A"], knot.PulledFirst);
        Assert.Equal([(LayingAct.PullFirst, "A"), (LayingAct.SetDown, "B"), (LayingAct.SetDown, "A")], order.Steps.Select(s => (s.Act, s.House)));
    }

    [Fact]
    public void One_house_in_the_middle_of_two_knots_is_enough_to_undo_both()
    {
        // B's wire passes under A and C; theirs end under B.
        var middle = House("B", 1) with { Surface = [new PlanePoint(0, 0.5), new PlanePoint(2.5, 0.5)] };
        var knot = Assert.Single(LayingPlanner.Order(new LayingProblem([House("A", 0, 1), middle, House("C", 2, 1)])).Knots);
        Assert.Equal(["B"], knot.PulledFirst);
        Assert.True(knot.Exact);
    }

    [Fact]
    public void A_glued_house_over_the_way_is_named()
    {
        var order = LayingPlanner.Order(new LayingProblem([House("Inn", 0) with { Stands = Stands.Glued }, House("A", 1, 0)]));
        Assert.Equal(new CoveredWay("A", "Inn"), Assert.Single(order.Covered));
    }

    [Fact]
    public void On_eighty_crowded_boards_no_pair_is_ever_pulled_under_a_house_that_stands()
    {
        var knots = 0;
        for (var seed = 0; seed < 80; seed++)
        {
            var random = new Random(seed);
            var houses = Enumerable.Range(0, 14).Select(i => Square($"H{i}", random.NextDouble(), random.NextDouble(), 0.11) with
            {
                Stands = random.Next(6) == 0 ? Stands.Loose : Stands.ToCome,
            }).Select(h => h with { Surface = [h.Surface[0], new PlanePoint(h.Surface[0].X + (0.3 * (random.NextDouble() - 0.5)), h.Surface[0].Y + (0.3 * (random.NextDouble() - 0.5)))] }).ToImmutableArray();
            var order = LayingPlanner.Order(new LayingProblem(houses));
            knots += order.Knots.Length;
            Walk(houses, order);
        }

        Assert.True(knots > 0, "some of these boards must hold a knot for the check to mean anything");
    }

    // Follows the steps with squares tested corner by corner, not by the geometry the planner uses.
    private static void Walk(ImmutableArray<LaidHouse> houses, LayingOrder order)
    {
        var byId = houses.ToDictionary(h => h.Id);
        var standing = houses.Where(h => h.Stands == Stands.Loose).Select(h => h.Id).ToHashSet();
        var pulled = standing.ToHashSet();
        foreach (var step in order.Steps)
        {
            if (step.Act is LayingAct.PullFirst or LayingAct.SetDown && pulled.Add(step.House))
            {
                Assert.DoesNotContain(standing, x => x != step.House && Under(byId[step.House].Surface, byId[x].Footprint));
            }

            Assert.True(step.Act switch
            {
                LayingAct.TakeOut => standing.Remove(step.House),
                LayingAct.PullFirst => !standing.Contains(step.House),
                _ => standing.Add(step.House),
            });
        }

        Assert.Equal(houses.Select(h => h.Id).Order(), standing.Order());
    }

    private static bool Under(ImmutableArray<PlanePoint> wire, ImmutableArray<PlanePoint> square) => Enumerable.Range(0, 501).Any(i =>
    {
        var (x, y) = (wire[0].X + ((wire[1].X - wire[0].X) * i / 500), wire[0].Y + ((wire[1].Y - wire[0].Y) * i / 500));
        return x > square[0].X + 0.001 && x < square[2].X - 0.001 && y > square[0].Y + 0.001 && y < square[2].Y - 0.001;
    });

    private static string[] Set(LayingOrder order) => [.. order.Steps.Select(s => s.House)];

    // Houses a step apart on a row, each 0.8 wide; the hole lies in the middle of another place of the row.
    private static LaidHouse House(string id, int at, int? hole = null) =>
        Square(id, at + 0.1, 0.1, 0.8) with { Surface = [new PlanePoint((hole ?? at) + 0.5, 0.5)] };

    private static LaidHouse Square(string id, double x, double y, double side) => new(
        id, [new PlanePoint(x, y), new PlanePoint(x + side, y), new PlanePoint(x + side, y + side), new PlanePoint(x, y + side)], Stands.ToCome, [new PlanePoint(x + (side / 2), y + (side / 2))]);
}
