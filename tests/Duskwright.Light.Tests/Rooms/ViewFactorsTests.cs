using Duskwright.Light.Lamps;
using Duskwright.Light.Rooms;

namespace Duskwright.Light.Tests.Rooms;

// Source: tests/Reference/view-factors.csv; each row names its own (Siegel and Howell; Incropera; Howell's catalogue B-3, B-4, C-11, C-14).
public class ViewFactorsTests
{
    private static readonly IReadOnlyList<IReadOnlyDictionary<string, string>> Rows = ReferenceRows.Of("view-factors.csv");

    public static TheoryData<string> Ids(string kind) => [.. Rows.Where(r => r["kind"] == kind).Select(r => r["id"])];

    [Theory]
    [MemberData(nameof(Ids), "parallel_equal_rectangles")]
    public void Facing_rectangles_exchange_what_the_tables_say(string id)
    {
        var (a, b, gap, wanted, tolerance) = Row(id);
        var plate = new Rectangle(0, a, 0, b);
        Assert.Equal(wanted, ViewFactors.Parallel(plate, plate, gap), Math.Min(tolerance, 1e-4));
    }

    [Theory]
    [MemberData(nameof(Ids), "perpendicular_common_edge")]
    public void Rectangles_that_meet_at_an_edge_exchange_what_the_tables_say(string id)
    {
        var (depth, height, edge, wanted, tolerance) = Row(id);
        Assert.Equal(wanted, ViewFactors.Perpendicular(new(0, depth, 0, edge), new(0, height, 0, edge)), Math.Min(tolerance, 1e-4));
    }

    [Theory]
    [MemberData(nameof(Ids), "element_to_parallel_rectangle_corner")]
    [MemberData(nameof(Ids), "element_to_parallel_rectangle_corner_limit")]
    public void A_small_element_sees_a_facing_rectangle_as_the_tables_say(string id)
    {
        var (a, b, gap, wanted, tolerance) = Row(id);
        Assert.Equal(wanted, ViewFactors.ElementToFacingCorner(a, b, gap), Math.Min(tolerance, 1e-4));
    }

    [Theory]
    [MemberData(nameof(Ids), "element_to_perpendicular_rectangle_corner")]
    public void A_small_element_sees_a_standing_rectangle_as_the_tables_say(string id)
    {
        var (height, length, gap, wanted, tolerance) = Row(id);
        Assert.Equal(wanted, ViewFactors.ElementToStandingCorner(height, length, gap), Math.Min(tolerance, 1e-4));
    }

    [Fact]
    public void A_strip_sees_the_mean_of_its_elements()
    {
        // Rows VF-006 and VF-007: mean over 0..b of element factors f(a, x, c) + f(a, b − x, c).
        var (a, b, gap, facing, tolerance) = Row("VF-006");
        Assert.Equal(facing, Mean(b, x => ViewFactors.ElementToFacingCorner(a, x, gap) + ViewFactors.ElementToFacingCorner(a, b - x, gap)), tolerance);
        (a, b, gap, var standing, tolerance) = Row("VF-007");
        Assert.Equal(standing, Mean(b, x => ViewFactors.ElementToStandingCorner(a, x, gap) + ViewFactors.ElementToStandingCorner(a, b - x, gap)), tolerance);
    }

    [Theory]
    [MemberData(nameof(Ids), "isotropic_point_to_rectangle_corner")]
    public void A_lamp_that_shines_all_round_lights_a_rectangle_by_its_solid_angle(string id)
    {
        var (a, b, gap, wanted, tolerance) = Row(id);
        var box = new RoomBox(2 * a, 2 * gap, 2 * b, 0);
        var lamp = new RoomLamp(new LampLobe(1 / (4 * Math.PI), Math.PI), new(a, gap, b), new(0, 1, 0));
        Assert.Equal(wanted, DirectLight.Lumens(box, BoxFace.Back, new(a, 2 * a, b, 2 * b), lamp), tolerance);
    }

    [Theory]
    [MemberData(nameof(Ids), "box_closure_sum")]
    public void All_light_of_a_floor_reaches_the_other_five_faces(string id)
    {
        var (a, b, height, wanted, tolerance) = Row(id);
        var floor = new Rectangle(0, a, 0, b);
        var sum = ViewFactors.Parallel(floor, floor, height)
            + (2 * ViewFactors.Perpendicular(new(0, a, 0, b), new(0, height, 0, b)))
            + (2 * ViewFactors.Perpendicular(new(0, b, 0, a), new(0, height, 0, a)));
        Assert.Equal(wanted, sum, tolerance);
    }

    [Fact]
    public void Cut_in_parts_a_pair_of_rectangles_exchanges_the_same() =>
        Gen.Select(Gen.Double[0.1, 0.9], Gen.Double[0.1, 0.9], Gen.Double[0.05, 3]).Sample((cut, across, gap) =>
        {
            var (low, high, other) = (new Rectangle(0, 1, 0, cut), new Rectangle(0, 1, cut, 1), new Rectangle(0, across, 0, 2));
            var whole = new Rectangle(0, 1, 0, 1);
            Assert.Equal(ViewFactors.Parallel(whole, other, gap), (low.Area * ViewFactors.Parallel(low, other, gap)) + (high.Area * ViewFactors.Parallel(high, other, gap)), 1e-9);
            Assert.Equal(ViewFactors.Perpendicular(whole, other), (low.Area * ViewFactors.Perpendicular(low, other)) + (high.Area * ViewFactors.Perpendicular(high, other)), 1e-9);
        });

    private static double Mean(double length, Func<double, double> share)
    {
        const int Parts = 4000;
        return Enumerable.Range(0, Parts).Sum(i => share((i + 0.5) * length / Parts)) / Parts;
    }

    private static (double A, double B, double C, double Wanted, double Tolerance) Row(string id)
    {
        var row = Rows.Single(r => r["id"] == id);
        return (row.Number("a_m"), row.Number("b_m"), row.Number("c_m"), row.Number("view_factor_1"), row.Number("tolerance_abs"));
    }
}
