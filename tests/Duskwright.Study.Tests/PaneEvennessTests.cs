using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Results;

namespace Duskwright.Study.Tests;

public class PaneEvennessTests
{
    private static readonly TownStudy Saltmarrow = TownStudy.Of(Demo.Saltmarrow);

    [Fact]
    public void The_brightest_pane_of_each_kind_is_white_and_none_is_brighter() =>
        Assert.All(Saltmarrow.Evenness.GroupBy(e => Window(e.Pane).Pane), kind =>
        {
            Assert.Equal(100, kind.Max(e => e.Fresh.Value), 1e-9);
            Assert.Equal(100, kind.Max(e => e.Late.Value), 1e-9);
        });

    [Fact]
    public void Panes_with_a_fire_behind_them_are_left_out() =>
        Assert.DoesNotContain(Saltmarrow.Evenness, e => e.Pane.Lamps.Any(l => Saltmarrow.Buildings.Single(b => b.Building.Key == e.Pane.Building).Lamps.Single(x => x.Name == l.Lamp).Part.Kind == Plan.Parts.LampKind.Flickering));

    // Source: closed form (light is additive): a room of one lamp is twice as bright with two.
    [Fact]
    public void One_more_lamp_in_a_room_of_one_doubles_its_light() =>
        Assert.Equal(2, TownStudy.Of(Town(820)).LightGains.Single(g => g.What == "one more lamp").Factor.Value, 1e-12);

    // The other resistor is fitted and the town computed again.
    [Fact]
    public void The_other_resistor_gives_nearly_what_was_promised()
    {
        var study = TownStudy.Of(Town(820));
        var promised = study.LightGains.Single(g => g.What == "470\u2009Ω instead of 820\u2009Ω").Factor.Value;
        var fitted = TownStudy.Of(Town(470)).Panes[0].Luminance.Value / study.Panes[0].Luminance.Value;
        Assert.Equal(promised, fitted, 0.02 * promised);
    }

    [Fact]
    public void What_makes_panes_read_as_lit_comes_first_and_fixed_houses_are_left_alone()
    {
        var gains = Saltmarrow.LightGains;
        Assert.NotEmpty(gains);
        Assert.Equal(gains.OrderByDescending(g => g.NewlyLit).ThenByDescending(g => g.Step.Value), gains);
        Assert.DoesNotContain(gains, g => Saltmarrow.Buildings.Single(b => b.Building.Key == g.Building).Building.State == BuildingState.Fixed);
    }

    private static Window Window(PaneResult pane) =>
        Saltmarrow.Buildings.Single(b => b.Building.Key == pane.Building).Building.Storeys[pane.Storey].Rooms[pane.Room].Windows[pane.Window];

    private static Town Town(double ohms) => new()
    {
        Name = "Fenhithe",
        Supplies = [new Supply { Id = "1", Part = "LR6", Series = 3 }],
        SwitchGroups = [new SwitchGroup { Id = "A", Supply = "1" }],
        Buildings =
        [
            new Building
            {
                Name = "Eel house", SwitchGroup = "A", Led = "led-0603-warm-white", Resistor = ResistorChoice.Of(Resistance.FromOhms(ohms)), PairLength = Length.FromMillimetres(300),
                Storeys = [new Storey { Rooms = [new Room { Lamps = [new Lamp()], Windows = [new Window { Width = Length.FromMillimetres(14), Height = Length.FromMillimetres(14) }] }] }],
            },
        ],
    };
}
