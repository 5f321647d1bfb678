using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;

namespace Duskwright.Study.Bench;

/// <summary>What to mind about the supply of a house when it is first switched on.</summary>
internal static class CellCaution
{
    /// <summary>The caution that its kind of supply calls for; none for plain alkaline cells, whose short circuit is minded everywhere.</summary>
    internal static string? Of(Town town, Building building)
    {
        var id = town.SwitchGroups.FirstOrDefault(g => g.Id == building.SwitchGroup)?.Supply;
        var supply = town.Supplies.FirstOrDefault(s => s.Id == id);
        return (supply is null ? null : Catalogue.FindSupply(town, supply.Part)?.Kind) switch
        {
            SupplyKind.LithiumCoin => "Button cells: out of children's reach, behind a screwed lid; swallowed, emergency help at once (IEC 60086-4).",
            SupplyKind.NickelMetalHydride => "Rechargeable cells push far more into a short than alkaline ones: never without the fuse.",
            SupplyKind.PowerBank => "A power bank holds lithium: never soldered to, pierced or sealed in, and only its own charger (IEC 62133-2).",
            SupplyKind.Regulated => "Only a sealed, certified adaptor (for example IEC 61558), never opened; direct current, polarity and volts checked first.",
            _ => null,
        };
    }
}
