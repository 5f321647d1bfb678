using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;

namespace Duskwright.Study.Tests;

public class FlickerResultTests
{
    private static readonly TownStudy Saltmarrow = TownStudy.Of(Demo.Saltmarrow);

    [Fact]
    public void The_demo_towns_fires_flicker_deep_but_fill_too_little_of_the_view_to_harm()
    {
        Assert.NotEmpty(Saltmarrow.Flicker);
        Assert.All(Saltmarrow.Flicker, f => Assert.True(f.AboveGeneralLimit && f.WithinFlashLimit));
        Assert.Equal(1, Saltmarrow.Flicker.Max(f => f.Modulation.Value), 1e-12);
        Assert.DoesNotContain(Saltmarrow.Findings, f => f.Rule == "flicker-area");
        Assert.Contains(Saltmarrow.Cautions, c => c.Topic == "Flicker");
    }

    // Source: by hand. 14 × 14 mm square on at 0.3 m is 196e-6/0.09 = 0.002178 sr.
    [Fact]
    public void A_window_square_before_the_eye_fills_its_area_over_the_distance_squared() =>
        Assert.Equal(0.00217778, Assert.Single(TownStudy.Of(Town(14)).Flicker).Area.Value, 1e-8);

    [Theory]
    [InlineData(23, false)]
    [InlineData(24, true)]
    public void A_large_window_that_flickers_close_by_is_warned_of(double millimetres, bool warned) =>
        Assert.Equal(warned, TownStudy.Of(Town(millimetres)).Findings.Any(f => f.Rule == "flicker-area"));

    // Source: by hand. One lamp alone: dark when it is dark.
    [Fact]
    public void A_room_lit_by_one_flickering_lamp_is_modulated_fully() =>
        Assert.Equal(1, Assert.Single(TownStudy.Of(Town(14)).Flicker).Modulation.Value, 1e-12);

    [Fact]
    public void A_course_of_a_window_is_dark_or_lit_and_lit_it_is_its_mean_over_the_share_of_the_time()
    {
        var study = TownStudy.Of(Town(14));
        var course = Assert.Single(study.FlickerOf(study.Buildings[0].Building.Key));
        Assert.Equal(0, course.Steps[0].At);
        Assert.Equal(2, course.Steps.Select(s => Math.Round(s.Luminance, 9)).Distinct().Count());
        Assert.Equal(0, course.Steps.Min(s => s.Luminance));

        // Lit share 0.65: common practice, no source.
        Assert.Equal(course.Pane.Luminance.Value / 0.65, course.Steps.Max(s => s.Luminance), 1e-9);
    }

    // A hearth 0.3 m before the eye, the window at the eye's height.
    private static Town Town(double window) => new()
    {
        Name = "Fenhithe",
        Supplies = [new Supply { Id = "1", Part = "LR6", Series = 2 }],
        SwitchGroups = [new SwitchGroup { Id = "A", Supply = "1" }],
        Show = new Show { ViewingPositions = [new ViewingPosition { Name = "at the dyke", At = Point.At(300, -100), EyeHeight = Length.FromMillimetres(20) }] },
        Buildings =
        [
            new Building
            {
                Name = "Forge", SwitchGroup = "A", Led = "flicker-3mm-yellow", Finish = InteriorFinish.White,
                Place = new Placement { At = Point.At(300, 220), Width = Length.FromMillimetres(50), Depth = Length.FromMillimetres(40) },
                Storeys =
                [
                    new Storey
                    {
                        Height = Length.FromMillimetres(40),
                        Rooms =
                        [
                            new Room
                            {
                                Lamps = [new Lamp()],
                                Windows = [new Window { Width = Length.FromMillimetres(window), Height = Length.FromMillimetres(window), Sill = Length.FromMillimetres(20 - (window / 2)), Pane = new Pane { Material = PaneMaterial.Tracing } }],
                            },
                        ],
                    },
                ],
            },
        ],
    };
}
