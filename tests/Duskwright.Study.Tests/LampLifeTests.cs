using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;

namespace Duskwright.Study.Tests;

public class LampLifeTests
{
    private static readonly TownStudy Saltmarrow = TownStudy.Of(Demo.Saltmarrow);

    // Source: by hand. 10 000 to 50 000 h at 8 h a day are 3.42 to 17.1 years.
    [Fact]
    public void An_LED_lit_eight_hours_a_day_lives_three_to_seventeen_years() =>
        Assert.All(Saltmarrow.LampLives, l =>
        {
            Assert.Equal(3.4247, l.Years.Low!.Value, 1e-4);
            Assert.Equal(17.1233, l.Years.High!.Value, 1e-4);
            Assert.InRange(l.Years.Value, 3.4247, 17.1233);
        });

    [Fact]
    public void Every_lamp_that_burns_is_counted_once() =>
        Assert.Equal(Saltmarrow.Lamps.Count(l => l.Current is not null), Saltmarrow.LampLives.Sum(l => l.Lamps));

    // Source: usual exponent of lamp handbooks, from memory; a 1.5 V bulb on two fresh cells breaks within hours.
    [Fact]
    public void A_small_bulb_on_twice_its_voltage_soon_breaks()
    {
        var town = new Town
        {
            Name = "Fenhithe",
            Supplies = [new Supply { Id = "1", Part = "LR6", Series = 2 }],
            SwitchGroups = [new SwitchGroup { Id = "A", Supply = "1" }],
            Buildings = [new Building { Name = "Eel house", SwitchGroup = "A", Led = "bulb-1v5", Leds = 1, PairLength = Length.FromMillimetres(300) }],
        };
        var life = Assert.Single(TownStudy.Of(town).LampLives);
        Assert.Null(life.LeftAfterTenYears);
        Assert.InRange(life.Hours.Low!.Value, 0.1, 10);
    }
}
