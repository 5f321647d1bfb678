using Duskwright.Plan.Quantities;
using Duskwright.Study.Figures;
using Duskwright.Towns;

namespace Duskwright.Tests.Towns;

public sealed class LengthRuleTests : IDisposable
{
    private readonly DirectoryInfo _home = Directory.CreateTempSubdirectory("duskwright");

    public void Dispose() => _home.Delete(recursive: true);

    // Source: the inch is 25.4 mm, international yard and pound agreement, 1959; from memory.
    [Theory]
    [InlineData("mm", 44.45, "44.5 mm")]
    [InlineData("cm", 44.45, "4.45 cm")]
    [InlineData("in", 44.45, "1.75 in")]
    [InlineData("in", 25.4, "1 in")]
    public void A_length_is_shown_in_the_makers_unit(string unit, double millimetres, string words) =>
        Assert.Equal(words, In(unit).Words(Length.FromMillimetres(millimetres)));

    [Theory]
    [InlineData("mm", "30", 30)]
    [InlineData("cm", "4,5", 45)]
    [InlineData("in", "1 3/4", 44.45)]
    [InlineData("in", "30 mm", 30)]
    [InlineData("mm", "2 1/2 in", 63.5)]
    public void A_bare_number_is_in_the_makers_unit_and_any_other_may_be_said(string unit, string typed, double millimetres) =>
        Assert.Equal(millimetres, In(unit).Read(typed)!.Value.Millimetres, 9);

    [Theory]
    [InlineData("60 cm", "40", 600, 400)]
    [InlineData("600", "40 cm", 6000, 400)]
    [InlineData("60", "40", 60, 40)]
    [InlineData("2 m", "40 cm", 2000, 400)]
    public void A_bare_number_beside_one_with_a_unit_is_meant_in_that_unit(string width, string depth, double one, double other)
    {
        var (read, beside) = In("mm").ReadBoth(width, depth);
        Assert.Equal((one, other), (read!.Value.Millimetres, beside!.Value.Millimetres));
    }

    [Fact]
    public void What_is_no_length_is_not_made_one() => Assert.Null(In("in").Read("a bit"));

    [Theory]
    [InlineData("mm", 0.47, "m", "470\u2009mm")]
    [InlineData("cm", 0.47, "m", "47\u2009cm")]
    [InlineData("cm", 1.36, "m", "1.36\u2009m")]
    [InlineData("in", 0.254, "m", "10\u2009in")]
    [InlineData("in", 2, "V", "2\u2009V")]
    public void Figures_of_length_follow_the_unit_and_others_do_not(string unit, double value, string of, string words) =>
        Assert.Equal(words, In(unit).Words(value, of));

    // A rule is divided in sixteenths of an inch, or in millimetres. Common practice, no source.
    [Theory]
    [InlineData("mm", "1 mm,5 mm,10 mm,25 mm")]
    [InlineData("cm", "0.1 cm,0.5 cm,1 cm,2.5 cm")]
    [InlineData("in", "1/16 in,1/8 in,1/4 in,1/2 in,1 in")]
    public void Positions_snap_to_what_the_makers_rule_is_divided_in(string unit, string words) =>
        Assert.Equal(words, string.Join(',', In(unit).Steps.Select(In(unit).StepWords)));

    [Fact]
    public void Both_ends_of_a_length_are_in_the_makers_unit()
    {
        using var town = OpenTown.FromFile(null).Town!;
        var pair = town.Study.Buildings.Select(b => b.PairLength).First(l => l.Low < l.High);
        Assert.Equal($"{FigureText.Of(pair.Low!.Value / 0.0254, "in")} to {FigureText.Of(pair.High!.Value / 0.0254, "in")}", In("in").Range(pair));
        Assert.Equal(FigureText.Range(pair), In("mm").Range(pair));
    }

    [Fact]
    public void The_unit_is_remembered_for_every_town_and_the_next_time()
    {
        using (var town = OpenTown.FromFile(null, _home.FullName).Town!)
        {
            Assert.Equal("mm", town.Lengths.Unit);
            town.MeasureIn(In("in"));
            Assert.Equal("in", town.Lengths.Unit);
            Assert.Null(town.FilePath);
        }

        using var next = OpenTown.FromFile(null, _home.FullName).Town!;
        Assert.Equal("in", next.Lengths.Unit);
    }

    [Fact]
    public void A_unit_that_nobody_knows_is_the_usual_one()
    {
        File.WriteAllText(Path.Combine(_home.FullName, "lengths.txt"), "cubits");
        Assert.Equal("mm", LengthRule.KeptIn(_home.FullName).Unit);
    }

    private static LengthRule In(string unit) => LengthRule.All.Single(r => r.Unit == unit);
}
