using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;

namespace Duskwright.Study.Tests;

public class PaneTests
{
    private static readonly TownStudy Saltmarrow = TownStudy.Of(Demo.Saltmarrow);

    [Fact]
    public void Every_described_window_with_a_lamp_behind_it_has_a_brightness_and_a_colour()
    {
        var windows = Demo.Saltmarrow.Buildings.SelectMany(b => b.Storeys).SelectMany(s => s.Rooms).Where(r => r.Lamps.Count > 0).Sum(r => r.Windows.Count);
        Assert.Equal(windows, Saltmarrow.Panes.Count);
        Assert.All(Saltmarrow.Panes, p => Assert.True(p.Luminance.Value > 0 && p.HotSpotRatio >= 1 && p.Colour is not null));
    }

    [Fact]
    public void A_panes_map_has_the_mean_one()
    {
        // All of Saltmarrow's panes are cut into equal parts where no other pane's edges cross them.
        Assert.All(Saltmarrow.Panes, p => Assert.InRange(p.Map.Average(), 0.9, 1.1));
        Assert.All(Saltmarrow.Panes, p => Assert.Equal(0, p.Map.Count % p.MapColumns));
    }

    [Fact]
    public void At_the_start_a_pane_is_as_bright_as_its_lamps_together() =>
        Assert.All(Saltmarrow.Panes.Zip(Saltmarrow.At(0, 10).Panes), pair =>
        {
            Assert.Equal(pair.First.Luminance.Value, pair.Second.Luminance, pair.First.Luminance.Value * 1e-9);
            Assert.Equal(10 <= pair.First.ReadsAsLitTo.Value, pair.Second.ReadsAsLit);
        });

    [Fact]
    public void Panes_only_fade_while_the_show_runs() =>
        Assert.All(Saltmarrow.At(1).Panes.Zip(Saltmarrow.At(7).Panes), pair => Assert.True(pair.Second.Luminance <= pair.First.Luminance + 1e-9));

    [Fact]
    public void A_room_painted_black_is_darker_and_an_amber_pane_is_warmer()
    {
        var white = House(InteriorFinish.White, PaneTint.None);
        Assert.True(House(InteriorFinish.Black, PaneTint.None).Luminance.Value < 0.2 * white.Luminance.Value);
        Assert.True(House(InteriorFinish.White, PaneTint.Amber).ColourKelvin is not { } kelvin || kelvin < white.ColourKelvin);
    }

    [Fact]
    public void Light_in_a_white_room_is_near_what_the_energy_balance_gives()
    {
        // Source: Sumpner (1893): a closed room of one reflectance has E = Φ/(A(1 − ρ)) on average. The pane, a thirtieth of the inside, is a leak,
        // and the lamp points away: between half and all of it reaches the pane.
        var pane = House(InteriorFinish.White, PaneTint.None);
        var candelas = pane.Luminance.Inputs[0].Value;
        const double HalfAngle = 60 * Math.PI / 180;
        var lumens = 2 * Math.PI * candelas / ((Math.Log(0.5) / Math.Log(Math.Cos(HalfAngle))) + 1);
        const double Inside = 2 * ((0.05 * 0.04) + (0.05 * 0.035) + (0.04 * 0.035));
        var even = 0.65 * lumens / (Inside * (1 - 0.8)) / Math.PI;
        Assert.InRange(pane.Luminance.Value, 0.5 * even, even);
    }

    private static Study.Results.PaneResult House(InteriorFinish finish, PaneTint tint) => Assert.Single(TownStudy.Of(new Town
    {
        Name = "Fenhithe",
        Supplies = [new Supply { Id = "1", Part = "LR6", Series = 3 }],
        SwitchGroups = [new SwitchGroup { Id = "A", Supply = "1" }],
        Buildings =
        [
            new Building
            {
                Name = "Eel house", SwitchGroup = "A", Led = "led-0603-warm-white", Finish = finish,
                Storeys =
                [
                    new Storey
                    {
                        Height = Length.FromMillimetres(35),
                        Rooms =
                        [
                            new Room
                            {
                                Width = Length.FromMillimetres(50), Depth = Length.FromMillimetres(40), Lamps = [new Lamp()],
                                Windows = [new Window { Width = Length.FromMillimetres(14), Height = Length.FromMillimetres(14), Pane = new Pane { Material = PaneMaterial.Tracing, Tint = tint } }],
                            },
                        ],
                    },
                ],
            },
        ],
    }).Panes);
}
