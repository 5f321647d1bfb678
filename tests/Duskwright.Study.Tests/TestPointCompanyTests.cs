using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Mending;
using Duskwright.Study.Results;

namespace Duskwright.Study.Tests;

/// <summary>Tests of houses that hang on two packs, and of houses that share their pair with others.</summary>
/// <remarks>
/// Worked by hand with 4.65 V read at the pack. A white lamp takes 2.70 V + 0.055 V·ln(I ÷ 1 mA) + 12 Ω·(I − 1 mA), enamelled wire of 0.25 mm has
/// 0.351 Ω for a metre (both common practice, no source), the meter's 20 mA range 10 Ω (typical, from memory). What is left out, joints and switch, is some hundredths of
/// an ohm against 820 Ω: three in a thousand are allowed.
/// </remarks>
public class TestPointCompanyTests
{
    private const double Allowed = 0.003;
    private static readonly Town Plain = new()
    {
        Name = "Nowhere",
        Wiring = new WiringChoices { Led = "led-0805-warm-white", Resistor = ResistorChoice.Of(Resistance.FromOhms(820)), Wire = "cu-0.25" },
        Supplies = [new Supply { Id = "east", Part = "LR6", Series = 3 }, new Supply { Id = "west", Part = "LR6", Series = 3 }],
        SwitchGroups = [new SwitchGroup { Id = "e", Supply = "east" }, new SwitchGroup { Id = "w", Supply = "west" }],
    };

    private static readonly Town Halved = Plain with
    {
        Buildings =
        [
            new Building
            {
                Name = "House",
                PairLength = Length.FromMetres(2),
                Storeys = [new Storey { Rooms = [new Room { Lamps = [new Lamp { SwitchGroup = "e" }, new Lamp { SwitchGroup = "w" }] }] }],
            },
        ],
    };

    private static readonly Town Chain = Plain with
    {
        Buildings =
        [
            new Building { Name = "Inn", Leds = 2, SwitchGroup = "e", PairLength = Length.FromMetres(10) },
            new Building { Name = "Forge", Leds = 2, SwitchGroup = "e" },
        ],
        Routes = [new Route { Building = "forge", From = "inn", Points = [], Length = Length.FromMetres(2) }],
    };

    // Of parallel feeds one fails and the other goes on: common practice, no source.
    [Theory]
    [InlineData("east", 1, "L1", "e")]
    [InlineData("west", 2, "L2", "w")]
    public void A_house_on_two_packs_goes_dark_only_with_its_lamps_of_the_pack_that_fails(string supply, int number, string lamp, string group)
    {
        var open = TownStudy.Of(Halved).Faults(supply).Single(f => f.Words.Contains($"a joint of the pair of House on switch {group} is open, at the bank or in the house"));
        Assert.Equal($"dark: House on pack {number} ({lamp})", open.Sight);
    }

    // 4.65 V − 2.760 V over 820 Ω, two wires of 2 m and the meter: 2.273 mA.
    [Theory]
    [InlineData("east", "L1")]
    [InlineData("west", "L2")]
    public void A_house_on_two_packs_is_read_on_each_of_them_by_itself(string supply, string lamp)
    {
        var study = TownStudy.Of(Halved);
        var test = study.Buildings[0].Tests.Single(t => t.Key == $"fed-at-the-bank-on-{supply}");
        Assert.Equal((1, supply), (test.ShouldLight, test.Supply));
        Assert.Equal([lamp], test.Lamps);
        var verdict = study.Judge("house", test.Key, new TestOutcome(new Dictionary<string, Seen> { [lamp] = Seen.Lit }, Amperes: 2.273e-3, Volts: 4.65))!;
        Assert.True(verdict.Passed);
        Assert.Equal(2.273e-3, verdict.Band!.Value, Allowed * 2.273e-3);
    }

    [Fact]
    public void A_house_on_two_packs_is_glued_in_when_it_was_tried_on_both()
    {
        var work = TownStudy.Of(Halved).Work("house")!;
        Assert.Equal(["fed-at-the-bank-on-east", "fed-at-the-bank-on-west"], work.TestsInTheWay("glue-in"));
        Assert.Equal(["lamps-in-roof-off-on-east", "lamps-in-roof-off-on-west", "turned-round", "roof-on-in-the-dark"], work.TestsInTheWay("close"));
    }

    [Fact]
    public void A_lamp_that_is_dark_on_its_own_pack_is_told_with_its_joint()
    {
        var verdict = TownStudy.Of(Halved).Judge("house", "fed-at-the-bank-on-west", new TestOutcome(new Dictionary<string, Seen> { ["L2"] = Seen.Dark }))!;
        Assert.False(verdict.Passed);
        Assert.Contains(verdict.Causes[0].Words, w => w.Contains("House", StringComparison.Ordinal));
    }

    [Fact]
    public void In_the_dark_a_dark_lamp_on_one_of_two_packs_is_told_with_causes_on_its_own_pack_alone()
    {
        var looks = new Dictionary<string, Seen> { ["L1"] = Seen.Lit, ["L2"] = Seen.Dark };
        var verdict = TownStudy.Of(Halved).Judge("house", "roof-on-in-the-dark", new TestOutcome(looks))!;
        Assert.Null(verdict.LookFirst);
        Assert.Contains("L2", Said(verdict), StringComparison.Ordinal);
        Assert.DoesNotContain("L1", Said(verdict), StringComparison.Ordinal);
    }

    [Fact]
    public void Dark_lamps_on_both_packs_are_told_with_causes_on_each()
    {
        var looks = new Dictionary<string, Seen> { ["L1"] = Seen.Dark, ["L2"] = Seen.Dark };
        var said = Said(TownStudy.Of(Halved).Judge("house", "lamps-on-the-bench", new TestOutcome(looks))!);
        Assert.Contains("L1", said, StringComparison.Ordinal);
        Assert.Contains("L2", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_lamps_on_two_packs_were_only_counted_the_maker_tries_each_pack_by_itself()
    {
        var verdict = TownStudy.Of(Halved).Judge("house", "roof-on-in-the-dark", new TestOutcome(new Dictionary<string, Seen>(), Lit: 1))!;
        Assert.Empty(verdict.Causes);
        Assert.Equal("The house hangs on 2 packs: test the pair to each by itself; where one lights all its lamps, what is wrong is on the other.", verdict.LookFirst);
    }

    // Both wires of 10 m carry both lamps and act on each like twice as much: 4.65 V − 2.758 V over 820 Ω + 2·(7.02 + 10) Ω, two lamps 4.430 mA; the joint in the house alone would give 4.501 mA.
    [Fact]
    public void A_house_from_which_the_pair_goes_on_is_tried_by_its_whole_pair() =>
        Assert.Equal(4.430e-3, Band(TownStudy.Of(Chain), "inn", "fed-through-the-board"), Allowed * 4.430e-3);

    // All four lamps through 17.02 Ω, two of them through 1.40 Ω more: 2·2.134 mA + 2·2.127 mA = 8.521 mA.
    [Fact]
    public void The_house_at_the_end_of_a_chain_is_read_together_with_the_one_it_goes_on_from()
    {
        var study = TownStudy.Of(Chain);
        Assert.Equal(8.521e-3, Band(study, "forge", "fed-at-the-bank"), Allowed * 8.521e-3);
        Assert.Matches("^It hangs on one run with Inn, which lights with it\\. Before you join it the run takes .* to .* by a meter; then join it", Test(study, "forge", "fed-at-the-bank").Do);
    }

    [Fact]
    public void A_house_further_along_the_chain_counts_once_it_is_joined()
    {
        Assert.DoesNotContain("Forge", Test(TownStudy.Of(Chain), "inn", "glued-in-and-dry").Do, StringComparison.Ordinal);
        var joined = TownStudy.Of(Chain with { Log = [new LogEntry { Date = new DateOnly(2026, 3, 1), Kind = LogKind.StepDone, Building = "forge", Step = "join" }] });
        Assert.Contains("Forge on its run lights with it", Test(joined, "inn", "glued-in-and-dry").Do, StringComparison.Ordinal);
        Assert.Equal(8.521e-3, Band(joined, "inn", "glued-in-and-dry"), Allowed * 8.521e-3);
    }

    // One lamp of its own out takes about a quarter off what four lamps take.
    [Fact]
    public void One_lamp_out_is_told_by_a_meter_although_the_neighbour_is_lit_with_it()
    {
        var test = Test(TownStudy.Of(Chain), "forge", "fed-at-the-bank");
        Assert.InRange(test.OneOut!.Value / test.Reading!.Value, 0.74, 0.77);
    }

    private static string Said(TestVerdict verdict) => string.Join(" ", verdict.Causes.SelectMany(c => c.Words.Append(c.Remedy)));

    private static double Band(TownStudy study, string building, string test) =>
        study.Judge(building, test, new TestOutcome(new Dictionary<string, Seen> { ["L1"] = Seen.Lit, ["L2"] = Seen.Lit }, Amperes: 5e-3, Volts: 4.65))!.Band!.Value;

    private static TestPoint Test(TownStudy study, string building, string key) => study.Buildings.Single(b => b.Building.Key == building).Tests.Single(t => t.Key == key);
}
