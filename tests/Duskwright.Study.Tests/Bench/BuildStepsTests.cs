using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Bench;

namespace Duskwright.Study.Tests.Bench;

public class BuildStepsTests
{
    private static readonly Window Pane = new() { Width = Length.FromMillimetres(8), Height = Length.FromMillimetres(12) };
    private static readonly Town Nowhere = new() { Name = "Nowhere", Wiring = new WiringChoices { Led = "ready-5v-warm-white" } };

    // Common practice, no source: ten houses with two ready-wired lamps, five windows and two rooms each take a practised hand about
    // 17 h. Counted with a pair for each lamp; ours has one pair a house, 4.5 min less. Walls, paint and covering are not in that figure.
    [Fact]
    public void Ten_houses_of_two_lamps_and_five_windows_take_a_practised_hand_about_17_hours()
    {
        var minutes = 10 * BuildSteps.Of(Nowhere, House(BuildingState.Idea)).Where(s => s.Source.StartsWith("common practice", StringComparison.Ordinal)).Sum(s => s.Minutes);
        Assert.InRange(minutes / 60.0, 16, 17.5);
    }

    // Common practice, no source: at least three to four days of drying in between.
    [Fact]
    public void A_house_dries_for_three_to_five_days_in_all()
    {
        var steps = BuildSteps.Of(Nowhere, House(BuildingState.Idea));
        var end = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var step in steps)
        {
            end[step.Key] = step.Minutes + step.After.Select(w => end[w.Step] + w.DryMinutes).DefaultIfEmpty(0).Max();
        }

        Assert.InRange(end["last-test"] / 1440.0, 3, 5);
    }

    // Common practice, no source: what can hurt is said where it does.
    [Theory]
    [InlineData("cut", "blade")]
    [InlineData("black", "solvents and lacquers")]
    [InlineData("glaze", "Quick glue")]
    [InlineData("lamps", "350 °C")]
    [InlineData("darken", "Power off")]
    [InlineData("tag", "First power through a resistor")]
    [InlineData("fit", "Quick glue")]
    [InlineData("cover", "Power off")]
    [InlineData("drill", "eye protection")]
    [InlineData("join", "first power goes through 1 kΩ")]
    [InlineData("glue-in", "Power off")]
    [InlineData("last-test", "hand at the switch")]
    public void A_caution_stands_at_the_step_where_it_matters(string step, string words) =>
        Assert.Contains(words, BuildSteps.Of(Nowhere, House(BuildingState.Idea)).Single(s => s.Key == step).Caution, StringComparison.Ordinal);

    [Theory]
    [InlineData("CR2032", "out of children's reach")]
    [InlineData("LR6", null)]
    public void The_cells_that_feed_the_house_bring_their_own_caution(string cell, string? words)
    {
        var town = Nowhere with { Supplies = [new Supply { Id = "1", Part = cell }], SwitchGroups = [new SwitchGroup { Id = "a", Supply = "1" }] };
        var caution = BuildSteps.Of(town, House(BuildingState.Idea) with { SwitchGroup = "a" }).Single(s => s.Key == "join").Caution!;
        Assert.Equal(words is not null, caution.Contains(words ?? "children", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(BuildingState.Shell, "cut")]
    [InlineData(BuildingState.Fitted, "fit")]
    public void What_is_done_is_not_asked_for_again(BuildingState state, string done) =>
        Assert.DoesNotContain(BuildSteps.Of(Nowhere, House(state)), s => s.Key == done || s.After.Any(w => w.Step == done));

    [Fact]
    public void A_house_that_is_fixed_has_no_step_left() => Assert.Empty(BuildSteps.Of(Nowhere, House(BuildingState.Fixed)));

    [Fact]
    public void Gluing_the_roof_and_gluing_in_are_seals() =>
        Assert.Equal(["close", "glue-in"], BuildSteps.Of(Nowhere, House(BuildingState.Idea)).Where(s => s.Seals).Select(s => s.Key));

    [Fact]
    public void A_roof_that_lifts_off_seals_nothing() =>
        Assert.Equal(["glue-in"], BuildSteps.Of(Nowhere, House(BuildingState.Idea) with { Roof = new Roof { LiftsOff = true } }).Where(s => s.Seals).Select(s => s.Key));

    // Common practice, no source: both faces of a sheet are coated alike and dry before the panes are cut from it and glued in.
    [Fact]
    public void Frosted_panes_are_coated_and_dry_before_the_windows_are_glazed_and_clear_ones_are_not()
    {
        Building Glazed(PaneMaterial material) => House(BuildingState.Idea) with { Storeys = [new Storey { Rooms = [new Room { Windows = [Pane with { Pane = new Pane { Material = material } }] }] }] };
        Assert.Contains(BuildSteps.Of(Nowhere, Glazed(PaneMaterial.Frosted)).Single(s => s.Key == "glaze").After, w => w is { Step: "frost", DryMinutes: 120 });
        Assert.DoesNotContain(BuildSteps.Of(Nowhere, Glazed(PaneMaterial.Clear)), s => s.Key == "frost" || s.After.Any(w => w.Step == "frost"));
    }

    // Common practice, no source: what shines beside a lamp is seen through the pane, so it is dark before the lamp goes in.
    [Fact]
    public void Bright_wire_is_dark_before_the_lamps_are_fitted() =>
        Assert.Contains(BuildSteps.Of(Nowhere, House(BuildingState.Idea)).Single(s => s.Key == "fit").After, w => w.Step == "darken");

    [Fact]
    public void Nothing_is_switched_on_for_a_day_after_gluing_in() =>
        Assert.Equal(new StepWait("glue-in", 1440), BuildSteps.Of(Nowhere, House(BuildingState.Idea)).Single(s => s.Key == "last-test").After.Single());

    [Fact]
    public void A_street_lamp_has_no_windows_and_no_roof() =>
        Assert.DoesNotContain(BuildSteps.Of(Nowhere, new Building { Name = "Lamp", Kind = BuildingKind.StreetLamp }), s => s.Key is "glaze" or "close" or "black");

    [Fact]
    public void Soldering_and_wet_glue_carry_their_cautions() =>
        Assert.All(BuildSteps.Of(Nowhere, House(BuildingState.Idea)).Where(s => s.Key is "lamps" or "close" or "glue-in" or "cut" or "join"), s => Assert.NotNull(s.Caution));

    [Fact]
    public void Every_building_of_the_harbour_waits_only_for_steps_that_come_before() =>
        Assert.All(Demo.Saltmarrow.Buildings, building =>
        {
            var known = new HashSet<string>(StringComparer.Ordinal);
            foreach (var step in BuildSteps.Of(Demo.Saltmarrow, building))
            {
                Assert.All(step.After, wait => Assert.Contains(wait.Step, known));
                Assert.True(known.Add(step.Key));
            }
        });

    private static Building House(BuildingState state) => new()
    {
        Name = "House",
        State = state,
        Storeys = [new Storey { Rooms = [new Room { Lamps = [new Lamp()], Windows = [Pane, Pane, Pane] }, new Room { Lamps = [new Lamp()], Windows = [Pane, Pane] }] }],
    };
}
