using System.Numerics;
using Duskwright.Book.Night;

using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;
using Duskwright.Study;
using SkiaSharp;

namespace Duskwright.Book.Tests.Night;

/// <summary>The town at night in space.</summary>
public sealed class NightSceneTests
{
    private static readonly TownStudy Saltmarrow = PrintedSaltmarrow.Study;
    private static readonly NightScene Scene = NightScene.Of(Saltmarrow)!;
    private static readonly NightLight AllOn = NightLight.Of(Scene, new HashSet<string>());

    [Fact]
    public void Every_described_pane_stands_once_with_the_luminance_of_the_results()
    {
        foreach (var hour in (double[])[0, 4, 8])
        {
            Assert.All(Saltmarrow.At(hour).Panes, pane =>
            {
                var place = Assert.Single(Enumerable.Range(0, Scene.Panes.Count), i => Scene.Panes[i] is var p && (p.Building, p.Storey, p.Room, p.Window) == (pane.Building, pane.Storey, pane.Room, pane.Window));
                Assert.Equal(pane.Luminance, AllOn.At(place, hour), 1e-5 * pane.Luminance);
            });
        }
    }

    [Fact]
    public void Usual_windows_change_no_current() =>
        Assert.Equal(Saltmarrow.Lamps.Select(l => l.Current?.Value), Scene.Study.Lamps.Select(l => l.Current?.Value));

    [Fact]
    public void Every_lamp_on_a_pack_is_seen_behind_some_pane()
    {
        var seen = Scene.Study.Panes.SelectMany(p => p.Lamps.Select(l => (p.Building, l.Lamp))).ToHashSet();
        Assert.All(Saltmarrow.Lamps.Where(l => l.Current is not null && l.PaneLuminance is null), l => Assert.Contains((l.Building, l.Name), seen));
    }

    [Fact]
    public void A_switch_that_is_off_darkens_its_own_panes_and_no_other()
    {
        var off = NightLight.Of(Scene, new HashSet<string>(["K"]));
        var quay = Saltmarrow.Lamps.Where(l => l.SwitchGroup == "K").Select(l => l.Building).ToHashSet();
        for (var p = 0; p < Scene.Panes.Count; p++)
        {
            if (quay.Contains(Scene.Panes[p].Building))
            {
                Assert.Equal(0, off.At(p, 0));
            }
            else
            {
                Assert.True(off.At(p, 0) >= AllOn.At(p, 0) * 0.9999f);
            }
        }
    }

    [Fact]
    public void Panes_look_outwards_from_their_house() => Assert.All(Scene.Panes, pane =>
    {
        var walls = Scene.Faces.Where(f => f.Building == pane.Building).SelectMany(f => f.Corners).ToList();
        var middle = walls.Aggregate(Vector3.Zero, (sum, c) => sum + c) / walls.Count;
        Assert.True(Vector3.Dot(pane.Middle - middle, pane.Normal) > 0 || pane.Normal.Y == 0 && (pane.Middle - middle).Length() < 0.02f, pane.Building);
        Assert.Equal(1, pane.Normal.Length(), 1e-4);
        Assert.Equal(0, pane.Normal.Y, 1e-4);
    });

    // A surface of A m² and L cd/m² gives L·A·cos·cos/d²: 1 cm² of 100 cd/m² straight before it at 100 mm gives 1 lx; at 60° on both sides a quarter of that.
    [Fact]
    public void Light_of_a_pane_falls_off_by_the_inverse_square_and_both_cosines()
    {
        Assert.Equal(1, 100 * NightStill.Falling(new Vector3(0, 0, 0.1f), -Vector3.UnitZ, Vector3.Zero, Vector3.UnitZ, 1e-4f), 1e-5);
        Assert.Equal(0.25, 100 * NightStill.Falling(new Vector3(0, 0, 0.2f), -Vector3.UnitZ, Vector3.Zero, Vector3.UnitZ, 1e-4f), 1e-5);
        var aside = new Vector3(0.1f * MathF.Sin(MathF.PI / 3), 0, 0.05f);
        Assert.Equal(0.25, 100 * NightStill.Falling(aside, -Vector3.UnitZ, Vector3.Zero, Vector3.UnitZ, 1e-4f), 1e-5);
        Assert.Equal(0, NightStill.Falling(new Vector3(0, 0, -0.1f), Vector3.UnitZ, Vector3.Zero, Vector3.UnitZ, 1e-4f));
    }

    // Stiles and Holladay: scattered light of 1 lx, 10/θ² cd/m²; a fifth of the way to where it is let end, 0.64 of that is left.
    [Fact]
    public void Glare_falls_off_with_the_square_of_the_angle() =>
        Assert.Equal(10 / Math.Pow(0.7, 2) * 0.64, NightEyes.Veil(1, 0.7f), 1e-3);

    [Fact]
    public void In_a_dim_room_windows_outshine_their_walls_and_in_a_bright_one_they_do_not()
    {
        Assert.All(new[] { (Lux: 1.0, Lit: true), (Lux: 1000.0, Lit: false) }, room =>
        {
            var now = Enumerable.Range(0, Scene.Panes.Count).Select(p => AllOn.At(p, 0)).ToList();
            var eyes = NightEyes.In(room.Lux, now);
            var place = Enumerable.Range(0, now.Count).First(p => Scene.Panes[p].Building == "harbour-office");
            var wall = Scene.Faces.First(f => f.Building == "harbour-office" && f.Stuff == NightStuff.Wall);
            var (pane, plaster) = (eyes.Shown(now[place] * Scene.Panes[place].Colour), eyes.Shown(NightEyes.Thrown(room.Lux, wall.Normal, wall.Albedo)));
            Assert.Equal(room.Lit, Vector3.Dot(pane, NightEyes.Luminance) > Vector3.Dot(plaster, NightEyes.Luminance));
        });
    }

    [Fact]
    public void A_still_shows_lit_windows_and_without_lamps_none()
    {
        using var lit = Still(AllOn);
        using var dark = Still(NightLight.Of(Scene, Saltmarrow.Town.SwitchGroups.Select(g => g.Id).ToHashSet()));
        Assert.Equal((320, 200), (lit.Width, lit.Height));
        Assert.True(Warm(lit) > 100);
        Assert.Equal(0, Warm(dark));
    }

    [Fact]
    public void A_town_of_five_hundred_houses_stays_within_what_ordinary_graphics_draw()
    {
        var scene = NightScene.Of(TownStudy.Of(Wide(500)))!;
        Assert.Equal(1500, scene.Panes.Count);
        Assert.InRange(scene.Faces.Sum(f => f.Corners.Count - 2) + scene.Glows.Sum(g => g.Corners.Count - 2) + (4 * scene.Panes.Count), 1500, 300_000);
    }

    private static int Warm(SKBitmap picture) => picture.Pixels.Count(p => p.Red > 200 && p.Red > p.Blue + 40);

    private static SKBitmap Still(NightLight light)
    {
        using var stream = new MemoryStream();
        NightStill.Write(Scene, light, Scene.Eyes[0], 0, 1, 320, 200, stream);
        return SKBitmap.Decode(stream.ToArray());
    }

    private static Town Wide(int houses) => new()
    {
        Name = "Fenhithe",
        Board = new Board { Width = Length.FromMillimetres(3000), Depth = Length.FromMillimetres(2400) },
        Supplies = [new Supply { Id = "1", Part = "usb-5v" }],
        SwitchGroups = [new SwitchGroup { Id = "A", Supply = "1" }],
        Buildings = [.. Enumerable.Range(0, houses).Select(i => new Building
        {
            Name = $"House {i}", Leds = 3, Led = "led-0603-warm-white", SwitchGroup = "A",
            Place = new Placement { At = Point.At(80 + (i % 25 * 115), 80 + (i / 25 * 115)), Width = Length.FromMillimetres(70), Depth = Length.FromMillimetres(50) },
        })],
    };
}
