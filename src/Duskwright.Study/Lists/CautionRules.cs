using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;

namespace Duskwright.Study.Lists;

/// <summary>The cautions that go with a town's work: the usual ones, and those its parts call for.</summary>
internal static class CautionRules
{
    internal static ItemList<Caution> Of(Town town)
    {
        var supplies = town.Supplies.Select(s => (Supply: s, Part: Catalogue.FindSupply(town, s.Part)!)).ToList();
        var lamps = town.Buildings.SelectMany(b => b.DescribedLamps().Select(l => l.Lamp.Led).Append(b.Led)).Append(town.Wiring.Led).OfType<string>()
            .Select(id => Catalogue.FindLamp(town, id)).OfType<LampPart>().ToList();
        var cautions = new List<Caution>
        {
            new("This guides, it does not certify", "Figures are computed from usual parts. Where people or property are at stake, local codes and licensed practice come first. Mains wiring belongs to an electrician."),
            new("Fire", "Card, balsa, foam, solvent vapour and glue burn. Solder away from the model, use no naked flame near card, and leave nothing lit unattended unless it is fused and has been proved for hours."),
            new("Short circuits", "Even three AA cells push amperes into a short, and thin wire in card glows. Fuse at the pack, leave no bare ends, take the cells out while you work, and keep power off while anything is wet."),
            new("Soldering", "The tip is at 350 °C: use a stand and eye protection, draw the fumes away from your face, wash your hands after leaded solder."),
            new("Glues, paints, knives", "Mind the instructions on the pack: air, gloves and eyes for solvents, lacquers and resin; quick glue bonds skin and hazes panes; cut away from yourself."),
            new("Leaking cells", "Take cells out for storage, never mix old and new or different kinds in one holder."),
        };
        if (supplies.Any(s => s.Part.Kind == SupplyKind.NickelMetalHydride || s.Supply.Part is "LR20" or "LR14"))
        {
            cautions.Add(new Caution("Strong cells", "Rechargeable cells and C and D cells push far more current into a short than AA cells: a fuse is a must."));
        }

        if (supplies.Any(s => s.Supply.Parallel > 1))
        {
            cautions.Add(new Caution("Packs side by side", "Cells side by side feed one another: only equal, equally fresh cells of one kind, each row with its own fuse."));
        }

        if (supplies.Any(s => s.Part.Kind == SupplyKind.LithiumCoin))
        {
            cautions.Add(new Caution("Coin cells", "Out of children's reach, behind a screwed lid. A swallowed cell burns within about two hours: emergency help at once (IEC 60086-4)."));
        }

        if (supplies.Any(s => s.Part.Kind is SupplyKind.Regulated or SupplyKind.PowerBank))
        {
            cautions.Add(new Caution("Plug-in adaptors", "Only sealed, certified ones (for example IEC 61558, IEC 62368-1), never opened; check direct current, polarity and volts. Venues may ask for a safety test."));
        }

        if (lamps.Any(l => l.Kind == LampKind.Flickering))
        {
            cautions.Add(new Caution("Flicker", "Decorative flicker can disturb people who are sensitive to flashing light; say so where visitors enter."));
        }

        if (lamps.Any(l => l.Kind == LampKind.Filament))
        {
            cautions.Add(new Caution("Filament lamps", "They get hot: keep card and foam a finger's breadth away and prove them for hours before closing."));
        }

        return cautions.ToItemList();
    }
}
