using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Comparing;

namespace Duskwright.Study.Tests.Comparing;

/// <summary>Two states of a town in words: what was said otherwise and what came of it.</summary>
public class TownsComparedTests
{
    private static readonly Building Mill = new() { Name = "Mill", Leds = 2, Led = "led-0603-warm-white", Resistor = ResistorChoice.Of(Resistance.FromOhms(270)), Distance = Length.FromMillimetres(200), SwitchGroup = "A" };
    private static readonly Building Forge = Mill with { Name = "Forge", Leds = 3, Distance = Length.FromMillimetres(400) };

    [Fact]
    public void A_town_compared_with_itself_has_nothing_to_tell()
    {
        var (changed, came) = Words(Town(Mill, Forge), Town(Mill, Forge));
        Assert.Empty(changed);
        Assert.Empty(came);
    }

    // What comes from a file is never the very thing that stands in memory.
    [Fact]
    public void A_town_read_again_from_its_file_has_nothing_to_tell()
    {
        var again = Duskwright.Plan.Format.TownJson.Read(System.Text.Encoding.UTF8.GetBytes(Duskwright.Plan.Format.TownJson.Write(Demo.Saltmarrow))).Town!;
        var (changed, came) = Words(Demo.Saltmarrow, again);
        Assert.Empty(changed);
        Assert.Empty(came);
    }

    [Fact]
    public void A_house_that_came_and_one_that_went_are_told_with_their_lamps()
    {
        var (changed, came) = Words(Town(Mill, Forge), Town(Mill, Forge with { Name = "Weir", Leds = 1 }));
        Assert.Equal(["Weir is new, with 1 LED.", "Forge is gone, with 3 LEDs."], changed);
        Assert.Contains(came, w => w.StartsWith("Pack 1: gives ", StringComparison.Ordinal) && w.Contains("half light after", StringComparison.Ordinal));
        Assert.Contains(came, w => w.StartsWith("In all: ", StringComparison.Ordinal));
    }

    // By hand: (4.5 − 3.0) V ÷ 270 Ω = 5.6 mA and ÷ 1 kΩ = 1.5 mA, about 0.3 of the light: CIE L* of 0.3 is 62, far beyond the 5 that is seen.
    [Fact]
    public void A_larger_resistor_is_told_with_both_values_and_the_house_is_visibly_dimmer()
    {
        var (changed, came) = Words(Town(Mill, Forge), Town(Mill, Forge with { Resistor = ResistorChoice.Of(Resistance.FromOhms(1000)) }));
        Assert.Matches(@"^Forge: most with 1(\.00)?.?k.?Ω, was 270.?Ω\.$", Assert.Single(changed));
        Assert.Contains(came, w => w.StartsWith("Forge is visibly dimmer: each lamp takes", StringComparison.Ordinal));
        Assert.DoesNotContain(came, w => w.StartsWith("Mill is visibly", StringComparison.Ordinal));
        Assert.Equal("visibly brighter", Words(Town(Forge with { Resistor = ResistorChoice.Of(Resistance.FromOhms(1000)) }), Town(Forge)).Came.Single(w => w.StartsWith("Forge", StringComparison.Ordinal))[9..25]);
    }

    [Fact]
    public void A_house_that_moved_is_told_how_far_and_what_its_pair_is_now()
    {
        var bank = new Board { Width = Length.FromMillimetres(600), Depth = Length.FromMillimetres(500), Bank = new Bank { At = Point.At(0, 0) } };
        var here = Mill with { Distance = null, Place = new Placement { At = Point.At(300, 0) } };
        var there = here with { Place = new Placement { At = Point.At(300, 400), Rotation = Angle.FromDegrees(90) } };
        var (changed, _) = Words(Town(here) with { Board = bank }, Town(there) with { Board = bank });
        Assert.Matches(@"^Mill: moved by 40(0.?mm|\.0.?cm); turned to 90°, was 0°; its pair is .*, was .*\.$", Assert.Single(changed));
    }

    [Fact]
    public void Another_pack_and_a_longer_show_are_told_in_words_and_in_hours()
    {
        var before = Town(Mill, Forge);
        var (changed, came) = Words(before, before with { Supplies = [before.Supplies[0] with { Parallel = 2 }], Show = before.Show with { HoursPerDay = Duration.FromHours(3) } });
        Assert.Contains(changed, w => w.StartsWith("Pack 1 is ", StringComparison.Ordinal) && w.Contains(", was ", StringComparison.Ordinal));
        Assert.Contains(changed, w => w.StartsWith("The show is 3 h, was ", StringComparison.Ordinal));
        Assert.Contains(came, w => w.StartsWith("Pack 1: ", StringComparison.Ordinal) && w.Contains("half light after", StringComparison.Ordinal));
    }

    // A pack without a fuse can set card on fire; taking the fuse out is the maker's to know at once.
    [Fact]
    public void What_spoils_the_show_since_then_is_told_and_what_no_longer_does_too()
    {
        var safe = Town(Mill) with { Supplies = [new Supply { Id = "1", Part = "LR6", Series = 3, Fuse = "ptc-200ma" }] };
        var bare = Town(Mill with { Resistor = ResistorChoice.None });
        Assert.Contains(Words(safe, bare).Came, w => w.StartsWith("New, and it spoils the show: ", StringComparison.Ordinal));
        Assert.Contains(Words(bare, safe).Came, w => w.StartsWith("No longer: ", StringComparison.Ordinal));
    }

    private static Town Town(params Building[] houses) => new()
    {
        Name = "Two states",
        Supplies = [new Supply { Id = "1", Part = "LR6", Series = 3 }],
        SwitchGroups = [new SwitchGroup { Id = "A", Supply = "1" }],
        Buildings = houses.ToItemList(),
    };

    private static (List<string> Changed, List<string> Came) Words(Town before, Town after)
    {
        var compared = TownsCompared.Of(TownStudy.Of(before), TownStudy.Of(after));
        return ([.. compared.Changed.Select(c => c.Text)], [.. compared.Came.Select(c => c.Text)]);
    }
}
