using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Figures;

namespace Duskwright.Study.Tests;

public class CameraTests
{
    private static readonly TownStudy Saltmarrow = TownStudy.Of(Demo.Saltmarrow);

    // Source: by hand. 30 lx on 0.20 is 1.910 cd/m²; at ISO 800 and f/5.6 ISO 2720 gives 12.5 × 31.36/(1.910 × 800) = 0.2566 s.
    [Fact]
    public void The_facades_of_the_demo_town_want_a_quarter_of_a_second_at_iso_800_and_f_5_6()
    {
        var camera = Saltmarrow.Camera!;
        Assert.Equal(1.9099, camera.Facade.Value, 1e-4);
        Assert.Equal(0.25656, camera.Shots.Single(s => s is { Iso: 800, FNumber: 5.6 }).Facade.Value, 1e-5);
    }

    [Fact]
    public void Two_stops_above_a_middle_tone_take_four_times_as_long() =>
        Assert.All(Saltmarrow.Camera!.Shots, s => Assert.Equal(4 * s.Windows.Value, s.Pair.Value, s.Pair.Value * 1e-12));

    [Fact]
    public void With_the_room_light_for_the_pair_windows_lie_five_stops_above_the_facades()
    {
        var dark = TownStudy.Of(Demo.Saltmarrow with { Show = Demo.Saltmarrow.Show with { RoomIlluminance = Illuminance.FromLux(0.5) } }).Camera!;
        Assert.True(dark.LuxToAdd > 0);
        var lit = TownStudy.Of(Demo.Saltmarrow with { Show = Demo.Saltmarrow.Show with { RoomIlluminance = Illuminance.FromLux(0.5 + dark.LuxToAdd) } }).Camera!;
        Assert.Equal(5, lit.Apart.Value, 1e-9);
        Assert.Equal(0, lit.LuxToAdd, 1e-9);
    }

    [Fact]
    public void A_town_without_described_windows_has_no_exposure() => Assert.Null(TownStudy.Of(new Town { Name = "Fenhithe" }).Camera);

    [Fact]
    public void A_part_of_the_view_is_written_in_thousandths_of_a_steradian() => Assert.Equal("0.52\u2009msr", FigureText.Of(0.00052, "sr"));

    [Theory]
    [InlineData(0.01, "1/100\u2009s")]
    [InlineData(0.0166, "1/60\u2009s")]
    [InlineData(0.00262, "1/380\u2009s")]
    [InlineData(0.29, "1/3\u2009s")]
    [InlineData(0.5, "0.50\u2009s")]
    [InlineData(4, "4\u2009s")]
    public void Shutter_times_are_written_as_cameras_do(double seconds, string text) => Assert.Equal(text, FigureText.Of(seconds, "s"));
}
