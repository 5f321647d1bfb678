using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;

namespace Duskwright.Study.Tests;

public class RoomLeaksTests
{
    private static readonly TownStudy Saltmarrow = TownStudy.Of(Demo.Saltmarrow);

    // Source: common practice, no source: two to three coats of black keep a lit card house dark.
    [Fact]
    public void The_middle_room_of_the_demo_town_wants_two_or_three_coats_on_its_card_walls()
    {
        var coats = Saltmarrow.Leaks.SelectMany(r => r.Leaks).Where(l => l is { What: "walls", Covering: "1 mm card" }).Select(l => l.Coats.Value).Order().ToList();
        Assert.InRange(coats[coats.Count / 2], 2, 3);
    }

    [Fact]
    public void A_darker_hall_never_needs_fewer_coats()
    {
        var dark = TownStudy.Of(Demo.Saltmarrow with { Show = Demo.Saltmarrow.Show with { RoomIlluminance = Illuminance.FromLux(3) } });
        Assert.All(Saltmarrow.Leaks.SelectMany(r => r.Leaks).Zip(dark.Leaks.SelectMany(r => r.Leaks)), pair => Assert.True(pair.Second.Coats.Value >= pair.First.Coats.Value));
        Assert.NotEqual(Saltmarrow.Leaks.Sum(r => r.Leaks.Sum(l => l.Coats.Value)), dark.Leaks.Sum(r => r.Leaks.Sum(l => l.Coats.Value)));
    }

    [Fact]
    public void Bare_houses_are_told_of_and_painted_ones_are_not()
    {
        var told = Saltmarrow.Findings.Where(f => f.Rule == "walls-glow").Select(f => f.Subject.Key).Order().ToList();
        Assert.Equal(["net-loft", "rope-store", "sail-loft"], told);
        Assert.All(told, key => Assert.Equal(InteriorFinish.Raw, Demo.Saltmarrow.Buildings.Single(b => b.Key == key).Finish ?? InteriorFinish.Raw));
    }

    [Fact]
    public void The_dark_loft_over_the_lit_shop_is_told_of() =>
        Assert.Equal("chandlery", Assert.Single(Saltmarrow.Findings, f => f.Rule == "storey-glows").Subject.Key);

    [Fact]
    public void Only_rooms_under_the_roof_light_it() =>
        Assert.All(Saltmarrow.Leaks, r => Assert.Equal(r.Storey == Saltmarrow.Buildings.Single(b => b.Building.Key == r.Building).Building.Storeys.Count - 1, r.Leaks.Any(l => l.What == "roof")));

    [Fact]
    public void No_open_seam_of_a_lit_room_is_hidden_by_more_than_what_the_eye_parts() =>
        Assert.All(Saltmarrow.Leaks, r => Assert.InRange(r.WidestSeam.Value, 0, 0.6 * Math.PI / (180 * 60)));
}
