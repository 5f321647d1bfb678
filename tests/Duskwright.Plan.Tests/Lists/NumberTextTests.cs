using Duskwright.Plan.Lists;

namespace Duskwright.Plan.Tests.Lists;

/// <summary>Numbers in every field as makers write them.</summary>
public class NumberTextTests
{
    [Theory]
    [InlineData("2.5", 2.5)]
    [InlineData("2,5", 2.5)]
    [InlineData("2 1/2", 2.5)]
    [InlineData("3/4", 0.75)]
    [InlineData("-1 1/4", -1.25)]
    [InlineData(" 12 ", 12)]
    [InlineData("0,125", 0.125)]
    public void A_number_may_have_a_point_a_comma_or_a_fraction(string typed, double number) => Assert.Equal(number, NumberText.Read(typed)!.Value, 1e-12);

    [Theory]
    [InlineData("")]
    [InlineData("some")]
    [InlineData("1,500")]
    [InlineData("1/0")]
    [InlineData("1.2.3")]
    [InlineData("5 mA")]
    [InlineData("NaN")]
    [InlineData("1e9")]
    public void What_is_none_or_may_be_read_in_two_ways_is_not_guessed_at(string typed) => Assert.Null(NumberText.Read(typed));

    [Theory]
    [InlineData("5 mA", "mA", 5)]
    [InlineData("5,5mA", "mA", 5.5)]
    [InlineData("90°", "°", 90)]
    public void The_fields_own_unit_may_be_written_behind_it(string typed, string unit, double number) => Assert.Equal(number, NumberText.Read(typed, unit)!.Value, 1e-12);

    [Fact]
    public void Another_unit_is_not_taken_for_the_fields_own() => Assert.Null(NumberText.Read("5 V", "mA"));

    // The inch is 25.4 mm by definition (international yard and pound agreement, 1959; from memory).
    [Theory]
    [InlineData("2 1/2 in", "mm", 63.5)]
    [InlineData("2 1/2 in", "cm", 6.35)]
    [InlineData("4,7", "cm", 4.7)]
    [InlineData("47 mm", "cm", 4.7)]
    [InlineData("0,5 m", "mm", 500)]
    public void A_length_may_be_in_any_unit_and_is_given_in_the_fields_own(string typed, string unit, double number) => Assert.Equal(number, NumberText.Read(typed, unit)!.Value, 1e-9);

    [Theory]
    [InlineData("mm", 47)]
    [InlineData("cm", 470)]
    [InlineData("in", 1193.8)]
    public void A_bare_length_in_a_list_is_in_the_makers_unit_and_that_is_said(string unit, double millimetres)
    {
        var list = BuildingList.Read("Chandlery, 4, 47", unit);
        Assert.Equal(millimetres, list.Town!.Buildings[0].Distance!.Value.Millimetres, 1e-9);
        Assert.StartsWith("Lengths without a unit are taken as ", list.Assumptions[0], StringComparison.Ordinal);
    }

    [Fact]
    public void A_length_with_its_unit_in_a_list_stays_what_it_is()
    {
        var list = BuildingList.Read("Chandlery, 4, \"18 1/2 in\"\nMill, 2, 4.5 m", "cm");
        Assert.Equal([469.9, 4500], list.Town!.Buildings.Select(b => Math.Round(b.Distance!.Value.Millimetres, 3)));
        Assert.DoesNotContain(list.Assumptions, a => a.StartsWith("Lengths", StringComparison.Ordinal));
    }
}
