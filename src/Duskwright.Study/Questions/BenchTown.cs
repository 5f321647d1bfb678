using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Plan.Quantities;

namespace Duskwright.Study.Questions;

/// <summary>The little town a question is answered in: one pack, one switch, lamps alike.</summary>
internal static class BenchTown
{
    internal const string Pack = "1";

    /// <summary>All lamps at the end of one pair.</summary>
    /// <param name="supply">The pack.</param>
    /// <param name="lamp">The lamp.</param>
    /// <param name="ohms">Resistor at each, 0 for none.</param>
    /// <param name="lamps">How many.</param>
    /// <param name="show">Hours and days.</param>
    /// <returns>A town whose lamps sit at the pack.</returns>
    internal static Town Of(Supply supply, LampPart lamp, Resistance ohms, int lamps, Show show) =>
        Of(supply, show, House("lamps", lamp, ohms, lamps));

    /// <summary>Houses on one pack.</summary>
    /// <param name="supply">The pack.</param>
    /// <param name="show">Hours and days.</param>
    /// <param name="houses">The houses; they are put on the one switch, and at the pack where their way to it is not said.</param>
    /// <returns>The town, without joints' and slack's share: what was asked about is all there is.</returns>
    internal static Town Of(Supply supply, Show show, params ReadOnlySpan<Building> houses)
    {
        var joined = new List<Building>();
        foreach (var house in houses)
        {
            joined.Add(house with { SwitchGroup = "A", PairLength = house.PairLength ?? (house.Distance is null ? Length.FromMillimetres(1) : null) });
        }

        return new Town
        {
            Name = "A question",
            Show = show,
            Supplies = [supply with { Id = Pack }],
            SwitchGroups = [new SwitchGroup { Id = "A", Supply = Pack }],
            Wiring = new WiringChoices { Slack = Length.FromMillimetres(0), JointResistance = Resistance.FromOhms(0) },
            Buildings = joined.ToItemList(),
        };
    }

    internal static Building House(string name, LampPart lamp, Resistance ohms, int lamps) =>
        new() { Name = name, Leds = lamps, Led = lamp.Id, Resistor = ohms.Ohms > 0 ? ResistorChoice.Of(ohms) : ResistorChoice.None };
}
