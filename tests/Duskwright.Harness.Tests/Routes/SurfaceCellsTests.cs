using Duskwright.Harness.Routes;

namespace Duskwright.Harness.Tests.Routes;

public class SurfaceCellsTests
{
    // By hand: right past a blocked cell no corner may be cut, so four straight steps instead of two diagonal ones.
    [Fact]
    public void A_run_does_not_cut_the_corner_of_a_blocked_cell()
    {
        var cells = Cells("...", ".#.", "...");
        Assert.Equal(4, cells.Between((0, 0), (2, 2)).Length, 1e-12);
        Assert.Equal(5, cells.Between((0, 0), (2, 2)).Cells.Length);
    }

    [Fact]
    public void On_bare_ground_a_run_is_as_long_as_its_diagonal_and_straight_steps() =>
        Gen.Select(Gen.Int[0, 9], Gen.Int[0, 9], Gen.Int[0, 9], Gen.Int[0, 9]).Sample((x, y, u, v) =>
        {
            var bare = new SurfaceCells(10, 10, [.. Enumerable.Repeat(1.0, 100)]);
            var (dx, dy) = (Math.Abs(x - u), Math.Abs(y - v));
            return Math.Abs(bare.Between((x, y), (u, v)).Length - ((Math.Min(dx, dy) * Math.Sqrt(2)) + Math.Abs(dx - dy))) < 1e-9;
        });

    // A seen cell counts ten times: the detour behind the houses is 4 cells longer and still taken.
    [Fact]
    public void A_run_goes_behind_the_houses_where_that_hides_it()
    {
        var cells = Cells("oooo", ".##.", "....");
        var run = cells.Between((0, 0), (3, 0));
        Assert.Contains((1, 2), run.Cells);
        Assert.DoesNotContain((1, 0), run.Cells);
    }

    [Fact]
    public void A_cell_shut_in_has_no_run() => Assert.Empty(Cells(".#.", "##.", "...").Between((0, 0), (2, 2)).Cells);

    private static SurfaceCells Cells(params string[] rows) => new(
        rows[0].Length, rows.Length, [.. rows.SelectMany(r => r.Select(c => c switch { '#' => double.PositiveInfinity, 'o' => 10, _ => 1.0 }))]);
}
